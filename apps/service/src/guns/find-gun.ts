import type { Fact } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { NotThere } from '../platform/refusals.js';

/**
 * Finds a gun by its code.
 *
 * @throws NotThere, also when the equipment is no gun
 */
export const findGun = async (fact: Fact, code: string): Promise<string> => {
  const [found] = await fact.tx.query<{ root: string }[]>(
    `select e.root from fact.equipment e where e.plant_id = $1 and e.code = $2 and e.kind = 'gun' and ${standing('e')}`,
    [fact.author.plantId, code],
  );
  if (!found) throw new NotThere('gun', code);
  return found.root;
};
