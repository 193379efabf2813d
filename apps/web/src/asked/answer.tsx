import type { ReactNode } from 'react';
import { Refused } from '../api/problem.js';
import { useWords } from '../words/use-words.js';
import { Stale } from './stale.js';
import { Trouble } from './trouble.js';

/** What is told of a question: one of a kind, or several together. */
interface Query<T> {
  readonly data: T | undefined;
  readonly error: Error | null;
  readonly isFetching: boolean;
  /** When the data was read, ms since 1970. */
  readonly dataUpdatedAt: number;
  readonly refetch: () => Promise<unknown>;
}

interface AnswerProps<T> {
  /** What is asked for, in words that stand after "Loading" and "Not read:". */
  readonly what: string;
  readonly query: Query<T>;
  readonly children: (answer: T) => ReactNode;
  /** What to say when the service knows no such thing. */
  readonly notThere?: ReactNode;
}

/** A part of the page that waits for an answer: it says that it loads, then shows the answer or what went wrong. */
export const Answer = <T,>({ what, query, children, notThere }: AnswerProps<T>): ReactNode => {
  const { data, error, isFetching } = query;
  const again = (): void => void query.refetch();
  if (data !== undefined)
    return (
      <>
        {error === null ? null : <Stale since={query.dataUpdatedAt} again={again} busy={isFetching} />}
        {children(data)}
      </>
    );
  if (error === null || isFetching) return <Loading what={what} />;
  if (notThere !== undefined && error instanceof Refused && error.status === 404) return notThere;
  return <Trouble what={what} error={error} again={again} />;
};

/** Says that something is on its way. */
export const Loading = ({ what }: { readonly what: string }): ReactNode => {
  const { t } = useWords();
  return (
    <p className="soft" role="status">
      {t('app.loading', { what })}
    </p>
  );
};
