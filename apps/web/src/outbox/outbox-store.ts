import { clock } from '../device/clock.js';
import type { Entry } from './entry.js';
import { keptEntries } from './kept-entries.js';

/** The outbox as the pages see it. */
export interface OutboxView {
  /** Null until the device was looked through; and while it cannot be. */
  readonly entries: readonly Entry[] | null;
  /** Why what waits is not on its way; null: it is, or nothing waits. */
  readonly heldUp: 'unreachable' | 'busy' | 'sign-in' | null;
  /** What was sent in this visit, with when by the service's clock, ms since 1970. */
  readonly justSent: readonly { readonly entry: Entry; readonly at: number }[];
}

let now: OutboxView = { entries: null, heldUp: null, justSent: [] };
const listeners = new Set<() => void>();
/** Other windows of this device hear of what changed here. */
const others = new BroadcastChannel('hull-record.outbox');
others.onmessage = () => void readAgain();

const show = (next: Partial<OutboxView>): void => {
  now = { ...now, ...next };
  listeners.forEach((tell) => tell());
};

const readAgain = async (): Promise<void> => {
  try {
    show({ entries: await keptEntries() });
  } catch {
    show({ entries: null });
  }
};

export const outboxStore = {
  get: (): OutboxView => now,
  subscribe: (tell: () => void): (() => void) => {
    if (now.entries === null) void readAgain();
    listeners.add(tell);
    return () => listeners.delete(tell);
  },
  /** Called whenever what is kept changed. */
  changed: async (): Promise<void> => {
    await readAgain();
    others.postMessage('changed');
  },
  heldUp: (why: OutboxView['heldUp']): void => show({ heldUp: why }),
  oneSent: (entry: Entry): void => show({ justSent: [...now.justSent, { entry, at: clock.now() }] }),
};
