import { InputInvalid } from './errors.js';

/**
 * The number at a place that is known to be inside.
 *
 * Not for inner loops: one function that reads many kinds of arrays is slow for all of them.
 */
export const at = (values: ArrayLike<number>, i: number): number => values[i] as number;

/** The sum of numbers, from the first to the last. */
export const sum = (values: Iterable<number>): number => {
  let total = 0;
  for (const value of values) total += value;
  return total;
};

/** The mean; NaN of nothing. */
export const mean = (values: readonly number[]): number => sum(values) / values.length;

/** The standard deviation with n - 1; NaN of fewer than two. */
export const deviation = (values: readonly number[]): number => {
  const middle = mean(values);
  return Math.sqrt(sum(values.map((value) => (value - middle) ** 2)) / (values.length - 1));
};

/** An interval; a limit may be infinite. */
export interface Limits {
  readonly lower: number;
  readonly upper: number;
}

/** Returns the value, or throws InputInvalid when it is not a whole number of at least `least`. */
export const requireCount = (name: string, value: number, least = 0): number => {
  if (!Number.isInteger(value) || value < least) throw new InputInvalid(name, value, `a whole number from ${least}`);
  return value;
};

/** Returns the value, or throws InputInvalid when it is not finite and above zero. */
export const requirePositive = (name: string, value: number): number => {
  if (!(value > 0 && value < Infinity)) throw new InputInvalid(name, value, 'finite and more than zero');
  return value;
};

/** Returns the value, or throws InputInvalid when it is not strictly between 0 and 1. */
export const requireFraction = (name: string, value: number): number => {
  if (!(value > 0 && value < 1)) throw new InputInvalid(name, value, 'more than 0 and less than 1');
  return value;
};
