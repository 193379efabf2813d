import type { Role } from '@hull-record/contracts';
import type { EntityManager } from 'typeorm';
import { standing } from '../platform/facts/standing.js';
import { InvalidRequest, NotThere } from '../platform/refusals.js';

/**
 * The dealer for whom somebody with these roles looks; null without the role.
 *
 * @throws InvalidRequest when one is missing or too many, NotThere
 */
export const dealerFor = async (
  tx: EntityManager,
  roles: readonly Role[],
  code: string | undefined,
): Promise<string | null> => {
  const looks = roles.includes('dealer');
  if (looks && code === undefined)
    throw new InvalidRequest([{ pointer: '/dealer', detail: 'name the dealer for whom this person looks' }]);
  if (!looks && code !== undefined)
    throw new InvalidRequest([{ pointer: '/dealer', detail: 'is for the role dealer alone: leave it out' }]);
  if (code === undefined) return null;
  const [dealer] = await tx.query<{ id: string }[]>(
    `select d.root as id from fact.dealer d where d.code = $1 and ${standing('d')}`,
    [code],
  );
  if (!dealer) throw new NotThere('dealer', code, '/dealer');
  return dealer.id;
};
