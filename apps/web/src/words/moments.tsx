import type { ReactNode } from 'react';
import { Text } from './text.js';
import { useWords } from './use-words.js';

interface At {
  readonly at: string;
}

/** The day of an instant, by the clock of the plant. */
export const Day = ({ at }: At): ReactNode => (
  <time dateTime={at} className="nb">
    {useWords().times.day(at)}
  </time>
);

/** A calendar day, the same wherever it is read. */
export const CalendarDay = ({ at }: At): ReactNode => (
  <time dateTime={at} className="nb">
    {useWords().times.calendarDay(at)}
  </time>
);

/** An instant to the minute, by the clock of the plant. */
export const Moment = ({ at }: At): ReactNode => {
  const { day, minute } = useWords().times;
  return (
    <time dateTime={at} className="nb">
      {`${day(at)}, ${minute(at)}`}
    </time>
  );
};

interface FromTo {
  readonly from: string;
  readonly to: string;
}

/** From one instant to another; the day is not said twice. */
export const Span = ({ from, to }: FromTo): ReactNode => {
  const { day, minute } = useWords().times;
  if (from === to) return <Moment at={from} />;
  const end = day(from) === day(to) ? <time dateTime={to}>{minute(to)}</time> : <Moment at={to} />;
  return <Text of="app.fromTo" with={{ from: <Moment at={from} />, to: end }} />;
};

/** From one day to another; one day is said once. */
export const Days = ({ from, to }: FromTo): ReactNode => {
  const { day } = useWords().times;
  if (day(from) === day(to)) return <Day at={from} />;
  return <Text of="app.fromTo" with={{ from: <Day at={from} />, to: <Day at={to} /> }} />;
};
