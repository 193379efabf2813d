import type { Limits } from '../numbers.js';
import { requireCount, requirePositive } from '../numbers.js';
import { chiSquareQuantile, chiSquareUpperQuantile } from '../special/chi-square.js';
import { binomialLimits, binomialTest } from './binomial.js';
import type { Ratio } from './sample-odds.js';

/** Exact limits of the mean of a Poisson count (Garwood 1936): half of chi-square quantiles. */
export const poissonLimits = (count: number, level = 0.95): Limits => {
  requireCount('count', count);
  const tail = (1 - level) / 2;
  return {
    lower: count === 0 ? 0 : chiSquareQuantile(tail, 2 * count) / 2,
    upper: chiSquareUpperQuantile(tail, 2 * count + 2) / 2,
  };
};

/** Claims in a time under observation, such as hull-years. */
export interface Rate {
  readonly claims: number;
  readonly time: number;
}

/**
 * The ratio of two rates with exact limits and two-sided p.
 *
 * Given both counts together, the first is binomial (Przyborowski and Wilenski 1940); limits by Clopper and Pearson on
 * that probability. The cheapest comparison that counts exposure; it assumes a constant hazard.
 */
export const rateRatio = (first: Rate, second: Rate, level = 0.95): Ratio & { readonly pTwoSided: number } => {
  const [t1, t2] = [requirePositive('time', first.time), requirePositive('time', second.time)];
  const n = first.claims + second.claims;
  const { lower, upper } = binomialLimits(first.claims, n, level);
  const odds = (p: number): number => ((p / (1 - p)) * t2) / t1;
  return {
    ratio: first.claims / t1 / (second.claims / t2),
    lower: odds(lower),
    upper: odds(upper),
    pTwoSided: binomialTest(first.claims, n, t1 / (t1 + t2)).pTwoSided,
  };
};
