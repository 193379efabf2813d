import type { Entry } from './entry.js';

/**
 * The first entry that may be sent: one that waits, and before which nothing of the same part waits or was refused.
 *
 * What was refused holds back what came after it on its own part and nothing else; what was set aside holds back
 * nothing.
 *
 * @param entries in the order of writing
 * @param skip ids that are not to be tried now
 */
export const nextToSend = (entries: readonly Entry[], skip: ReadonlySet<string> = new Set()): Entry | null => {
  const held = new Set<string>();
  for (const entry of entries) {
    if (entry.state === 'aside') continue;
    const free = entry.lanes.every((lane) => !held.has(lane));
    if (entry.state === 'waiting' && free && !skip.has(entry.id)) return entry;
    entry.lanes.forEach((lane) => held.add(lane));
  }
  return null;
};

/** How many entries wait behind one that was refused, on its part. */
export const waitingBehind = (entries: readonly Entry[], refused: Entry): number => {
  const held = new Set(refused.lanes);
  let behind = 0;
  for (const entry of entries) {
    if (entry.order <= refused.order || entry.state !== 'waiting') continue;
    if (!entry.lanes.some((lane) => held.has(lane))) continue;
    entry.lanes.forEach((lane) => held.add(lane));
    behind += 1;
  }
  return behind;
};
