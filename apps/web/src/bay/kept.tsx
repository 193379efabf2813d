import { Link } from '@tanstack/react-router';
import { useEffect, useRef, type ReactNode } from 'react';
import { useOutcome } from '../outbox/use-outcome.js';
import { Button } from '../ui/button.js';
import { Said, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { useLookAgain } from './use-look-again.js';

interface KeptProps {
  readonly id: string;
  readonly part: string;
  /** What there is to do once the service has it; it is given the number under which it was recorded. */
  readonly next: (mark: string) => ReactNode;
  /** What there is to do while it waits. */
  readonly waits: string;
  readonly again: string;
  readonly onAgain: () => void;
}

/** Says that an entry is kept, and what becomes of it: it waits, was recorded under a number, or was refused. */
export const Kept = ({ id, part, next, waits, again, onAgain }: KeptProps) => {
  const { t } = useWords();
  const outcome = useOutcome(id);
  const box = useRef<HTMLDivElement>(null);
  const lookAgain = useLookAgain(part);
  const sent = outcome.state === 'sent';
  useEffect(() => box.current?.focus(), []);
  // Whoever goes back to the part finds what was recorded just now.
  useEffect(() => {
    if (sent) void lookAgain();
  }, [sent, lookAgain]);
  return (
    <div className="kept" ref={box} tabIndex={-1} role="status">
      {outcome.state === 'waiting' ? (
        <p>
          <b>{t('bay.kept')}</b> {waits}
        </p>
      ) : null}
      {outcome.state === 'sent' ? next(markOf(outcome.result)) : null}
      {outcome.state === 'refused' ? (
        <>
          <p className="wrong">
            <Text of="bay.refused" with={{ detail: <Said text={outcome.problem?.detail ?? ''} /> }} />
          </p>
          <p>
            <Text of="bay.mend" with={{ outbox: (inside) => <Link to="/station/outbox">{inside}</Link> }} />
          </p>
        </>
      ) : null}
      <div className="acts">
        <Button onPress={onAgain}>{again}</Button>
        <Link className="btn go" to="/station/bay/$part" params={{ part }}>
          {t('bay.toPart', { part })}
        </Link>
      </div>
    </div>
  );
};

const markOf = (answer: unknown): string => {
  const mark = (answer as { readonly mark?: unknown } | null | undefined)?.mark;
  return typeof mark === 'string' ? mark : '';
};
