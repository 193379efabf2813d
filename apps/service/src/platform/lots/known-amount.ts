import type { Amount } from '@hull-record/contracts';
import { toKilograms } from '@hull-record/trade';
import { Unprocessable } from '../refusals.js';
import type { FoundLot } from './find-lots.js';

/** An amount as entered, and in kilograms. */
export interface KnownAmount {
  readonly quantity: string;
  readonly unit: string;
  readonly basis: string;
  readonly kg: number;
}

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
