import type { Block } from './flow.js';
import type { Fonts } from './fonts.js';
import { INK, STROKE } from './ink.js';
import type { ReadingsPlot } from './layer-view.js';
import { drawLines, para, setLines } from './paragraph.js';
import { CONTENT_WIDTH, MARGIN } from './sheet.js';
import { mark, open } from './tags.js';
import { drawVerdict, VERDICT_MIDDLE } from './verdict-mark.js';

const HEIGHT = 34;

/** Room left and right of the axis, points: names of limits may stand out over its ends. */
const INSET = 46;

/**
 * The readings of one kind on a line, each with the shape of its verdict, between its limits: the forbidden side is
 * hatched, each limit stands with its number. Readings at one place are drawn over each other in three rows.
 */
export const readingsPlot = (fonts: Fonts, plot: ReadingsPlot): Block => ({
  before: 2,
  lead: HEIGHT,
  draw: (sheet, parent) => {
    const { doc, y } = sheet;
    const at = scaleOf(plot);
    const element = open(doc, parent, 'Figure', { alt: altOf(plot) });
    mark(doc, element, 'Figure', () => {
      forbidden(doc, plot, at, y);
      doc
        .moveTo(MARGIN + INSET, y + 22)
        .lineTo(MARGIN + CONTENT_WIDTH - INSET, y + 22)
        .lineWidth(STROKE.line)
        .stroke(INK.ink);
      plot.points.forEach(({ value, verdict }, i) =>
        drawVerdict(doc, verdict, at(value) - VERDICT_MIDDLE, y + 16 - 5 * (i % 3)),
      );
      for (const limit of limitsOf(plot)) limitLine(doc, fonts, { x: at(limit), y, words: `${limit} ${plot.unit}` });
    });
    element.end();
    sheet.y += HEIGHT;
  },
});

const limitsOf = ({ min, max }: ReadingsPlot): readonly number[] =>
  [min, max].flatMap((limit) => (limit === undefined ? [] : [limit]));

/** Where a value stands, with a little room beyond the outermost reading or limit. */
const scaleOf = (plot: ReadingsPlot): ((value: number) => number) => {
  const all = [...plot.points.map(({ value }) => value), ...limitsOf(plot)];
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const room = most === least ? Math.max(1, Math.abs(most) * 0.1) : (most - least) * 0.12;
  const width = CONTENT_WIDTH - 2 * INSET;
  return (value) => MARGIN + INSET + ((value - least + room) / (most - least + 2 * room)) * width;
};

const altOf = ({ points, min, max, unit }: ReadingsPlot): string => {
  const values = points.map(({ value }) => value);
  const outside = points.filter(({ verdict }) => verdict === 'outside').length;
  const between = [...(min === undefined ? [] : [`at least ${min}`]), ...(max === undefined ? [] : [`at most ${max}`])];
  const limits = between.length === 0 ? '' : `, limits ${between.join(' and ')} ${unit}`;
  return `Plot of ${points.length} readings from ${Math.min(...values)} to ${Math.max(...values)} ${unit}${limits}; ${outside} outside.`;
};

const forbidden = (
  doc: PDFKit.PDFDocument,
  { min, max }: ReadingsPlot,
  at: (value: number) => number,
  y: number,
): void => {
  const [left, right] = [MARGIN + INSET, MARGIN + CONTENT_WIDTH - INSET];
  if (min !== undefined) slanted(doc, left, at(min), y);
  if (max !== undefined) slanted(doc, at(max), right, y);
};

const slanted = (doc: PDFKit.PDFDocument, from: number, to: number, y: number): void => {
  if (to - from < 1) return;
  doc
    .save()
    .rect(from, y + 2, to - from, 20)
    .clip();
  for (let x = from - 20; x < to; x += 4) doc.moveTo(x, y + 22).lineTo(x + 20, y + 2);
  doc.lineWidth(STROKE.hair).stroke(INK.hair).restore();
};

interface LimitLine {
  readonly x: number;
  readonly y: number;
  readonly words: string;
}

const limitLine = (doc: PDFKit.PDFDocument, fonts: Fonts, { x, y, words }: LimitLine): void => {
  doc
    .moveTo(x, y + 1)
    .lineTo(x, y + 25)
    .lineWidth(STROKE.bold)
    .stroke(INK.ink);
  const lines = setLines(fonts, [para(words, 'note')], 2 * INSET);
  const width = lines[0]?.width ?? 0;
  drawLines(doc, fonts, lines, { x: x - width / 2, y: y + 25, width: 2 * INSET });
};
