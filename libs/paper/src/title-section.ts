import type { BuildRecordView } from './build-record-view.js';
import { facts, nothing } from './facts.js';
import type { Block } from './flow.js';
import type { Fonts } from './fonts.js';
import { INK, STROKE } from './ink.js';
import { drawLines, heightOf, para, setLines } from './paragraph.js';
import { CONTENT_WIDTH, MARGIN } from './sheet.js';
import { cell, table } from './table.js';
import { artifact, mark, open } from './tags.js';
import { heading, stamp } from './text-blocks.js';

/** What the paper is, of which hull, as of when, how complete, and the facts of the hull's life. */
export const titleSection = (fonts: Fonts, view: BuildRecordView): readonly Block[] => [
  titleBlock(fonts, view),
  facts(
    fonts,
    [
      ['Hull number', view.hullNumber, 'code-bold'],
      ['HIN', view.hin?.text ?? 'none assigned yet', view.hin === null ? 'body' : 'code-bold'],
      ['The HIN says', view.hin?.decoded.join('\n') ?? null],
      ['It goes', view.hin?.placement ?? null],
      ['Model', view.model],
      ['State as of', view.stateAsOf.text],
      ['Cut', view.cut],
      ['As an instant', view.stateAsOf.instant, 'code'],
    ],
    8,
  ),
  stamp(fonts, [para(view.completeness, 'bold')], view.complete),
  heading(fonts, 'Life of the hull', { level: 1, style: 'section', before: 14 }),
  view.lifeFacts.length === 0
    ? nothing(fonts, 'No facts of the hull’s life are recorded yet.')
    : table(
        fonts,
        [
          { title: 'When', share: 0.27 },
          { title: 'What', share: 0.35 },
          { title: 'Where, by', share: 0.38 },
        ],
        view.lifeFacts.map(({ when, what, whereBy }) => [cell(when), cell(what, 'bold'), cell(whereBy)]),
      ),
];

/** Plant and title on the left; the hull number framed on the right where it is short enough. */
const titleBlock = (fonts: Fonts, view: BuildRecordView): Block => {
  const number = setLines(fonts, [para(view.hullNumber, 'number')], 220);
  const framed = number.length === 1;
  const numberWidth = framed ? (number[0]?.width ?? 0) + 24 : 0;
  const left = setLines(
    fonts,
    [para(view.plantName, 'bold'), para('Build record', 'title')],
    CONTENT_WIDTH - numberWidth - 16,
  );
  const height = Math.max(heightOf(left), framed ? 44 : 0) + 6;
  return {
    before: 0,
    lead: height,
    draw: (sheet, parent) => {
      const { doc, y } = sheet;
      const element = open(doc, parent, 'H1');
      mark(doc, element, 'H1', () => drawLines(doc, fonts, left, { x: MARGIN, y, width: CONTENT_WIDTH }));
      element.end();
      const x = MARGIN + CONTENT_WIDTH - numberWidth;
      artifact(doc, 'Layout', () => {
        doc
          .moveTo(MARGIN, y + height)
          .lineTo(MARGIN + CONTENT_WIDTH, y + height)
          .lineWidth(STROKE.bold)
          .stroke(INK.ink);
        if (framed) doc.rect(x, y, numberWidth, 28).lineWidth(STROKE.line).stroke(INK.ink);
      });
      if (framed) {
        const box = open(doc, parent, 'P');
        const caption = setLines(fonts, [para('hull number', 'note')], numberWidth);
        mark(doc, box, 'P', () => {
          drawLines(doc, fonts, number, { x: x + 12, y: y + 4, width: numberWidth });
          drawLines(doc, fonts, caption, { x, y: y + 31, width: numberWidth, align: 'right' });
        });
        box.end();
      }
      sheet.y += height;
    },
  };
};
