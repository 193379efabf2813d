import type { SessionView } from '@hull-record/contracts';
import { smallStore } from './small-store.js';

/** Who has this tablet. */
export interface Holder {
  readonly badge: string;
  readonly roles: readonly string[];
  /** By a sign-in with a PIN; else by the badge alone, off line, and what is entered waits for a confirmation. */
  readonly proved: boolean;
  readonly since: string;
}

/** What the service said of this browser, as last heard: the device it enters facts on. */
interface Place {
  readonly device: string | null;
  readonly enrolled: boolean;
}

const holder = smallStore<Holder | null>('hull-record.holder', null);
const place = smallStore<Place>('hull-record.device', { device: null, enrolled: false });

/** Who has this tablet, and which device it is: remembered, so that work goes on with no network. */
export const holding = {
  get: holder.get,
  subscribe: holder.subscribe,
  place: place.get,
  /** Takes over, as the service says after a sign-in, or off line by the badge alone. */
  take: (next: Holder | null): void => holder.set(next),
  /** Keeps what the service said of who is signed in here. A takeover off line stands until somebody signs in. */
  told: (view: SessionView): void => {
    place.set({ device: view.device, enrolled: view.enrolled });
    const { person } = view;
    const now = holder.get();
    if (person === null) return;
    if (now !== null && !now.proved && now.badge !== person.badge) return;
    if (now?.proved && now.badge === person.badge) return;
    holder.set({ badge: person.badge, roles: person.roles, proved: true, since: view.at });
  },
};
