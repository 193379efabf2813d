import type { EntityManager } from 'typeorm';
import { standing } from '../facts/standing.js';
import { NotThere } from '../refusals.js';

export interface FoundContainer {
  readonly id: string;
  readonly lot_id: string;
  readonly label: string;
}

/**
 * Finds a container by its label.
 *
 * @throws NotThere
 */
export const findContainer = async (
  tx: EntityManager,
  plantId: string,
  label: string,
  pointer?: string,
): Promise<FoundContainer> => {
  const [found] = await tx.query<FoundContainer[]>(
    `select c.root as id, c.lot_id, c.label from fact.container c where c.plant_id = $1 and c.label = $2 and ${standing('c')}`,
    [plantId, label],
  );
  if (!found) throw new NotThere('container', label, pointer);
  return found;
};
