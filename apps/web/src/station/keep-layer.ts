import type { PostBody } from '../api/contract.js';
import type { Line } from '../day/propose.js';
import { queuePhotosOfUnnamed } from '../day/queue-unnamed-photos.js';
import type { OfEnvelope } from '../outbox/entry.js';
import { queueEntry } from '../outbox/queue-entry.js';
import { toTaken } from './to-taken.js';

interface About {
  readonly lanes: readonly string[];
  readonly about: string;
}

/**
 * Keeps a layer on this tablet, and after it each photo of material that nobody could name.
 *
 * @returns how many photos the tablet could not keep: the layer is kept all the same, and is not to be entered again
 * @throws NobodyHere, NotKept of the layer itself
 */
export const keepLayer = async (
  body: Omit<PostBody<'/api/layers'>, keyof OfEnvelope>,
  lines: readonly Line[],
  about: About,
): Promise<number> => {
  const detail = lines.map(({ source }) => source?.code || (source?.unnamed?.looks ?? '')).join(', ');
  const entry = await queueEntry('/api/layers', {}, body, { ...about, detail });
  const taken = lines.filter((line) => toTaken(line).length > 0);
  return queuePhotosOfUnnamed(
    entry,
    taken.map(({ source }) => source?.unnamed),
    about,
  );
};
