import { InputInvalid } from '../errors.js';
import { deviation, mean } from '../numbers.js';
import { chartConstants } from './constants.js';
import { individualsChart, type ChartLimits, type IndividualsChart } from './individuals.js';

/** Charts of subgroup means and of the spread within. */
export interface SubgroupCharts {
  readonly means: ChartLimits;
  readonly spread: ChartLimits;
  /** Standard deviation within subgroups. */
  readonly sigma: number;
}

const sizeOf = (subgroups: readonly (readonly number[])[]): number => {
  const size = subgroups[0]?.length ?? 0;
  if (subgroups.some(({ length }) => length !== size)) throw new InputInvalid('subgroups', size, 'all of one size');
  return size;
};

const around = (centre: number, reach: number): ChartLimits => ({
  centre,
  lower: centre - reach,
  upper: centre + reach,
});

/** Means and ranges of subgroups of one size, 2 to 25: centre +- A2 R, ranges D3 R to D4 R (ISO 7870-2). */
export const meanAndRange = (subgroups: readonly (readonly number[])[]): SubgroupCharts => {
  const { A2, D3, D4, d2 } = chartConstants(sizeOf(subgroups));
  const range = mean(subgroups.map((values) => Math.max(...values) - Math.min(...values)));
  return {
    means: around(mean(subgroups.map(mean)), A2 * range),
    spread: { centre: range, lower: D3 * range, upper: D4 * range },
    sigma: range / d2,
  };
};

/** Means and standard deviations of subgroups of one size: centre +- A3 S, deviations B3 S to B4 S (ISO 7870-2). */
export const meanAndDeviation = (subgroups: readonly (readonly number[])[]): SubgroupCharts => {
  const { A3, B3, B4, c4 } = chartConstants(sizeOf(subgroups));
  const spread = mean(subgroups.map(deviation));
  return {
    means: around(mean(subgroups.map(mean)), A3 * spread),
    spread: { centre: spread, lower: B3 * spread, upper: B4 * spread },
    sigma: spread / c4,
  };
};

/**
 * Charts for several readings on each hull: hull means as single values, and the deviation within hulls.
 *
 * Limits of means from the spread within a hull would be far too narrow: hulls differ more than spots of one hull.
 */
export const hullCharts = (
  hulls: readonly (readonly number[])[],
): { readonly means: IndividualsChart; readonly within: ChartLimits } => ({
  means: individualsChart(hulls.map(mean)),
  within: meanAndDeviation(hulls).spread,
});
