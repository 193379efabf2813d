import { TooLittle } from '../errors.js';
import { deviation, mean } from '../numbers.js';
import { meanOfDeviation } from './constants.js';
import type { ChartLimits } from './individuals.js';

/** The spread within hulls: one sigma for all, and the deviation of each hull with limits for its number of readings. */
export interface WithinHulls {
  readonly sigma: number;
  /** null of a hull with a single reading. */
  readonly points: readonly (({ readonly deviation: number } & ChartLimits) | null)[];
}

/** Sigma within hulls from hulls that need not have as many readings: the mean of s / c4. null with none of two. */
export const sigmaWithin = (hulls: readonly (readonly number[])[]): number | null => {
  const of = hulls.flatMap((values) => (values.length < 2 ? [] : [deviation(values) / meanOfDeviation(values.length)]));
  return of.length === 0 ? null : mean(of);
};

/**
 * The chart of deviations within hulls: c4 sigma +- 3 sigma sqrt(1 - c4^2), never below 0, by each hull's own number.
 *
 * With hulls of one size it is the S chart of ISO 7870-2. Throws TooLittle when no hull has two readings.
 */
export const withinHullsChart = (hulls: readonly (readonly number[])[], sigma = sigmaWithin(hulls)): WithinHulls => {
  if (sigma === null) throw new TooLittle('hulls with two readings', 0, 1);
  return {
    sigma,
    points: hulls.map((values) =>
      values.length < 2 ? null : { deviation: deviation(values), ...deviationLimits(values.length, sigma) },
    ),
  };
};

const deviationLimits = (n: number, sigma: number): ChartLimits => {
  const c4 = meanOfDeviation(n);
  const reach = 3 * sigma * Math.sqrt(1 - c4 * c4);
  return { centre: c4 * sigma, lower: Math.max(0, c4 * sigma - reach), upper: c4 * sigma + reach };
};
