import { useState, type ReactNode } from 'react';
import { NobodyHere } from '../outbox/queue-entry.js';
import { useWords } from '../words/use-words.js';

interface Keeping {
  /** Does what queues entries; true when all of them are on the disk of this tablet. */
  readonly keep: (queue: () => Promise<unknown>) => Promise<boolean>;
  readonly busy: boolean;
  /** Says that it is kept, or that it is not and what to do. */
  readonly note: ReactNode;
}

/** Keeps the entries of a task. It is said to be kept when the disk has it, and not before. */
export const useKeep = (): Keeping => {
  const { t } = useWords();
  const [state, setState] = useState<'none' | 'busy' | 'kept' | 'notKept' | 'nobody'>('none');
  const keep = async (queue: () => Promise<unknown>): Promise<boolean> => {
    setState('busy');
    try {
      await queue();
      setState('kept');
      return true;
    } catch (error) {
      setState(error instanceof NobodyHere ? 'nobody' : 'notKept');
      return false;
    }
  };
  const failed = state === 'notKept' || state === 'nobody';
  return {
    keep,
    busy: state === 'busy',
    note: (
      <p role={failed ? 'alert' : 'status'} className={failed ? 'wrong' : 'st-kept'}>
        {state === 'kept' ? t('outbox.kept') : null}
        {state === 'notKept' ? t('outbox.notKept') : null}
        {state === 'nobody' ? t('outbox.nobody') : null}
      </p>
    ),
  };
};
