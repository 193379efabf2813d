import gammainc from '@stdlib/math-base-special-gammainc';
import gammaincinv from '@stdlib/math-base-special-gammaincinv';

/** The chance that a chi-square value exceeds x; taken as an upper tail, for 1 - cdf has nothing left below 1e-16. */
export const chiSquareUpper = (x: number, degrees: number): number =>
  x <= 0 ? 1 : gammainc(x / 2, degrees / 2, true, true);

/** The chi-square value below which the chance is `lower`, 0 to 1. */
export const chiSquareQuantile = (lower: number, degrees: number): number => 2 * gammaincinv(lower, degrees / 2, false);

/** The chi-square value that is exceeded with chance `upper`, 0 to 1. */
export const chiSquareUpperQuantile = (upper: number, degrees: number): number =>
  2 * gammaincinv(upper, degrees / 2, true);
