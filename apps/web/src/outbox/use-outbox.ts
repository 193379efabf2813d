import { useMemo, useSyncExternalStore } from 'react';
import { outboxStore } from './outbox-store.js';

/** What waits on this device, what was refused, and what was set aside: kept up to date while the page is open. */
export const useOutbox = () => {
  const { entries, heldUp, justSent } = useSyncExternalStore(outboxStore.subscribe, outboxStore.get);
  return useMemo(() => {
    const all = entries ?? [];
    return {
      all,
      /** Whether the device was looked through: before that nobody knows that nothing waits. */
      looked: entries !== null,
      heldUp,
      justSent,
      /** How many were sent in this visit. */
      sent: justSent.length,
      waiting: all.filter(({ state }) => state === 'waiting'),
      refused: all.filter(({ state }) => state === 'refused'),
      aside: all.filter(({ state }) => state === 'aside'),
    };
  }, [entries, heldUp, justSent]);
};
