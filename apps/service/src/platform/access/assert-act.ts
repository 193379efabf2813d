import { type Act, ACTS, type Role } from '@hull-record/contracts';
import type { Fact } from '../facts/fact.js';
import { NotAllowed } from './access-refusals.js';

/**
 * Sees that who enters a fact may do what fewer may than call its route: by the table of acts in contracts, and by what
 * that person was allowed when it was entered.
 *
 * @throws NotAllowed
 */
export const assertAct = ({ author }: Fact, act: Act): void => {
  const needed: readonly Role[] = ACTS[act];
  if (!needed.some((role) => author.roles.includes(role)))
    throw new NotAllowed(`To ${act} is for ${needed.join(' or ')}: let one of them do it.`);
};
