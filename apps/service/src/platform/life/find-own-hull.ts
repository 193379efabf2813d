import { normaliseNumber } from '@hull-record/trade';
import type { EntityManager } from 'typeorm';
import { personNow } from '../access/call.js';
import { standing } from '../facts/standing.js';
import { lastDealerOf } from './own-hull.sql.js';
import { NotThere } from '../refusals.js';

/** A hull of the dealer who calls. */
export interface FoundOwnHull {
  readonly hullId: string;
  readonly dealerId: string;
}

const FIND = `
  select h.id from fact.hull h
  where ${standing('h')} and h.id = (select k.hull_id from fact.hull_number k where k.normalised = $2 limit 1)
    and ${lastDealerOf('h.id')} = $1`;

/**
 * A hull that the dealer who calls has or had last; one of somebody else is answered as one that is not there, by the
 * same statement.
 *
 * @throws NotThere
 */
export const findOwnHull = async (tx: EntityManager, number: string): Promise<FoundOwnHull> => {
  const { dealerId } = personNow();
  const [row] = await tx.query<{ id: string }[]>(FIND, [dealerId, normaliseNumber(number)]);
  if (!row || dealerId === null) throw new NotThere('hull', number);
  return { hullId: row.id, dealerId };
};
