import type { EntityManager } from 'typeorm';
import { checkPlace, locate, type Place } from '@hull-record/trade';
import { findSkin } from '../lookups/find-skin.js';
import { InvalidRequest } from '../refusals.js';

/** Where a place lies, in percent of the length and in words. */
export interface Located {
  readonly percentOfLength: number | null;
  readonly zone: string;
}

/**
 * Checks a place against the model of a part and says where it lies.
 *
 * @throws InvalidRequest naming each coordinate that is off the part, with its limit
 */
export const placeOnPart = async (
  tx: EntityManager,
  partId: string,
  place: Place,
  pointer: string,
): Promise<Located> => {
  const skin = await findSkin(tx, partId, pointer);
  const problems = checkPlace(place, skin);
  if (problems.length > 0)
    throw new InvalidRequest(
      problems.map((problem) => ({ pointer: `${pointer}${problem.pointer}`, detail: problem.message })),
    );
  const { percentOfLength, zone, height, belowWaterline } = locate(place, skin);
  const water = belowWaterline === undefined ? [] : [belowWaterline ? 'below the waterline' : 'above the waterline'];
  const band = height === undefined ? [] : [height];
  return {
    percentOfLength,
    zone: [zone === 'between' ? 'between the named zones' : zone, ...band, ...water].join(', '),
  };
};
