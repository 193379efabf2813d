import type { Box } from '../geometry.js';
import type { Fonts } from '../fonts.js';
import { INK, STROKE } from '../ink.js';
import { drawLines, para, setLines } from '../paragraph.js';
import { cell, type Cell } from '../table.js';
import type { RowView, Standing } from './class-view.js';
import type { RatioAxis } from './ratio-axis.js';

/** Room for arrows and names of ticks at either end, points. */
const INSET = 10;

type Draw = (doc: PDFKit.PDFDocument, x: number, y: number) => void;

/** Square filled: strong. Square open: suggestive. Short bar across: neither. The word always stands beside it. */
const MARKS: Readonly<Record<Standing, Draw>> = {
  strong: (doc, x, y) => doc.rect(x - 3, y - 3, 6, 6).fill(INK.ink),
  suggestive: (doc, x, y) =>
    doc
      .rect(x - 3, y - 3, 6, 6)
      .lineWidth(STROKE.line)
      .fillAndStroke(INK.white, INK.ink),
  none: (doc, x, y) =>
    doc
      .moveTo(x, y - 3.5)
      .lineTo(x, y + 3.5)
      .lineWidth(STROKE.bold)
      .stroke(INK.ink),
};

/** The words for how much a class stands out. */
export const STANDS: Readonly<Record<Standing, string>> = {
  strong: 'strong',
  suggestive: 'suggestive',
  none: 'does not stand out',
};

/** The ratio of a class with its limits on the axis, as the picture of a cell. */
export const ratioCell = ({ named, ratio, ratioText, limits, standing }: RowView, axis: RatioAxis): Cell => ({
  paragraphs: [],
  alt: `${named}: observed over expected ${ratioText}, ${limits}; ${STANDS[standing]}.`,
  paint: (doc, box) => {
    const x = placeOn(axis, box);
    const y = box.y + 9;
    gridLines(doc, axis, box);
    const { lower, upper } = ratio;
    if (ratio.ratio === null) return;
    const [from, to] = [x(lower ?? 0), x(upper ?? Infinity)];
    doc.moveTo(from, y).lineTo(to, y).lineWidth(STROKE.line).stroke(INK.ink);
    if ((lower ?? 0) < axis.least) arrow(doc, from, y, -1);
    if ((upper ?? Infinity) > axis.most) arrow(doc, to, y, 1);
    MARKS[standing](doc, x(ratio.ratio), y);
  },
});

/** The names of the ticks, as the last row of the picture. */
export const axisCell = (fonts: Fonts, axis: RatioAxis): Cell => ({
  paragraphs: [],
  alt: `Axis of observed over expected, logarithmic, from ${axis.ticks[0] ?? 1} to ${axis.ticks.at(-1) ?? 1}; the bold line is 1, as many as expected.`,
  paint: (doc, box) => {
    const x = placeOn(axis, box);
    gridLines(doc, axis, { ...box, height: 4 });
    for (const tick of axis.ticks) {
      const lines = setLines(fonts, [para(String(tick), 'note')], 40);
      drawLines(doc, fonts, lines, { x: x(tick) - (lines[0]?.width ?? 0) / 2, y: box.y + 5, width: 40 });
    }
  },
});

/** The row that closes the picture: what its axis is. */
export const axisRow = (fonts: Fonts, axis: RatioAxis): readonly Cell[] => [
  cell('observed / expected, log scale', 'note'),
  cell(''),
  axisCell(fonts, axis),
];

const placeOn =
  (axis: RatioAxis, { x, width }: Box) =>
  (ratio: number): number =>
    x + INSET + axis.at(ratio) * (width - 2 * INSET);

const gridLines = (doc: PDFKit.PDFDocument, axis: RatioAxis, box: Box): void => {
  const x = placeOn(axis, box);
  for (const tick of axis.ticks)
    doc
      .moveTo(x(tick), box.y)
      .lineTo(x(tick), box.y + box.height)
      .lineWidth(tick === 1 ? STROKE.line : STROKE.hair)
      .stroke(tick === 1 ? INK.soft : INK.hair);
};

const arrow = (doc: PDFKit.PDFDocument, x: number, y: number, way: 1 | -1): void => {
  doc
    .moveTo(x - 4 * way, y - 2.5)
    .lineTo(x, y)
    .lineTo(x - 4 * way, y + 2.5)
    .lineWidth(STROKE.line)
    .stroke(INK.ink);
};
