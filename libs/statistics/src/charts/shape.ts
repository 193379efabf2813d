import { at, mean, sum } from '../numbers.js';

/** How lopsided values are. */
export interface Skew {
  /** Adjusted Fisher-Pearson coefficient; 0 of what is even on both sides. */
  readonly coefficient: number;
  /** Its standard error if the values were normal. */
  readonly error: number;
  /** Beyond two standard errors, and more than a half: too lopsided to be taken for normal. */
  readonly skewed: boolean;
}

/**
 * Sample skewness G1 = sqrt(n(n-1))/(n-2) m3/m2^1.5 (NIST/SEMATECH e-Handbook 1.3.5.11), and its standard error under
 * normality. null of fewer than 8 values, or of values that are all the same. A half as the least is common practice.
 */
export const skewOf = (values: readonly number[]): Skew | null => {
  const n = values.length;
  if (n < 8) return null;
  const middle = mean(values);
  const moment = (power: number): number => mean(values.map((value) => (value - middle) ** power));
  const square = moment(2);
  if (!(square > 0)) return null;
  const coefficient = (Math.sqrt(n * (n - 1)) / (n - 2)) * (moment(3) / square ** 1.5);
  const error = Math.sqrt((6 * n * (n - 1)) / ((n - 2) * (n + 1) * (n + 3)));
  return { coefficient, error, skewed: Math.abs(coefficient) > Math.max(0.5, 2 * error) };
};

/** How much a value is like the one before. */
export interface Following {
  readonly coefficient: number;
  /** Beyond 2 / sqrt(n): limits from moving ranges are then too narrow, or too wide. */
  readonly correlated: boolean;
}

/** Autocorrelation at lag 1 (NIST/SEMATECH e-Handbook 1.3.5.12). null of fewer than 8 values, or when all are the same. */
export const followingOf = (values: readonly number[]): Following | null => {
  const n = values.length;
  if (n < 8) return null;
  const middle = mean(values);
  const square = sum(values.map((value) => (value - middle) ** 2));
  if (!(square > 0)) return null;
  const coefficient = sum(values.slice(1).map((value, i) => (value - middle) * (at(values, i) - middle))) / square;
  return { coefficient, correlated: Math.abs(coefficient) > 2 / Math.sqrt(n) };
};
