import type { Amount, Taken } from '@hull-record/contracts';
import { toKilograms } from '@hull-record/trade';
import type { Fact } from '../facts/fact.js';
import { NotThere, Unprocessable } from '../refusals.js';
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
  readonly tankId: string | null;
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
  for (const [i, { lot, tank, amount }] of taken.entries()) {
    const found = tank === undefined ? lots.get(lot as string) : await lotInTank(fact, tank, at, `${pointer(i)}/tank`);
    if (!found) throw new NotThere('lot', lot as string, `${pointer(i)}/lot`);
    resolved.push({
      lot: found,
      tankId: tank === undefined ? null : found.tankId,
      amount: kilogramsOf(amount, found, `${pointer(i)}/amount`),
    });
  }
  return resolved;
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
