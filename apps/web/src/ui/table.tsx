import { memo, type ReactNode } from 'react';

/** One column of a table of Ts. */
export interface Column<T> {
  readonly head: string;
  readonly cell: (row: T) => ReactNode;
  /** The column that names the row. */
  readonly names?: boolean;
  /** `r` sets figures to the right; others are for drawing. */
  readonly class?: string;
}

interface TableProps<T> {
  /** Says what is listed. */
  readonly caption: string;
  readonly columns: readonly Column<T>[];
  readonly rows: readonly T[];
  readonly className?: string;
  /** An id for each row, when something leads to it. */
  readonly rowId?: (row: T) => string;
  /** How many rows of the list stand before these: a row that stays is then not drawn anew when others make room. */
  readonly before?: number;
}

/**
 * A ruled table with a caption that says what it lists.
 *
 * Roles are written out: on a narrow screen rows are laid out as blocks, and browsers then forget that it is a table.
 * Each cell carries its column's name for that layout.
 */
export const Table = <T,>({ caption, columns, rows, className, rowId, before = 0 }: TableProps<T>) => (
  <table role="table" className={className}>
    <caption>{caption}</caption>
    <thead role="rowgroup">
      <tr role="row">
        {columns.map(({ head, class: style }) => (
          <th key={head} scope="col" role="columnheader" className={style}>
            {head}
          </th>
        ))}
      </tr>
    </thead>
    <tbody role="rowgroup">
      {rows.map((row, i) => (
        <Row key={before + i} columns={columns} row={row} id={rowId?.(row)} />
      ))}
    </tbody>
  </table>
);

interface RowProps<T> {
  readonly columns: readonly Column<T>[];
  readonly row: T;
  readonly id: string | undefined;
}

const RowOf = <T,>({ columns, row, id }: RowProps<T>) => (
  <tr role="row" {...(id === undefined ? {} : { id, tabIndex: -1 })}>
    {columns.map((column) => (
      <Cell key={column.head} column={column} row={row} />
    ))}
  </tr>
);
/** Drawn anew when its row or the columns are others: of a long list whose columns stay, only what came is drawn. */
const Row = memo(RowOf) as typeof RowOf;

interface CellProps<T> {
  readonly column: Column<T>;
  readonly row: T;
}

/** One box for the content: on a narrow screen it stands beside the column's name. */
const Cell = <T,>({ column: { head, cell, class: style, names }, row }: CellProps<T>) => {
  const inside = <div>{cell(row)}</div>;
  if (names)
    return (
      <th scope="row" role="rowheader" className={style} data-of={head}>
        {inside}
      </th>
    );
  return (
    <td role="cell" className={style} data-of={head}>
      {inside}
    </td>
  );
};
