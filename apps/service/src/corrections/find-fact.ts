import type { EntityManager } from 'typeorm';
import { standing } from '../platform/facts/standing.js';
import { Conflict, NotThere } from '../platform/refusals.js';
import { CORRECTABLE } from './correctable.js';

export interface FoundFact {
  readonly table: string;
  readonly root: string;
  /** The person who entered this version of it. */
  readonly enteredBy: string;
}

const ANY = Object.keys(CORRECTABLE)
  .map(
    (table) => `select '${table}' as table, x.root, ${standing('x')} as stands, j.person_id as "enteredBy"
        from fact.${table} x join fact.journal j on j.id = x.entry_id where x.id = $1`,
  )
  .join(' union all ');

/**
 * Finds a fact that can be corrected, in whichever table it is.
 *
 * @throws NotThere, Conflict `corrected-meanwhile` when it does not stand any more
 */
export const findFact = async (tx: EntityManager, id: string): Promise<FoundFact> => {
  const [found] = await tx.query<(FoundFact & { stands: boolean })[]>(ANY, [id]);
  if (!found) throw new NotThere('fact that can be corrected with id', id, '/corrects');
  if (!found.stands)
    throw new Conflict(
      'corrected-meanwhile',
      'This fact was corrected already: correct the one that stands now.',
      '/corrects',
    );
  return found;
};
