import type { OutsideRepairView } from '@hull-record/paper';
import type { RepairRow } from '../platform/views/faults.js';
import { count } from './word-values.js';

type Told = Pick<RepairRow, 'outside' | 'reporter' | 'note' | 'photos'>;

/**
 * Words what is known of a repair that was done elsewhere; null of one of the plant.
 *
 * @param hasLots whether lots of the plant are known to have gone into it
 */
export const wordOutside = ({ outside, reporter, note, photos }: Told, hasLots: boolean): OutsideRepairView | null => {
  if (outside === null) return null;
  const { when = 'day not known', material, toldBy, evidence } = outside;
  return {
    done: when,
    material: material === undefined ? (hasLots ? '' : 'not known') : `as told: ${material}`,
    knownFrom: [
      toldBy,
      ...(evidence === undefined ? [] : [`evidence: ${evidence}`]),
      ...(reporter === null ? [] : [`reported by ${reporter}`]),
    ].join('; '),
    note,
    photos: wordPhotos(photos),
  };
};

const wordPhotos = (photos: Told['photos']): string =>
  photos.length === 0
    ? ''
    : `${count(photos.length, 'photo')}, SHA-256 of the original begins ${photos
        .map(
          ({ shows, originalSha256, redactedOn }) =>
            `${originalSha256.slice(0, 12)} (${shows}${redactedOn === null ? '' : `, redacted on ${redactedOn}`})`,
        )
        .join(', ')}`;
