import { useEffect, useState } from 'react';
import type { EntryProblem, Sent } from './entry.js';
import { sentOf } from './kept-entries.js';
import { useOutbox } from './use-outbox.js';

/** What became of an entry: it waits on this device, the service has it, or refused it. */
export type Outcome =
  | { readonly state: 'waiting' }
  | { readonly state: 'sent'; readonly result: unknown }
  | { readonly state: 'refused'; readonly problem: EntryProblem | null };

/** What becomes of an entry that was kept in this visit, while one looks on. */
export const useOutcome = (id: string): Outcome => {
  const { all, sent } = useOutbox();
  const [answer, setAnswer] = useState<Sent>();
  const entry = all.find((each) => each.id === id);
  const there = entry !== undefined;
  useEffect(() => {
    if (there) return;
    sentOf(id).then(setAnswer, () => undefined);
  }, [id, there, sent]);
  if (entry?.state === 'refused') return { state: 'refused', problem: entry.problem };
  if (answer?.id === id) return { state: 'sent', result: answer.result };
  return { state: 'waiting' };
};
