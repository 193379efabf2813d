import gammaln from '@stdlib/math-base-special-gammaln';
import { at } from '../numbers.js';

const KEPT = 4096;
const kept = Float64Array.from({ length: KEPT }, (_, n) => gammaln(n + 1));

/** The natural logarithm of n!, n a whole number from 0. */
export const logFactorial = (n: number): number => (n < KEPT ? at(kept, n) : gammaln(n + 1));

/** The natural logarithm of the number of ways to take k of n; -Infinity when there is none. */
export const logChoose = (n: number, k: number): number =>
  k < 0 || k > n ? -Infinity : logFactorial(n) - logFactorial(k) - logFactorial(n - k);
