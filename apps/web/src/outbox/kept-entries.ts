import { deviceDatabase, TO_DISK } from '../device/database.js';
import type { Entry, EntryProblem, Photo, Sent } from './entry.js';

/** So many answers are remembered; older ones are of layers that are long made. */
const SENT_KEPT = 2_000;

/** Everything that this device wrote and the service does not have, in the order of writing. */
export const keptEntries = async (): Promise<readonly Entry[]> => (await deviceDatabase()).getAll('entries');

/** Keeps an entry, with its photo; it is kept when this comes back, and not before. */
export const keepEntry = async (entry: Omit<Entry, 'order'>, photo?: Photo): Promise<void> => {
  const tx = (await deviceDatabase()).transaction(['entries', 'photos'], 'readwrite', TO_DISK);
  // The database gives it its place in the order.
  await Promise.all([
    tx.objectStore('entries').add(entry as Entry),
    ...(photo === undefined ? [] : [tx.objectStore('photos').put(photo, entry.id)]),
    tx.done,
  ]);
};

export const photoOf = async (id: string): Promise<Photo | undefined> => (await deviceDatabase()).get('photos', id);

/** Takes an entry off the outbox once the service has it, and remembers the answer. */
export const entrySent = async ({ order, id, path, about, detail }: Entry, result: unknown): Promise<void> => {
  const tx = (await deviceDatabase()).transaction(['entries', 'photos', 'sent'], 'readwrite', TO_DISK);
  const sent = tx.objectStore('sent');
  await tx.objectStore('entries').delete(order);
  await tx.objectStore('photos').delete(id);
  await sent.put({ id, path, about, detail, at: new Date().toISOString(), result });
  const over = (await sent.count()) - SENT_KEPT;
  let oldest = over > 0 ? await sent.index('at').openCursor() : null;
  for (let left = over; oldest !== null && left > 0; left -= 1) {
    await oldest.delete();
    oldest = await oldest.continue();
  }
  await tx.done;
};

/** Changes an entry that is still here; what was sent meanwhile is not brought back. */
const changeEntry = async (id: string, change: (entry: Entry) => Entry): Promise<void> => {
  const tx = (await deviceDatabase()).transaction('entries', 'readwrite', TO_DISK);
  const entry = await tx.store.index('id').get(id);
  if (entry !== undefined) await tx.store.put(change(entry));
  await tx.done;
};

export const entryRefused = (id: string, problem: EntryProblem): Promise<void> =>
  changeEntry(id, (entry) => ({ ...entry, state: 'refused', problem }));

/**
 * Puts a mended entry back where it stood. The refusal recorded nothing, so that it keeps its id; only an id that the
 * service knows with another body needs a new one.
 */
export const mendEntry = (id: string, body: Readonly<Record<string, unknown>>): Promise<void> =>
  changeEntry(id, (entry) => {
    const taken = entry.problem?.type === '/problems/client-id-reused' && !entry.hasPhoto;
    const newId = taken ? crypto.randomUUID() : entry.id;
    const mended = { ...entry.body, ...body, id: newId };
    return { ...entry, id: newId, body: mended, state: 'waiting', problem: null };
  });

/** Sets an entry aside with a reason: it stays on this device, is not sent, and holds nothing back. */
export const setAside = (id: string, aside: NonNullable<Entry['aside']>): Promise<void> =>
  changeEntry(id, (entry) => ({ ...entry, state: 'aside', aside }));

export const sentOf = async (id: string): Promise<Sent | undefined> => (await deviceDatabase()).get('sent', id);

/** What was sent last from this device, the newest first. */
export const sentLast = async (count: number): Promise<readonly Sent[]> => {
  const all = await (await deviceDatabase()).getAllFromIndex('sent', 'at');
  return all.slice(-count).reverse();
};
