import type { EntityManager } from 'typeorm';
import { standing } from '../facts/standing.js';
import { NotThere } from '../refusals.js';

/** Things that are found by a code of the plant, with the column that holds it. */
const CODED = {
  material: 'code',
  tank: 'code',
  model: 'code',
  mold: 'code',
  equipment: 'code',
  dealer: 'code',
  part: 'number',
} as const;

export type Coded = keyof typeof CODED;

/**
 * Finds the id of something by its code.
 *
 * @param pointer field of the request that names it; left out when the path does
 * @throws NotThere
 */
export const findByCode = async (
  tx: EntityManager,
  what: Coded,
  plantId: string,
  code: string,
  pointer?: string,
): Promise<string> => {
  const [found] = await tx.query<{ root: string }[]>(
    `select x.root from fact.${what} x where x.plant_id = $1 and x.${CODED[what]} = $2 and ${standing('x')}`,
    [plantId, code],
  );
  if (!found) throw new NotThere(what, code, pointer);
  return found.root;
};
