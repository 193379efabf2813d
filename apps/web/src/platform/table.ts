import { h, type Child } from './dom.js';

/** One column of a table of Ts. */
export interface Column<T> {
  readonly head: string;
  readonly cell: (row: T) => Child;
  /** The column that names the row. */
  readonly names?: boolean;
  /** `r` sets figures to the right; others are for drawing. */
  readonly class?: string;
}

/**
 * A ruled table with a caption that says what it lists.
 *
 * Roles are written out: on a narrow screen rows are laid out as blocks, and browsers then forget that it is a table.
 * Each cell carries its column's name for that layout.
 */
export const table = <T>(caption: string, columns: readonly Column<T>[], rows: readonly T[]): HTMLTableElement =>
  h(
    'table',
    { role: 'table' },
    h('caption', {}, caption),
    h('thead', { role: 'rowgroup' }, h('tr', { role: 'row' }, columns.map(head))),
    h(
      'tbody',
      { role: 'rowgroup' },
      rows.map((row) => rowOf(columns, row)),
    ),
  );

/** One row of such a table, to be added later. */
export const rowOf = <T>(columns: readonly Column<T>[], row: T): HTMLTableRowElement =>
  h(
    'tr',
    { role: 'row' },
    columns.map((column) => cell(column, row)),
  );

const head = <T>({ head: name, class: style }: Column<T>): HTMLElement =>
  h('th', { scope: 'col', role: 'columnheader', class: style }, name);

const cell = <T>(column: Column<T>, row: T): HTMLElement => {
  const { head: name, class: style, names } = column;
  // One box for the content: on a narrow screen it stands beside the column's name.
  const inside = h('div', {}, column.cell(row));
  if (names) return h('th', { scope: 'row', role: 'rowheader', class: style, 'data-of': name }, inside);
  return h('td', { role: 'cell', class: style, 'data-of': name }, inside);
};
