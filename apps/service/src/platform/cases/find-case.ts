import type { EntityManager } from 'typeorm';
import { standing } from '../facts/standing.js';
import { NotThere } from '../refusals.js';

/** SQL that is true for a case that the person `person` may see; one under counsel, for those named alone. */
export const maySee = (alias: string, person: string): string => `(
  not ${alias}.under_counsel or ${person} = any(${alias}.readers)
  or ${person} = (select opened.person_id from fact.journal opened where opened.id = ${alias}.entry_id))`;

/** A case of the plant. */
export interface FoundCase {
  readonly id: string;
  readonly code: string;
}

/**
 * A case by its code. One that the person may not see is answered as one that is not there.
 *
 * @throws NotThere
 */
export const findCase = async (tx: EntityManager, code: string, personId: string): Promise<FoundCase> => {
  const [found] = await tx.query<FoundCase[]>(
    `select c.root as id, c.code from fact.case_file c where c.code = $1 and ${maySee('c', '$2::uuid')} and ${standing('c')}`,
    [code, personId],
  );
  if (!found) throw new NotThere('case', code);
  return found;
};
