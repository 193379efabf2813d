import type { UseQueryResult } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { Empty } from '../ui/page.js';
import { Table, type Column } from '../ui/table.js';
import { Answer } from './answer.js';

interface WholeTableProps<T> {
  /** What is listed, such as "the models". */
  readonly what: string;
  readonly caption: string;
  readonly columns: readonly Column<T>[];
  readonly query: UseQueryResult<readonly T[]>;
  /** What to do while there is nothing. */
  readonly empty: string;
}

/** A table of all that there is of a kind, which is little. */
export const WholeTable = <T,>({ what, caption, columns, query, empty }: WholeTableProps<T>): ReactNode => (
  <Answer what={what} query={query}>
    {(rows) => (rows.length === 0 ? <Empty>{empty}</Empty> : <Table caption={caption} columns={columns} rows={rows} />)}
  </Answer>
);
