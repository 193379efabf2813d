import type { InfiniteData, UseInfiniteQueryResult } from '@tanstack/react-query';
import type { Recomputing } from '@hull-record/contracts';
import { useState, type ReactNode } from 'react';
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

/** So many pages stand in the table at once: more would hold up the page, however long the list is. */
const SHOWN_AT_ONCE = 3;

/** A table that shows its first page, and more of it when asked; of very many, earlier ones make room. */
export const PagedTable = <T,>({ query, empty, ...list }: PagedTableProps<T>): ReactNode => {
  const more = query.isFetchNextPageError;
  const { t } = useWords();
  const [back, setBack] = useState(0);
  return (
    <Answer what={list.what} query={more ? { ...query, error: null } : query}>
      {({ pages }) => {
        const count = pages.reduce((sum, { items }) => sum + items.length, 0);
        if (count === 0) return empty;
        const end = Math.max(Math.min(SHOWN_AT_ONCE, pages.length), pages.length - back);
        const from = Math.max(0, end - SHOWN_AT_ONCE);
        const before = pages.slice(0, from).reduce((sum, { items }) => sum + items.length, 0);
        const rows = pages.slice(from, end).flatMap(({ items }) => items);
        return (
          <>
            <RecomputingNote of={pages[0]?.recomputing} />
            {from === 0 ? null : (
              <p className="more">
                <Button onPress={() => setBack(pages.length - end + 1)}>{t('app.earlier', { what: list.what })}</Button>
              </p>
            )}
            <Table caption={list.caption} columns={list.columns} rows={rows} before={before} />
            {end === pages.length ? (
              <More what={list.what} count={count} query={query} />
            ) : (
              <p className="more">
                <Button onPress={() => setBack(Math.max(0, pages.length - end - 1))}>
                  {t('app.later', { what: list.what })}
                </Button>
              </p>
            )}
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
