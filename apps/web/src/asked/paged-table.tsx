import type { InfiniteData, UseInfiniteQueryResult } from '@tanstack/react-query';
import type { Recomputing } from '@hull-record/contracts';
import type { ReactNode } from 'react';
import { Button } from '../ui/button.js';
import { Table, type Column } from '../ui/table.js';
import { useWords } from '../words/use-words.js';
import { Answer } from './answer.js';
import { RecomputingNote } from './recomputing-note.js';
import { Trouble } from './trouble.js';

interface PageOf<T> {
  readonly items: readonly T[];
  readonly next: string | null;
  /** Of a search whose figures are being worked out anew. */
  readonly recomputing?: Recomputing | null;
}

type Pages<T> = UseInfiniteQueryResult<InfiniteData<PageOf<T>, unknown>>;

interface PagedTableProps<T> {
  /** What is listed, such as "hulls". */
  readonly what: string;
  readonly caption: string;
  readonly columns: readonly Column<T>[];
  readonly query: Pages<T>;
  readonly empty: ReactNode;
  /** What the figures rest on, below the table. */
  readonly note?: string;
}

/** A table that shows its first page, and more of it when asked. */
export const PagedTable = <T,>({ query, empty, ...list }: PagedTableProps<T>): ReactNode => {
  const more = query.isFetchNextPageError;
  return (
    <Answer what={list.what} query={more ? { ...query, error: null } : query}>
      {({ pages }) => {
        const rows = pages.flatMap(({ items }) => items);
        if (rows.length === 0) return empty;
        return (
          <>
            <RecomputingNote of={pages[0]?.recomputing} />
            <Table caption={list.caption} columns={list.columns} rows={rows} />
            <More what={list.what} count={rows.length} query={query} />
            {list.note === undefined ? null : <p className="note soft">{list.note}</p>}
          </>
        );
      }}
    </Answer>
  );
};

interface MoreProps<T> {
  readonly what: string;
  readonly count: number;
  readonly query: Pages<T>;
}

const More = <T,>({ what, count, query }: MoreProps<T>): ReactNode => {
  const { t } = useWords();
  const add = (): void => void query.fetchNextPage();
  return (
    <div className="more">
      <p className="note soft" role="status">
        {query.hasNextPage ? t('app.firstOfMore', { count, what }) : t('app.all', { count, what })}
      </p>
      {query.hasNextPage ? (
        <Button onPress={add} busy={query.isFetchingNextPage}>
          {t('app.more', { what })}
        </Button>
      ) : null}
      {query.isFetchNextPageError ? <Trouble what={t('app.moreOf', { what })} error={query.error} again={add} /> : null}
    </div>
  );
};
