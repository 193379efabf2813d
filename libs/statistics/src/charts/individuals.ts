import { TooLittle } from '../errors.js';
import { mean, type Limits } from '../numbers.js';
import { chartConstants } from './constants.js';

/** Centre and control limits of a chart: what the process does, not what is specified. */
export interface ChartLimits extends Limits {
  readonly centre: number;
}

/** A chart of single values and of their moving ranges. */
export interface IndividualsChart {
  readonly values: ChartLimits;
  readonly movingRange: ChartLimits;
  /** Mean moving range / d2: spread from one value to the next. */
  readonly sigma: number;
}

/** Points below which limits are not to be relied on; common practice. */
export const FEWEST_POINTS = 20;

/**
 * The chart of single values: mean +- 3 MR / d2, moving ranges up to D4 MR (NIST/SEMATECH e-Handbook 6.3.2.2).
 *
 * `d2` is 1.128379; the handbook takes 1.128, which moves the fifth digit. For gel coat, chart the means of hulls this
 * way, for the spread within a hull says nothing of the spread between hulls. Throws TooLittle with fewer than 2 values.
 */
export const individualsChart = (values: readonly number[], d2 = chartConstants(2).d2): IndividualsChart => {
  if (values.length < 2) throw new TooLittle('values', values.length, 2);
  const range = mean(values.slice(1).map((value, i) => Math.abs(value - (values[i] as number))));
  const [centre, sigma] = [mean(values), range / d2];
  return {
    values: { centre, lower: centre - 3 * sigma, upper: centre + 3 * sigma },
    movingRange: { centre: range, lower: 0, upper: chartConstants(2).D4 * range },
    sigma,
  };
};
