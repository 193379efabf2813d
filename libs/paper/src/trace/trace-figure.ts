import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import { INK, STROKE } from '../ink.js';
import { drawLines, para, setLines } from '../paragraph.js';
import { CONTENT_WIDTH, MARGIN, type Sheet } from '../sheet.js';
import { mark, open } from '../tags.js';
import { BAR, layOutTrace, type TraceBox, type TraceLayout, type TraceRibbon } from './trace-layout.js';
import type { TraceView } from './trace-view.js';

/** The drawing of a trace: bars for lots and hulls, ribbons for the kilograms between them. */
export const traceFigure = (fonts: Fonts, view: TraceView): Block => {
  const layout = layOutTrace(view, CONTENT_WIDTH);
  return {
    ...{ before: 6, lead: layout.height, keepWithNext: true },
    draw: (sheet, parent) => {
      const figure = open(sheet.doc, parent, 'Figure', {
        alt: `Drawing of the trace of ${view.of === 'lot' ? 'lot' : 'hull'} ${view.code}. ${view.says}`,
      });
      mark(sheet.doc, figure, 'Figure', () => drawTrace(sheet, fonts, layout));
      figure.end();
      sheet.y += layout.height;
    },
  };
};

const drawTrace = (sheet: Sheet, fonts: Fonts, layout: TraceLayout): void => {
  const { doc, y: top } = sheet;
  doc.save().translate(MARGIN, top);
  for (const ribbon of layout.ribbons) drawRibbon(doc, ribbon);
  for (const { x, y, bar } of layout.boxes) doc.rect(x, y, BAR, bar).fill(INK.hatch);
  for (const { title, x } of layout.columns)
    drawLines(doc, fonts, setLines(fonts, [para(title, 'note')], layout.words + BAR).slice(0, 2), {
      ...{ x, y: 0, width: layout.words + BAR },
    });
  for (const box of layout.boxes) words(doc, fonts, box, layout.words);
  doc.restore();
};

/** The code on one line, the kilograms on the next; a code that is too long goes on in the table. */
const words = (doc: PDFKit.PDFDocument, fonts: Fonts, { code, kg, x, y }: TraceBox, width: number): void => {
  const [first, ...more] = setLines(fonts, [para(code, 'code-note')], width - 6);
  if (first === undefined) return;
  const at = { x: x + BAR + 3, width };
  drawLines(doc, fonts, [first], { ...at, y });
  if (more.length > 0)
    drawLines(doc, fonts, setLines(fonts, [para('…', 'code-note')], 20), { ...at, x: at.x + first.width, y });
  const amount = kg === null ? 'possibly' : kg < 0.001 ? 'under 0.001 kg' : `${Number(kg.toPrecision(3))} kg`;
  drawLines(doc, fonts, setLines(fonts, [para(amount, 'note')], width).slice(0, 1), { ...at, y: y + 10.5 });
};

const drawRibbon = (doc: PDFKit.PDFDocument, { from, to, width }: TraceRibbon): void => {
  const middle = (from.x + to.x) / 2;
  doc.moveTo(from.x, from.y).bezierCurveTo(middle, from.y, middle, to.y, to.x, to.y);
  if (width < 0.6) {
    doc.lineWidth(STROKE.hair).stroke(INK.hair);
    return;
  }
  doc.lineTo(to.x, to.y + width).bezierCurveTo(middle, to.y + width, middle, from.y + width, from.x, from.y + width);
  doc.closePath().lineWidth(STROKE.hair).fillAndStroke(INK.pale, INK.hair);
};
