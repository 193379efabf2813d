import { useQuery } from '@tanstack/react-query';
import { useSyncExternalStore } from 'react';
import { sessionQuery } from '../../api/queries.js';
import { smallStore, type SmallStore } from '../../device/small-store.js';

/** Something long that is entered bit by bit. */
export interface Draft<D> {
  readonly value: D;
  /** Whether something was entered: it is kept on this device, and is there again after a reload. */
  readonly isKept: boolean;
  readonly set: (value: D) => void;
  /** Forgets what was entered: the draft is as at first. */
  readonly drop: () => void;
}

const stores = new Map<string, SmallStore<unknown>>();

const storeOf = <D>(name: string): SmallStore<D | null> => {
  const store = stores.get(name) ?? smallStore<unknown>(name, null);
  stores.set(name, store);
  return store as SmallStore<D | null>;
};

/**
 * A draft of who is signed in, kept on this device under a name. It has no personal data.
 *
 * @param name says what it is a draft of, and changes with the shape of D
 */
export const useDraft = <D>(name: string, first: D): Draft<D> => {
  const { data } = useQuery(sessionQuery);
  const store = storeOf<D>(`draft ${data?.person?.badge ?? ''} ${name}`);
  const kept = useSyncExternalStore(store.subscribe, store.get);
  return { value: kept ?? first, isKept: kept !== null, set: store.set, drop: () => store.set(null) };
};
