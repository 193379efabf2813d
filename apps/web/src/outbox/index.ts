/**
 * The outbox: every write of the station goes through it, so that it is kept with no network and sent exactly once.
 *
 * - `queueEntry(path, parameters, body, { lanes, about, detail, photo })` keeps an entry on the disk of this device and
 *   gives its id, which is the id of what it records. The body is that of the route without the envelope: id, person,
 *   device, times and the offset of the clock are put to it. `lanes` are the parts it is about: within one, entries are
 *   sent in the order of writing, and what was refused holds back what follows; other parts go on.
 * - A parameter may be `{ entry, part }`: what an earlier entry makes, not known before that one is sent.
 * - `photo` goes along as multipart, field `photo` beside field `record`; it is kept and removed with its entry.
 * - `useOutbox()` tells a page what waits, what was refused and what was set aside.
 *
 * A new kind of entry needs a line in `entry-words.ts`, so that people can tell what waits.
 */
export { queueEntry, NobodyHere, NotKept, type BodyOf } from './queue-entry.js';
export { useOutbox } from './use-outbox.js';
export type { Entry, EntryProblem, MadeBy } from './entry.js';
