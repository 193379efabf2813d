import type { Amount } from '@hull-record/contracts';
import type { Fact } from '../facts/fact.js';
import { findContainer } from '../store/find-container.js';
import { FROM_THE_LOT } from './drawn-row.js';
import { findLots, type FoundLot } from './find-lots.js';
import { kilogramsOf } from './known-amount.js';
import type { ResolvedTaken } from './resolved-taken.js';

/**
 * Draws from a container, named by its label: of its lot, and of no other container of it.
 *
 * @throws NotThere, Unprocessable `unit-without-conversion`
 */
export const drawFromContainer = async (
  fact: Fact,
  label: string,
  amount: Amount,
  at: Date,
  pointer: string,
): Promise<ResolvedTaken> => {
  const container = await findContainer(fact.tx, fact.author.plantId, label, `${pointer}/container`);
  const lots = await findLots(fact.tx, fact.author.plantId, [container.lot_id], at, container.id);
  const lot = lots.get(container.lot_id) as FoundLot;
  const drawn = { ...FROM_THE_LOT, containerId: container.id };
  return { lot, drawn, amount: kilogramsOf(amount, lot, `${pointer}/amount`) };
};
