import type { Fact } from '../facts/fact.js';
import { findLots, type FoundLot } from '../lots/find-lots.js';
import { NotThere, Unprocessable } from '../refusals.js';
import { findContainer } from './find-container.js';

/** A lot, and one container of it when it was named. */
export interface OfLot {
  readonly lot: FoundLot;
  readonly containerId: string | null;
}

/**
 * Finds the lot in the path and the container in the request, and sees that they belong together.
 *
 * @throws NotThere, Unprocessable `container-of-another-lot`
 */
export const findLotOrContainer = async (fact: Fact, lot: string, container: string | undefined): Promise<OfLot> => {
  const found = (await findLots(fact.tx, fact.author.plantId, [lot], fact.happenedAt)).get(lot);
  if (!found) throw new NotThere('lot', lot);
  if (container === undefined) return { lot: found, containerId: null };
  const box = await findContainer(fact.tx, fact.author.plantId, container, '/container');
  if (box.lot_id !== found.id)
    throw new Unprocessable(
      'container-of-another-lot',
      `Container ${container} is of another lot: check its label.`,
      '/container',
    );
  return { lot: found, containerId: box.id };
};
