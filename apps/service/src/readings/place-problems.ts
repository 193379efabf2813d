import type { EntityManager } from 'typeorm';
import type { Spot } from '@hull-record/contracts';
import { checkPlace } from '@hull-record/trade';
import { findSkin } from '../platform/lookups/find-skin.js';
import type { FieldError } from '../platform/refusals.js';

/** Places of readings that are not on the part. */
export const placeProblems = async (
  tx: EntityManager,
  partId: string,
  spots: readonly Spot[],
): Promise<readonly FieldError[]> => {
  if (!spots.some(({ place }) => place)) return [];
  const skin = await findSkin(tx, partId, '/spots');
  return spots.flatMap(({ place }, i) =>
    place
      ? checkPlace(place, skin).map(({ pointer, message }) => ({
          pointer: `/spots/${i}/place${pointer}`,
          detail: message,
        }))
      : [],
  );
};
