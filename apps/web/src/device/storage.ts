import { smallStore } from './small-store.js';

/** Whether the browser promised not to clear what this device keeps; null while it was not asked. */
const promised = smallStore<boolean | null>('hull-record.stays', null);

/** Whether what waits here is safe from the browser's own clearing up. */
export const storageStays = {
  get: promised.get,
  subscribe: promised.subscribe,
  /** Asks the browser for the promise; it may refuse, and says so by false. */
  ask: async (): Promise<void> => {
    try {
      promised.set((await navigator.storage.persisted()) || (await navigator.storage.persist()));
    } catch {
      promised.set(false);
    }
  },
};
