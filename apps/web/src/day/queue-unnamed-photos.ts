import { queuePhotos } from '../outbox/queue-photos.js';
import type { Unnamed } from './unnamed.js';

/**
 * Keeps on this tablet, after an entry, the photos of the material in it that nobody could name.
 *
 * @param used what is known of each line of material as it was recorded, in its order; nothing of what has a name
 * @returns how many photos the tablet could not keep
 */
export const queuePhotosOfUnnamed = async (
  entry: string,
  used: readonly (Unnamed | undefined)[],
  about: { readonly lanes: readonly string[]; readonly about: string },
): Promise<number> => {
  let lost = 0;
  for (const [line, of] of used.entries())
    if (of !== undefined)
      lost += await queuePhotos(
        '/api/unidentified/:entry/photos',
        { entry: { entry, part: null } },
        { line },
        { ...about, detail: of.looks },
        of.photos,
      );
  return lost;
};
