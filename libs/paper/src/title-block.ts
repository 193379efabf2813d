import type { Block } from './flow.js';
import type { Fonts } from './fonts.js';
import { INK, STROKE } from './ink.js';
import { drawLines, heightOf, para, setLines } from './paragraph.js';
import { CONTENT_WIDTH, MARGIN } from './sheet.js';
import { artifact, mark, open } from './tags.js';

/** What stands at the head of a paper. */
export interface Title {
  readonly plantName: string;
  /** Name of the paper. */
  readonly name: string;
  /** What the code is of, such as "hull number". */
  readonly of: string;
  readonly code: string;
  /** The code is told below in any case. */
  readonly toldBelow?: boolean;
}

/** Room for the framed code, points. */
const FRAME = 220;

/**
 * Plant and title on the left, the code framed on the right where it is short enough; a longer one stands under the
 * title, unless it is told elsewhere.
 */
export const titleBlock = (fonts: Fonts, { plantName, name, of, code, toldBelow = false }: Title): Block => {
  const number = setLines(fonts, [para(code, 'number')], FRAME);
  const framed = number.length === 1;
  const numberWidth = framed ? (number[0]?.width ?? 0) + 24 : 0;
  const words = [para(plantName, 'bold'), para(name, 'title'), ...(framed || toldBelow ? [] : [para(code, 'number')])];
  const left = setLines(fonts, words, CONTENT_WIDTH - numberWidth - 16);
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
        const caption = setLines(fonts, [para(of, 'note')], numberWidth);
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
