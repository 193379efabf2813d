import betainc from '@stdlib/math-base-special-betainc';
import betaincinv from '@stdlib/math-base-special-betaincinv';

/** The value of a beta distribution below which the chance is `lower`, 0 to 1; a, b above 0. */
export const betaQuantile = (lower: number, a: number, b: number): number => betaincinv(lower, a, b, false);

/** The chance that an F value with the two degrees of freedom exceeds f. */
export const fUpper = (f: number, above: number, below: number): number =>
  f <= 0 ? 1 : betainc(below / (below + above * f), below / 2, above / 2, true, false);
