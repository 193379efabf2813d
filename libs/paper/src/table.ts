import type { Block } from './flow.js';
import type { Fonts } from './fonts.js';
import { para, setLines, type Paragraph, type SetLine } from './paragraph.js';
import { CONTENT_WIDTH, startPage, type Sheet } from './sheet.js';
import { COLUMN_GAP, drawRow, PAD, rowHeight, type Row, type SetCell } from './table-row.js';
import { open, type Element } from './tags.js';
import { fitting } from './text-blocks.js';

/** A column: its heading, and its share of the width (shares of a table sum to 1). */
export interface Column {
  readonly title: string;
  readonly share: number;
  readonly align?: 'left' | 'right';
}

/** What stands in a cell; `paint` draws a picture over the whole cell, which `alt` describes. */
export interface Cell {
  readonly paragraphs: readonly Paragraph[];
  readonly paint?: SetCell['paint'];
  readonly alt?: string;
}

/** How a table differs from the usual one with a heading and a rule under each row. */
export interface TableOptions {
  readonly before?: number;
  /** False for label and value pairs: no heading row, the first column heads its row. */
  readonly headed?: boolean;
  readonly leastRowHeight?: number;
  /** Rows that are on the page where it begins, 1 when it does not say. */
  readonly firstRows?: number;
}

/** A row up to this height, points, is kept on one page; a higher one may break inside. */
const KEPT_WHOLE = 300;
/** Label and value pairs up to this height together, points, are kept on one page. */
const PAIRS_KEPT_WHOLE = 150;
/** What must fit of a row that may break inside, points. */
const FIRST_PIECE = 60;

/** A cell of one paragraph. */
export const cell = (text: string, style: Paragraph['style'] = 'body'): Cell => ({ paragraphs: [para(text, style)] });

/**
 * A table as wide as the content. It breaks between rows with its heading repeated; a row higher than 300 points may
 * break inside. Cells wrap; nothing is cut off.
 */
export const table = (
  fonts: Fonts,
  columns: readonly Column[],
  rows: readonly (readonly Cell[])[],
  { before = 3, headed = true, leastRowHeight = 0, firstRows = 1 }: TableOptions = {},
): Block => {
  const set = (cells: readonly Cell[], type: Row['type']): Row =>
    setRow(fonts, columns, cells, { type, leastRowHeight });
  const heading = headed
    ? set(
        columns.map(({ title }) => cell(title, 'note')),
        'heading',
      )
    : undefined;
  const body = rows.map((cells) => set(cells, headed ? 'row' : 'pair'));
  const headingHeight = heading === undefined ? 0 : rowHeight(heading);
  return {
    before,
    lead: headed ? body.slice(0, firstRows).reduce((sum, row) => sum + leadOf(row), headingHeight) : leadOfPairs(body),
    draw: (sheet, parent) => {
      const element = open(sheet.doc, parent, 'Table');
      if (heading !== undefined) drawRow(sheet, element, heading);
      for (const row of body) drawBroken(sheet, element, row, heading);
      element.end();
    },
  };
};

/** Pairs are read together: all of them stay on one page unless they are many. */
const leadOfPairs = (rows: readonly Row[]): number => {
  const all = rows.reduce((sum, row) => sum + rowHeight(row), 0);
  return all <= PAIRS_KEPT_WHOLE || rows[0] === undefined ? all : leadOf(rows[0]);
};

const leadOf = (row: Row): number => (rowHeight(row) > KEPT_WHOLE ? FIRST_PIECE : rowHeight(row));

const setRow = (
  fonts: Fonts,
  columns: readonly Column[],
  cells: readonly Cell[],
  { type, leastRowHeight }: { readonly type: Row['type']; readonly leastRowHeight: number },
): Row => {
  let x = 0;
  const set = columns.map(({ share, align = 'left' }, i): SetCell => {
    const width = share * CONTENT_WIDTH;
    const at = { x, width: width - (i === columns.length - 1 ? 0 : COLUMN_GAP), align };
    x += width;
    const { paragraphs = [], paint, alt = '' } = cells[i] ?? {};
    return { ...at, lines: setLines(fonts, paragraphs, at.width), alt, ...(paint === undefined ? {} : { paint }) };
  });
  return { type, cells: set, least: type === 'heading' ? 0 : leastRowHeight };
};

const drawBroken = (sheet: Sheet, element: Element, row: Row, heading: Row | undefined): void => {
  const room = (): number => sheet.bottom - sheet.y;
  const next = (): void => {
    startPage(sheet);
    if (heading !== undefined) drawRow(sheet, undefined, heading);
  };
  let rest = row;
  if (leadOf(row) > room()) next();
  const tag = open(sheet.doc, element, 'TR');
  const cells = row.cells.map((_, i) => openCell(sheet, tag, row.type === 'pair' && i === 0));
  while (rowHeight(rest) > room()) {
    const height = room() - 2 * PAD;
    const here = (lines: readonly SetLine[]): number => fitting(lines, height);
    drawRow(
      sheet,
      cells,
      withLines(rest, (lines) => lines.slice(0, here(lines))),
    );
    rest = { ...withLines(rest, (lines) => lines.slice(here(lines))), least: 0 };
    next();
  }
  drawRow(sheet, cells, rest);
  tag.end();
};

const openCell = ({ doc }: Sheet, row: Element, heads: boolean): Element =>
  heads ? open(doc, row, 'TH', { scope: 'Row' }) : open(doc, row, 'TD');

const withLines = (row: Row, change: (lines: readonly SetLine[]) => readonly SetLine[]): Row => ({
  ...row,
  cells: row.cells.map((own) => ({ ...own, lines: change(own.lines) })),
});
