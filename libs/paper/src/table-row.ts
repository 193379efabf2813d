import type { Box } from './geometry.js';
import { INK } from './ink.js';
import { drawLines, heightOf, type SetLine } from './paragraph.js';
import { MARGIN, rule, type Sheet } from './sheet.js';
import { artifact, mark, open, type Element } from './tags.js';

/** Room above and below the text of a cell, points. */
export const PAD = 3;
/** Room between columns, points. */
export const COLUMN_GAP = 9;

/** A cell broken into lines; x counts from the left margin. */
export interface SetCell {
  readonly x: number;
  readonly width: number;
  readonly align: 'left' | 'right';
  readonly lines: readonly SetLine[];
  readonly alt: string;
  readonly paint?: (doc: PDFKit.PDFDocument, box: Box) => void;
}

/** A row ready to be drawn; a pair is a label and its value, set closer and without a rule. */
export interface Row {
  readonly type: 'heading' | 'row' | 'pair';
  readonly cells: readonly SetCell[];
  readonly least: number;
}

/** The height of a row in points. */
export const rowHeight = ({ type, cells, least }: Row): number =>
  Math.max(least, ...cells.map(({ lines }) => heightOf(lines))) + (type === 'pair' ? 1 : 2 * PAD);

/**
 * Draws a row at sheet.y and moves on.
 *
 * `tags` is the table for a heading, the elements of the cells for a row, or undefined for a repeated heading, which
 * is no content.
 */
export const drawRow = (sheet: Sheet, tags: Element | readonly Element[] | undefined, row: Row): void => {
  const { doc, y } = sheet;
  const height = rowHeight(row);
  if (tags === undefined) {
    artifact(doc, 'Pagination', () => row.cells.forEach((own) => drawText(sheet, own, row)));
  } else if (isCells(tags)) {
    row.cells.forEach((own, i) => drawCell(sheet, tags[i], own, row));
  } else {
    drawHeading(sheet, tags, row);
  }
  if (row.type !== 'pair') {
    const from = row.cells.find(({ paint }) => paint === undefined)?.x ?? 0;
    const last = row.cells.at(-1);
    const width = (last === undefined ? 0 : last.x + last.width) - from;
    artifact(doc, 'Layout', () =>
      rule(doc, y + height, { from: MARGIN + from, width, ink: row.type === 'heading' ? INK.soft : INK.hair }),
    );
  }
  sheet.y += height;
};

const isCells = (tags: Element | readonly Element[]): tags is readonly Element[] => Array.isArray(tags);

const drawHeading = (sheet: Sheet, table: Element, row: Row): void => {
  const tag = open(sheet.doc, table, 'TR');
  for (const own of row.cells) {
    const cell = open(sheet.doc, tag, 'TH', { scope: 'Column' });
    mark(sheet.doc, cell, 'TH', () => drawText(sheet, own, row));
  }
  tag.end();
};

const drawCell = (sheet: Sheet, cell: Element | undefined, own: SetCell, row: Row): void => {
  if (cell === undefined) return;
  const { doc } = sheet;
  const { paint } = own;
  if (paint !== undefined) {
    const figure = open(doc, cell, 'Figure', { alt: own.alt });
    const box = { x: MARGIN + own.x, y: sheet.y, width: own.width, height: rowHeight(row) };
    mark(doc, figure, 'Figure', () => paint(doc, box));
    figure.end();
  }
  if (own.lines.length > 0) mark(doc, cell, 'TD', () => drawText(sheet, own, row));
};

const drawText = ({ doc, fonts, y }: Sheet, { x, width, align, lines }: SetCell, { type }: Row): void =>
  drawLines(doc, fonts, lines, { x: MARGIN + x, y: y + (type === 'pair' ? 0.5 : PAD), width, align });
