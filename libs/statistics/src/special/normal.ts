import erfc from '@stdlib/math-base-special-erfc';
import erfcinv from '@stdlib/math-base-special-erfcinv';

/** The chance that a standard normal value is above z, without loss in the far tail. */
export const normalUpper = (z: number): number => erfc(z / Math.SQRT2) / 2;

/** The chance that a standard normal value is up to z. */
export const normalLower = (z: number): number => normalUpper(-z);

/** The standard normal value that is exceeded with chance `upper`, 0 to 1. */
export const normalQuantile = (upper: number): number => Math.SQRT2 * erfcinv(2 * upper);

/** The half width, in standard errors, of a two-sided interval of a level such as 0.95. */
export const twoSidedZ = (level: number): number => normalQuantile((1 - level) / 2);
