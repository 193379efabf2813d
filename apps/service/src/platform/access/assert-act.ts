import { type Act, ACTS, type Role } from '@hull-record/contracts';
import type { Fact } from '../facts/fact.js';
import { NotAllowed } from './access-refusals.js';
import { rolesAt } from './roles.sql.js';

/**
 * Sees that who enters a fact may do what fewer may than call its route: by the table of acts in contracts.
 *
 * @throws NotAllowed
 */
export const assertAct = async (fact: Fact, act: Act): Promise<void> => {
  const [has] = await fact.tx.query<{ roles: Role[] }[]>(`select ${rolesAt('$1::uuid', 'now()')} as roles`, [
    fact.author.personId,
  ]);
  const needed: readonly Role[] = ACTS[act];
  if (!needed.some((role) => has?.roles.includes(role)))
    throw new NotAllowed(`To ${act} is for ${needed.join(' or ')}: let one of them do it.`);
};
