import { deviation, mean, sum, type Limits } from '../numbers.js';
import { capability, cpkLimits, cpLimits, type Capability, type Specification } from './capability.js';
import { fitCoarse } from './coarse-gauge.js';
import { processFigures } from './process-chart.js';
import { isCoarse, STEPS_NEEDED, stepsOf, toIntervals, type SpotRead } from './gauge-steps.js';
import { skewOf, type Skew } from './shape.js';

/** Indices by one spread, with their intervals. */
export interface Index extends Capability {
  readonly sigma: number;
  readonly cpInterval: Limits | null;
  readonly cpkInterval: Limits | null;
}

/** How the readings of a process fit a specification, or why that cannot be said. */
export type ReadingsCapability =
  | { readonly says: 'no specification' }
  | { readonly says: 'too few'; readonly hulls: number }
  | { readonly says: 'gauge too coarse'; readonly steps: number }
  | {
      readonly says: 'indices';
      readonly steps: number;
      /** Whether readings stand for the interval that the gauge cannot tell within. */
      readonly byIntervals: boolean;
      readonly ofLogarithms: boolean;
      readonly mean: number;
      readonly readings: number;
      /** Readings that are worth as much as so many of different hulls: spots of one hull are alike. */
      readonly effective: number;
      readonly skew: Skew | null;
      /** By the spread from hull to hull, by moving ranges, and within (Cp, Cpk); null of intervals. */
      readonly short: Index | null;
      /** By the spread of all readings (Pp, Ppk). */
      readonly long: Index;
    };

/** Hulls below which no index is told; common practice. */
const FEWEST_HULLS = 5;

/**
 * Capability of single readings, spot by spot, against a specification; never of means.
 *
 * A gauge of fewer than five distinct steps is too coarse. Where steps are coarse, mean and deviation are those most
 * likely behind the intervals. Lopsided readings are taken by their logarithms when that evens them (ISO 22514-2 asks
 * for another method than the normal one). Intervals by `effective` readings: n / (1 + (m - 1) rho), rho the part of
 * the spread that is between hulls (Kish 1965, from memory); an approximation.
 */
export const readingsCapability = (
  hulls: readonly (readonly SpotRead[])[],
  specification: Specification,
): ReadingsCapability => {
  if (specification.lower === undefined && specification.upper === undefined) return { says: 'no specification' };
  if (hulls.length < FEWEST_HULLS) return { says: 'too few', hulls: hulls.length };
  const spots = hulls.flat();
  const steps = stepsOf(spots);
  if (steps < STEPS_NEEDED) return { says: 'gauge too coarse', steps };
  const values = hulls.map((of) => of.map(({ value }) => value));
  const plain = skewOf(values.flat());
  const ofLogarithms = evensOut(values.flat(), plain, specification);
  const seen = ofLogarithms ? values.map((of) => of.map(Math.log)) : values;
  const limits = ofLogarithms ? { lower: log(specification.lower), upper: log(specification.upper) } : specification;
  const byIntervals = isCoarse(spots);
  const fit = byIntervals ? fitCoarse(toIntervals(spots, ofLogarithms)) : null;
  const effective = effectiveReadings(seen);
  const middle = fit?.mean ?? mean(seen.flat());
  const index = (sigma: number): Index => withIntervals(capability(middle, sigma, limits), sigma, effective);
  return {
    ...{ says: 'indices', steps, byIntervals, ofLogarithms, readings: spots.length, effective },
    mean: ofLogarithms ? Math.exp(middle) : middle,
    skew: ofLogarithms ? skewOf(seen.flat()) : plain,
    short: byIntervals ? null : index(shortSigma(seen)),
    long: index(fit?.deviation ?? deviation(seen.flat())),
  };
};

const log = (value: number | undefined): number | undefined => (value === undefined ? undefined : Math.log(value));

/** Logarithms are taken of what is lopsided and above zero, limits too, when they are less so. */
const evensOut = (values: readonly number[], skew: Skew | null, { lower, upper }: Specification): boolean => {
  if (!skew?.skewed || [...values, lower ?? 1, upper ?? 1].some((value) => !(value > 0))) return false;
  const after = skewOf(values.map(Math.log));
  return after !== null && Math.abs(after.coefficient) < Math.abs(skew.coefficient);
};

/** One reading's spread over a short time: moving ranges of means hold 1/m of the spread within, the rest is added. */
const shortSigma = (hulls: readonly (readonly number[])[]): number => {
  const { sigma, within } = processFigures(hulls);
  return Math.sqrt(sigma ** 2 + (within ?? 0) ** 2 * (1 - mean(hulls.map(({ length }) => 1 / length))));
};

/** n / (1 + (m - 1) rho), never fewer than two; rho by a one-way analysis of variance. */
const effectiveReadings = (hulls: readonly (readonly number[])[]): number => {
  const [n, k] = [hulls.flat().length, hulls.length];
  if (n === k) return n;
  const middle = mean(hulls.flat());
  const between = sum(hulls.map((of) => of.length * (mean(of) - middle) ** 2)) / (k - 1);
  const within = sum(hulls.flatMap((of) => of.map((value) => (value - mean(of)) ** 2))) / (n - k);
  const squares = sum(hulls.map(({ length }) => length ** 2));
  const each = (n - squares / n) / (k - 1);
  const part = Math.max(0, (between - within) / each);
  const rho = part + within === 0 ? 0 : part / (part + within);
  return Math.max(2, Math.floor(n / (1 + (squares / n - 1) * rho)));
};

const withIntervals = (of: Capability, sigma: number, n: number): Index => ({
  ...{ ...of, sigma },
  cpInterval: of.cp === null ? null : cpLimits(of.cp, n),
  cpkInterval: of.cpk === null ? null : cpkLimits(of.cpk, n),
});
