import type { EntityManager } from 'typeorm';
import type { Spot } from '@hull-record/contracts';
import { checkPlace } from '@hull-record/trade';
import { findSkin } from '../platform/lookups/find-skin.js';
import type { FieldError } from '../platform/refusals.js';

/**
 * Places of readings that are not on the part.
 *
 * @param at JSON pointer of the i-th spot
 */
export const placeProblems = async (
  tx: EntityManager,
  partId: string | null,
  spots: readonly Pick<Spot, 'place'>[],
  at: (i: number) => string = (i) => `/spots/${i}`,
): Promise<readonly FieldError[]> => {
  const first = spots.findIndex(({ place }) => place);
  if (first < 0) return [];
  if (partId === null)
    return [{ pointer: `${at(first)}/place`, detail: 'is a place on a part: a lot has none, leave it out' }];
  const skin = await findSkin(tx, partId, `${at(first)}/place`);
  return spots.flatMap(({ place }, i) =>
    (place ? checkPlace(place, skin) : []).map(({ pointer, message }) => ({
      pointer: `${at(i)}/place${pointer}`,
      detail: message,
    })),
  );
};
