import type { Amount, Taken } from '@hull-record/contracts';
import { toKilograms } from '@hull-record/trade';
import type { Fact } from '../facts/fact.js';
import { NotThere, Unprocessable } from '../refusals.js';
import { FROM_THE_LOT, type DrawnFrom } from './drawn-row.js';
import { findLots, lotInTank, type FoundLot } from './find-lots.js';

/** An amount as entered, and in kilograms. */
export interface KnownAmount {
  readonly quantity: string;
  readonly unit: string;
  readonly basis: string;
  readonly kg: number;
}

/** An amount taken from a lot that is known. */
export interface ResolvedTaken {
  readonly lot: FoundLot;
  readonly drawn: DrawnFrom;
  readonly amount: KnownAmount;
}

/**
 * Finds the lots that were taken from, and makes each amount kilograms.
 *
 * A tank stands for the lot that was in it when it was drawn.
 *
 * @param pointer JSON pointer of the i-th entry
 * @param at when it was taken
 * @throws NotThere, Unprocessable `unit-without-conversion`, `tank-was-empty`
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
  if (entry.tank !== undefined) {
    const lot = await lotInTank(fact, entry.tank, at, `${pointer}/tank`);
    const amount = kilogramsOf(entry.amount, lot, `${pointer}/amount`);
    return [{ lot, drawn: { ...FROM_THE_LOT, tankId: lot.tankId }, amount }];
  }
  const name = entry.lot as string;
  const lot = lots.get(name);
  if (!lot) throw new NotThere('lot', name, `${pointer}/lot`);
  return [{ lot, drawn: FROM_THE_LOT, amount: kilogramsOf(entry.amount, lot, `${pointer}/amount`) }];
};

/**
 * Makes an amount kilograms by the data of a material or lot.
 *
 * @throws Unprocessable `unit-without-conversion` naming the unit and what to do
 */
export const kilogramsOf = (
  amount: Amount,
  of: Pick<FoundLot, 'code' | 'densityKgPerL' | 'arealMassKgPerM2' | 'pieceMassKg'>,
  pointer: string,
): KnownAmount => {
  const known = toKilograms(Number(amount.quantity), amount.unit, of);
  if ('missing' in known) {
    const remedy =
      known.missing === 'not an amount'
        ? 'give a mass, a volume, an area or pieces'
        : `give kilograms, or register the ${known.missing} of the material`;
    throw new Unprocessable(
      'unit-without-conversion',
      `${amount.unit} of ${of.code} cannot be made kilograms: ${remedy}.`,
      `${pointer}/unit`,
    );
  }
  return { ...amount, kg: known.kg };
};
