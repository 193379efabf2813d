import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import { INK, STROKE } from '../ink.js';
import { drawLines, heightOf, para, setLines } from '../paragraph.js';
import { CONTENT_WIDTH, MARGIN, rule } from '../sheet.js';
import { artifact, mark, open } from '../tags.js';

const PAD = 8;
const GAP = 14;
/** Room to write in, points. */
const ROOM = 30;
const FIELDS = [
  ['Name and badge', 0.36],
  ['Day and time', 0.24],
  ['Signature', 0.4],
] as const;

/** A dashed frame with a statement and lines to be signed on by hand: name and badge, day and time, signature. */
export const signField = (fonts: Fonts, title: string, statement: string): Block => {
  const inner = CONTENT_WIDTH - 2 * PAD;
  const words = setLines(fonts, [para(title, 'bold'), para(statement, 'note')], inner);
  const labels = FIELDS.map(([label]) => setLines(fonts, [para(label, 'label')], inner));
  const height = PAD + heightOf(words) + ROOM + 14 + PAD;
  return {
    before: 7,
    lead: height,
    draw: (sheet, parent) => {
      const { doc, y } = sheet;
      const line = y + PAD + heightOf(words) + ROOM;
      const places = FIELDS.map(([, share], i) => ({
        from: MARGIN + PAD + FIELDS.slice(0, i).reduce((sum, [, before]) => sum + before, 0) * inner,
        width: share * inner - (i === FIELDS.length - 1 ? 0 : GAP),
      }));
      artifact(doc, 'Layout', () => {
        doc.save().lineWidth(STROKE.line).dash(3, { space: 2 });
        doc.rect(MARGIN, y, CONTENT_WIDTH, height).stroke(INK.ink);
        doc.undash().restore();
        for (const { from, width } of places) rule(doc, line, { from, width, ink: INK.ink });
      });
      const element = open(doc, parent, 'P');
      mark(doc, element, 'P', () => {
        drawLines(doc, fonts, words, { x: MARGIN + PAD, y: y + PAD, width: inner });
        places.forEach(({ from, width }, i) => drawLines(doc, fonts, labels[i] ?? [], { x: from, y: line + 1, width }));
      });
      element.end();
      sheet.y += height;
    },
  };
};
