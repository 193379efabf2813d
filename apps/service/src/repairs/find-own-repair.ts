import type { EntityManager } from 'typeorm';
import { findOwnHull } from '../platform/life/find-own-hull.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { partsOfHull } from '../platform/lookups/find-part-of-hull.js';
import { NotThere } from '../platform/refusals.js';

interface RepairRow {
  readonly id: string;
  readonly root: string;
  readonly part_id: string;
  readonly dealer_id: string | null;
}

/**
 * A repair of an own hull that the dealer who calls reported; any other is answered as one that is not there.
 *
 * @returns its root
 * @throws NotThere
 */
export const findOwnRepair = async (tx: EntityManager, number: string, repair: string): Promise<string> => {
  const { hullId, dealerId } = await findOwnHull(tx, number);
  const found = await findStanding<RepairRow>(tx, 'repair', repair);
  const parts = await partsOfHull(tx, hullId);
  if (found.dealer_id !== dealerId || !parts.some(({ id }) => id === found.part_id))
    throw new NotThere('repair', repair);
  return found.root;
};
