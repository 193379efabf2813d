import { MassInvalid, MassMissing } from './errors.js';

/**
 * The sum of some numbers, the same to the last bit in whatever order they come.
 *
 * A database returns the inputs of a lot in any order; rows rebuilt from them must still compare equal. Adding the
 * smallest first also keeps small fractions from being rounded away.
 */
export const steadySum = (numbers: readonly number[]): number =>
  [...numbers].sort((a, b) => a - b).reduce((sum, each) => sum + each, 0);

/**
 * The total of some masses in kg, above 0.
 *
 * @throws MassInvalid when one is negative or not finite; MassMissing when the total is not a finite number above 0.
 */
export const totalKg = (masses: readonly number[]): number => {
  const wrong = masses.find((kg) => !Number.isFinite(kg) || kg < 0);
  if (wrong !== undefined) throw new MassInvalid(wrong);
  const total = steadySum(masses);
  if (!Number.isFinite(total) || total <= 0) throw new MassMissing(total);
  return total;
};
