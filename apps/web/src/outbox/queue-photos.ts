import type { ParameterOf, PostPath } from '../api/contract.js';
import type { MadeBy } from './entry.js';
import { NotKept, queueEntry, type BodyOf, type QueueOptions } from './queue-entry.js';

/**
 * Keeps photos on this device, each an entry of its own, after the entry that they belong to.
 *
 * @returns how many could not be kept: the entry that was kept before them stays, and is not to be entered again
 * @throws NobodyHere
 */
export const queuePhotos = async <P extends PostPath>(
  path: P,
  parameters: Readonly<Record<ParameterOf<P>, string | MadeBy>>,
  body: BodyOf<P>,
  about: Omit<QueueOptions, 'photo'>,
  photos: readonly File[],
): Promise<number> => {
  let lost = 0;
  for (const photo of photos) if (!(await hadRoom(queueEntry(path, parameters, body, { ...about, photo })))) lost += 1;
  return lost;
};

/**
 * Whether what is kept after another entry found room on this device: that entry stays, however it goes with this one.
 *
 * @throws NobodyHere
 */
export const hadRoom = async (keeping: Promise<string>): Promise<boolean> => {
  try {
    await keeping;
    return true;
  } catch (error) {
    if (!(error instanceof NotKept)) throw error;
    return false;
  }
};
