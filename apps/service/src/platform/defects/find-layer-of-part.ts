import { layersOf } from '../layers/layers-of-part.sql.js';
import type { EntityManager } from 'typeorm';
import { NotThere } from '../refusals.js';

/**
 * The id of a layer, by its code in the schedule version that the part follows.
 *
 * @throws NotThere
 */
export const findLayerOfPart = async (
  tx: EntityManager,
  partId: string,
  code: string,
  pointer = '/layer',
): Promise<string> => {
  const [found] = await tx.query<{ id: string }[]>(
    `select y.id from fact.part p cross join lateral ${layersOf('p')} y where p.id = $1 and y.code = $2`,
    [partId, code],
  );
  if (!found) throw new NotThere('layer', `${code} in the schedule of this part`, pointer);
  return found.id;
};
