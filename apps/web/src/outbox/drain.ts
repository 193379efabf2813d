import { network } from '../device/network.js';
import type { Entry } from './entry.js';
import { findMade, NOT_MADE } from './find-made.js';
import { entryRefused, entrySent, keptEntries, photoOf } from './kept-entries.js';
import { nextToSend } from './next-to-send.js';
import { outboxStore } from './outbox-store.js';
import { sendEntry, type Outcome } from './send-entry.js';

/** It is tried again after so long at first, and at most, ms. */
const SOONEST_MS = 2_000;
const LATEST_MS = 30_000;

let timer: ReturnType<typeof setTimeout> | undefined;
let pause = SOONEST_MS;

/**
 * Sends what waits, in order for each part, until nothing is left that may be sent.
 *
 * One window of the device sends at a time (Web Locks), so that nothing goes out twice; were it to, the service would
 * record it once.
 */
export const drain = async (): Promise<void> => {
  clearTimeout(timer);
  const why = await navigator.locks.request('hull-record.outbox', { ifAvailable: true }, (lock) =>
    lock === null ? 'elsewhere' : sendAll(),
  );
  if (why === 'elsewhere') return tryLater();
  outboxStore.heldUp(why);
  if (why === null) pause = SOONEST_MS;
  else tryLater();
};

const tryLater = (): void => {
  clearTimeout(timer);
  timer = setTimeout(() => void drain().catch(tryLater), pause);
  pause = Math.min(pause * 2, LATEST_MS);
};

type HeldUp = Extract<Outcome, { kind: 'later' }>['why'];

const sendAll = async (): Promise<HeldUp | null> => {
  let waits: HeldUp | null = null;
  const skip = new Set<string>();
  for (;;) {
    const entry = nextToSend(await keptEntries(), skip);
    if (entry === null) return waits;
    const outcome = await tryOnce(entry);
    await keepOutcome(entry, outcome);
    if (outcome.kind !== 'later') continue;
    waits = outcome.why;
    // One that waits for its own person holds its part back; the others go on.
    if (outcome.why !== 'sign-in') return waits;
    skip.add(entry.id);
  }
};

const tryOnce = async (entry: Entry): Promise<Outcome> => {
  const parameters = await findMade(entry);
  if (parameters === null) return { kind: 'refused', problem: NOT_MADE };
  return sendEntry(entry, parameters, entry.hasPhoto ? await photoOf(entry.id) : undefined);
};

const keepOutcome = async (entry: Entry, outcome: Outcome): Promise<void> => {
  network.tried(outcome.kind !== 'later' || outcome.why !== 'unreachable');
  if (outcome.kind === 'later') return;
  if (outcome.kind === 'sent') {
    await entrySent(entry, outcome.result);
    outboxStore.oneSent(entry);
  } else await entryRefused(entry.id, outcome.problem);
  await outboxStore.changed();
};

let begun = false;

/** Sends whenever there is reason to think that it may work: at the start, on line again, when the page is seen again. */
export const keepDraining = (): void => {
  if (begun) return;
  begun = true;
  const soon = (): void => {
    pause = SOONEST_MS;
    void drain().catch(tryLater);
  };
  addEventListener('online', soon);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') soon();
  });
  soon();
};
