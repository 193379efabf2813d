import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import { INK, STROKE } from '../ink.js';
import { drawLines, heightOf, para, setLines } from '../paragraph.js';
import { CONTENT_WIDTH, MARGIN, type Sheet } from '../sheet.js';
import { mark, open } from '../tags.js';
import { text } from '../text-blocks.js';
import { layOutTriangle, type TriangleLayout, type TriangleRow } from './triangle-layout.js';
import type { TriangleView } from './triangle-view.js';

const LABEL = 52;
const TOTALS = 96;
const ROW = 11.5;
const HEAD = 24;

/** The triangle of build month by months in service, with the totals of each row, and what it shows in words. */
export const triangleFigure = (fonts: Fonts, view: TriangleView): readonly Block[] => {
  const layout = layOutTriangle(view, CONTENT_WIDTH - LABEL - TOTALS, (count) => widthOf(fonts, String(count)));
  const words = captionOf(view, layout).map((each) => para(each, 'note'));
  const height = HEAD + layout.rows.length * ROW + 4;
  return [
    {
      ...{ before: 5, lead: height, keepWithNext: true },
      draw: (sheet, parent) => {
        const figure = open(sheet.doc, parent, 'Figure', { alt: altOf(layout) });
        mark(sheet.doc, figure, 'Figure', () => drawTriangle(sheet, layout));
        figure.end();
        sheet.y += height;
      },
    },
    { ...text(fonts, words), lead: heightOf(setLines(fonts, words, CONTENT_WIDTH)) },
  ];
};

const widthOf = (fonts: Fonts, words: string): number => fonts.width(fonts.units(words, 'text'), 'text', 8);

const months = (count: number): string => (count === 1 ? 'month' : `${count} months`);

const captionOf = ({ since }: TriangleView, { monthsAcross, monthsDown, most }: TriangleLayout): readonly string[] => [
  `Down: when a hull was begun, by the ${months(monthsDown)}. Across: months since it ${since}, by the ${months(monthsAcross)}. ` +
    'A number: claims, repeated ones too. A dot: hulls were watched, and had no claim. Blank: not yet watched.',
  most === 0
    ? 'No claim is in it.'
    : `Grey rises with claims per hull and month; a full cell is ${most.toPrecision(2)}, the most. A row that stands out ` +
      'points to what was built then, a column to age, a slanting line to something that happened at one time.',
];

const altOf = ({ rows }: TriangleLayout): string => {
  const [first, last] = [rows[0]?.label ?? '', rows.at(-1)?.label ?? ''];
  const claims = rows.reduce((sum, row) => sum + row.claims, 0);
  const most = rows.reduce<TriangleRow | undefined>(
    (a, b) => (a === undefined || b.claims > a.claims ? b : a),
    undefined,
  );
  const row =
    most === undefined || most.claims === 0 ? '' : `, most of them, ${most.claims}, of hulls begun in ${most.label}`;
  return `Triangle of hulls begun from ${first} to ${last} by months in service: ${claims} claims${row}.`;
};

const drawTriangle = (sheet: Sheet, layout: TriangleLayout): void => {
  const { doc } = sheet;
  const [left, top] = [MARGIN + LABEL, sheet.y + HEAD];
  const right = left + layout.columns * layout.cellWidth;
  word(sheet, 'begun', MARGIN, sheet.y + 11);
  word(sheet, 'months in service', left, sheet.y);
  word(sheet, 'hulls', right + 10, sheet.y + 11);
  word(sheet, 'claims', right + 46, sheet.y + 11);
  columnNames(sheet, layout, left, sheet.y + 11);
  layout.rows.forEach((row, i) => {
    const y = top + i * ROW;
    word(sheet, row.label, MARGIN, y + 0.5);
    row.cells.forEach((cell, at) => drawCell(sheet, cell, { x: left + at * layout.cellWidth, y, layout }));
    word(sheet, String(row.hulls), right + 10, y + 0.5);
    word(sheet, String(row.claims), right + 46, y + 0.5);
  });
  doc.moveTo(left, top).lineTo(right, top).lineWidth(STROKE.hair).stroke(INK.soft);
};

/** Names of columns where there is room for them. */
const columnNames = (
  sheet: Sheet,
  { columns, cellWidth, monthsAcross }: TriangleLayout,
  left: number,
  y: number,
): void => {
  let free = left;
  for (let i = 0; i < columns; i += 1) {
    const name = String(i * monthsAcross);
    const [x, width] = [left + i * cellWidth, widthOf(sheet.fonts, name)];
    if (x < free) continue;
    word(sheet, name, x, y);
    free = x + width + 4;
  }
};

const word = ({ doc, fonts }: Sheet, words: string, x: number, y: number): void =>
  drawLines(doc, fonts, setLines(fonts, [para(words, 'note')], 120), { x, y, width: 120 });

const drawCell = (
  sheet: Sheet,
  { claims, atRisk }: TriangleRow['cells'][number],
  { x, y, layout }: { readonly x: number; readonly y: number; readonly layout: TriangleLayout },
): void => {
  if (atRisk === 0) return;
  const { doc, fonts } = sheet;
  const { cellWidth: width, most } = layout;
  if (claims === 0) {
    doc.circle(x + width / 2, y + ROW / 2, 0.6).fill(INK.soft);
    return;
  }
  const height = (ROW - 1) * Math.min(1, claims / atRisk / most);
  doc.rect(x + 0.5, y + ROW - 0.5 - height, width - 1, height).fill(INK.pale);
  doc
    .rect(x + 0.5, y + 0.5, width - 1, ROW - 1)
    .lineWidth(STROKE.hair)
    .stroke(INK.soft);
  const own = widthOf(fonts, String(claims));
  word(sheet, String(claims), x + (width - own) / 2, y + 0.5);
};
