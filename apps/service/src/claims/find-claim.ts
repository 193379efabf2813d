import type { EntityManager } from 'typeorm';
import { findStanding } from '../platform/lookups/find-standing.js';

/** A claim, and what the terms are asked about it. */
export interface FoundClaim {
  readonly root: string;
  readonly hullId: string;
  readonly kind: string;
  readonly reportedOn: string;
}

/** @throws NotThere */
export const findClaim = async (tx: EntityManager, claim: string): Promise<FoundClaim> => {
  const { root } = await findStanding(tx, 'claim', claim);
  const [found] = (await tx.query<FoundClaim[]>(
    `select c.root, c.hull_id as "hullId", c.kind, c.reported_on::text as "reportedOn" from fact.claim c where c.id = $1`,
    [root],
  )) as [FoundClaim];
  return found;
};
