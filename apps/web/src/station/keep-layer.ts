import type { PostBody } from '../api/contract.js';
import type { Line } from '../day/propose.js';
import type { OfEnvelope } from '../outbox/entry.js';
import { NotKept, queueEntry } from '../outbox/queue-entry.js';
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
  let lost = 0;
  const taken = lines.filter((line) => toTaken(line).length > 0);
  for (const [line, { source }] of taken.entries())
    for (const photo of source?.unnamed?.photos ?? []) {
      const of = { ...about, detail: source?.unnamed?.looks ?? '', photo };
      try {
        await queueEntry('/api/unidentified/:entry/photos', { entry: { entry, part: null } }, { line }, of);
      } catch (error) {
        if (!(error instanceof NotKept)) throw error;
        lost += 1;
      }
    }
  return lost;
};
