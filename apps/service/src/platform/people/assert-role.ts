import type { Fact } from '../facts/fact.js';
import { standing } from '../facts/standing.js';
import { RoleMissing } from '../refusals.js';

/**
 * Sees that who enters a fact has one of some roles; an administrator has every role until people sign in.
 *
 * @param act what they would do, in words
 * @throws RoleMissing
 */
export const assertRole = async (fact: Fact, roles: readonly string[], act: string): Promise<void> => {
  const has = await fact.tx.query<unknown[]>(
    `select from fact.person_role r where r.person_id = $1 and r.role = any($2) and ${standing('r')}`,
    [fact.author.personId, [...roles, 'administrator']],
  );
  if (has.length === 0) throw new RoleMissing(fact.author.badge, roles, act);
};
