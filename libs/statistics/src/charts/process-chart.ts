import { TooLittle } from '../errors.js';
import { at, mean } from '../numbers.js';
import { chartConstants } from './constants.js';
import { cusum, type CusumPoint } from './cusum.js';
import { ewma, type EwmaPoint } from './ewma.js';
import { individualsChart, type ChartLimits } from './individuals.js';
import { runsOf, type RunRule } from './run-rules.js';
import { sigmaWithin, withinHullsChart, type WithinHulls } from './within-hulls.js';

/** By what a process is watched; slack, limit and reach in standard deviations of hull means. */
export interface WatchSettings {
  readonly rules: readonly RunRule[];
  /** Of the weighted mean: weight of the newest hull, and how far its limits are. */
  readonly weight: number;
  readonly reach: number;
  /** Of the cumulative sum. */
  readonly slack: number;
  readonly limit: number;
}

/** What a process did over some hulls, from which limits are drawn; frozen, they judge the hulls that follow. */
export interface ProcessFigures {
  readonly centre: number;
  /** From the moving ranges of hull means. */
  readonly sigma: number;
  /** Within hulls; null when no hull has two readings. */
  readonly within: number | null;
}

/** One hull on the charts. */
export interface ProcessPoint {
  readonly mean: number;
  readonly movingRange: number | null;
  readonly within: WithinHulls['points'][number];
  readonly ewma: EwmaPoint;
  readonly cusum: CusumPoint;
  /** Places, in the settings, of the rules that this hull completes. */
  readonly fired: readonly number[];
  readonly rangeOut: boolean;
  readonly spreadOut: boolean;
}

/** The charts of a process by hulls. */
export interface ProcessChart {
  readonly means: ChartLimits;
  readonly movingRange: ChartLimits;
  /** Limits of the cumulative sums, in the unit of the values. */
  readonly sumLimit: number;
  readonly points: readonly ProcessPoint[];
  /** No rule of runs, moving range or spread within a hull says anything. */
  readonly stable: boolean;
}

/** Below this part of its centre a spread is what is left of arithmetic, and no spread. */
const NO_SPREAD = 1e-12;

/**
 * What hulls tell of their process: each hull by its mean, for the spread within a hull says nothing of hull to hull.
 *
 * Throws TooLittle with fewer than 2 hulls, or when all means are the same: there is no spread to draw limits by.
 */
export const processFigures = (hulls: readonly (readonly number[])[]): ProcessFigures => {
  const { values, sigma } = individualsChart(hulls.map(mean));
  if (sigma <= NO_SPREAD * Math.abs(values.centre)) throw new TooLittle('different hull means', 1, 2);
  return { centre: values.centre, sigma, within: sigmaWithin(hulls) };
};

/** The charts of hulls in the order they were made, by figures of their own or frozen ones. */
export const processChart = (
  hulls: readonly (readonly number[])[],
  settings: WatchSettings,
  figures = processFigures(hulls),
): ProcessChart => {
  const { centre, sigma, within } = figures;
  const means = hulls.map(mean);
  const { d2, D4 } = chartConstants(2);
  const movingRange = { centre: d2 * sigma, lower: 0, upper: D4 * d2 * sigma };
  const fired = settings.rules.map(
    (rule) =>
      new Set(
        runsOf(
          means.map((value) => (value - centre) / sigma),
          rule,
        ),
      ),
  );
  const weighted = ewma(means, { weight: settings.weight, reach: settings.reach, target: centre, sigma });
  const sumLimit = settings.limit * sigma;
  const sums = cusum(means, { target: centre, slack: settings.slack * sigma, limit: sumLimit });
  const spread = within === null || within === 0 ? null : withinHullsChart(hulls, within);
  const points = means.map((value, i): ProcessPoint => {
    const range = i === 0 ? null : Math.abs(value - at(means, i - 1));
    const inside = spread?.points[i] ?? null;
    return {
      ...{ mean: value, movingRange: range, within: inside },
      ...{ ewma: weighted[i] as EwmaPoint, cusum: sums[i] as CusumPoint },
      fired: fired.flatMap((places, rule) => (places.has(i) ? [rule] : [])),
      rangeOut: range !== null && range > movingRange.upper,
      spreadOut: inside !== null && (inside.deviation > inside.upper || inside.deviation < inside.lower),
    };
  });
  return {
    means: { centre, lower: centre - 3 * sigma, upper: centre + 3 * sigma },
    ...{ movingRange, sumLimit, points },
    stable: points.every((point) => point.fired.length === 0 && !point.rangeOut && !point.spreadOut),
  };
};
