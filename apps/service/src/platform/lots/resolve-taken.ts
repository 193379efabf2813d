import type { Taken } from '@hull-record/contracts';
import type { Fact } from '../facts/fact.js';
import { NotThere } from '../refusals.js';
import { kilogramsOf } from './known-amount.js';
import type { ResolvedTaken } from './resolved-taken.js';
import { FROM_THE_LOT } from './drawn-row.js';
import { makeUnidentified } from './make-unidentified.js';
import { drawFromContainer } from './draw-from-container.js';
import { drawFromTank } from './draw.js';
import { spray } from './spray.js';
import { findLots, type FoundLot } from './find-lots.js';

/**
 * Finds the lots that were taken from, and makes each amount kilograms.
 *
 * A tank stands for the lot that was in it when it was drawn, a gun for what fed it: one entry may be several lots.
 *
 * @param pointer JSON pointer of the i-th entry
 * @param at when it was taken
 * @throws NotThere, Unprocessable `unit-without-conversion`
 */
export const resolveTaken = async (
  fact: Fact,
  taken: readonly Taken[],
  pointer: (i: number) => string,
  at: Date = fact.happenedAt,
): Promise<readonly ResolvedTaken[]> => {
  const lots = await findLots(
    fact.tx,
    fact.author.plantId,
    taken.flatMap(({ lot }) => lot ?? []),
    at,
  );
  const resolved: ResolvedTaken[] = [];
  for (const [i, entry] of taken.entries()) resolved.push(...(await resolveOne(fact, entry, lots, at, pointer(i))));
  return resolved;
};

/** What one entry names: a lot, or whatever a thing that holds lots held then. */
const resolveOne = async (
  fact: Fact,
  entry: Taken,
  lots: ReadonlyMap<string, FoundLot>,
  at: Date,
  pointer: string,
): Promise<readonly ResolvedTaken[]> => {
  if (entry.container !== undefined) return [await drawFromContainer(fact, entry.container, entry.amount, at, pointer)];
  const drawing = { amount: entry.amount, at, pointer };
  if (entry.tank !== undefined) return [await drawFromTank(fact, entry.tank, drawing)];
  if (entry.gun !== undefined) return spray(fact, entry, at, pointer);
  if (entry.unidentified !== undefined) {
    const amount = kilogramsOf(entry.amount, { code: 'unidentified material' }, `${pointer}/amount`);
    const lot = await makeUnidentified(fact, entry.unidentified, amount, at, `${pointer}/unidentified`);
    return [{ lot, drawn: FROM_THE_LOT, amount }];
  }
  const name = entry.lot as string;
  const lot = lots.get(name);
  if (!lot) throw new NotThere('lot', name, `${pointer}/lot`);
  return [{ lot, drawn: FROM_THE_LOT, amount: kilogramsOf(entry.amount, lot, `${pointer}/amount`) }];
};
