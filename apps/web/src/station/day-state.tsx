import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { Refused } from '../api/problem.js';
import { Loading } from '../asked/answer.js';
import { Trouble } from '../asked/trouble.js';
import type { Day } from '../day/now.js';
import type { useDay } from '../day/use-day.js';
import { mark } from '../marks/mark.js';
import { Moment } from '../words/moments.js';
import { Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';

interface DayStateProps {
  readonly of: ReturnType<typeof useDay>;
  readonly children: (day: Day) => ReactNode;
}

/** Shows the day, or that it loads, or why there is none; and how old it is when it is old. */
export const DayState = ({ of: { day, oldAt, error, again }, children }: DayStateProps) => {
  const { t } = useWords();
  if (day === null && error instanceof Refused && error.status === 401)
    return (
      <p className="st-say">
        <Link to="/station/take-over" className="btn do">
          {t('station.takeOver')}
        </Link>
      </p>
    );
  if (day === null)
    return error === null ? (
      <Loading what={t('day.sheet')} />
    ) : (
      <Trouble what={t('day.sheet')} error={error} again={again} />
    );
  return (
    <>
      {oldAt === null ? null : (
        <p className="st-old">{mark('near', <Text of="day.old" with={{ at: <Moment at={oldAt} /> }} />)}</p>
      )}
      {children(day)}
    </>
  );
};
