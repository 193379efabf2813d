import type { EntityManager } from 'typeorm';
import { isUuid } from '../platform/ids.js';
import { NotThere } from '../platform/refusals.js';

/** An owner by the id of any version; also one that was withdrawn: what is kept of a person can be erased all the same. */
export const findOwner = async (tx: EntityManager, id: string): Promise<{ root: string; hullId: string }> => {
  const [found] = isUuid(id)
    ? await tx.query<{ root: string; hullId: string }[]>(
        'select o.root, o.hull_id as "hullId" from fact.owner o where o.id = $1 or o.root = $1 limit 1',
        [id],
      )
    : [];
  if (!found) throw new NotThere('owner', id);
  return found;
};
