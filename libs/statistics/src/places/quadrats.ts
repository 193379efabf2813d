import gammainc from '@stdlib/math-base-special-gammainc';
import { TooLittle } from '../errors.js';
import { mean, sum } from '../numbers.js';
import { chiSquareUpper } from '../special/chi-square.js';

/** Whether counts of equal squares are as uneven as chance alone. */
export interface QuadratTest {
  readonly chiSquare: number;
  readonly degrees: number;
  /** Small when counts are too uneven: the one for clusters. */
  readonly pUpper: number;
  /** Twice the smaller tail. */
  readonly pTwoSided: number;
}

/** The index of dispersion of counts of equal squares: sum (n - mean)^2 / mean on n - 1 degrees of freedom. */
export const quadratTest = (counts: readonly number[]): QuadratTest => {
  if (counts.length < 2) throw new TooLittle('squares', counts.length, 2);
  const middle = mean(counts);
  const chiSquare = sum(counts.map((count) => (count - middle) ** 2)) / middle;
  const degrees = counts.length - 1;
  const pUpper = chiSquareUpper(chiSquare, degrees);
  const pLower = gammainc(chiSquare / 2, degrees / 2, true, false);
  return { chiSquare, degrees, pUpper, pTwoSided: Math.min(1, 2 * Math.min(pUpper, pLower)) };
};
