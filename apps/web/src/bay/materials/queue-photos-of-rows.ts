import { queuePhotosOfUnnamed } from '../../day/queue-unnamed-photos.js';
import { takenOf, type TakenRow } from './taken-row.js';

/**
 * Keeps, after the entry that used them, the photos of material that nobody can name.
 *
 * @returns how many this tablet could not keep
 */
export const queuePhotosOfRows = (
  entry: string,
  rows: readonly TakenRow[],
  about: { readonly lanes: readonly string[]; readonly about: string },
): Promise<number> =>
  queuePhotosOfUnnamed(
    entry,
    rows.flatMap((row) => (takenOf(row) === null ? [] : [row.from === 'unidentified' ? row.unnamed : undefined])),
    about,
  );
