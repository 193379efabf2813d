import { at } from '../numbers.js';

/** A hull with all its claims: ages of the claims, and the age until which it was watched. */
export interface Repeated {
  readonly claims: readonly number[];
  readonly until: number;
}

/** Mean number of claims a hull has had by an age. */
export interface MeanCumulative {
  readonly age: number;
  /** Hulls still watched at that age: having had a claim does not take a hull out. */
  readonly atRisk: number;
  readonly mean: number;
  readonly se: number;
}

/**
 * The mean cumulative number of claims a hull, which may have several, with a robust standard error.
 *
 * M(t) = sum d(t)/r(t); variance: sum over hulls of (sum over ages of y/r (n - d/r))^2, y whether the hull is watched and
 * n its claims at that age (Nelson 1988; Lawless and Nadeau 1995). Hulls may differ and claims of one may depend on each
 * other. Claims at the end of watching count.
 */
export const meanCumulative = (hulls: readonly Repeated[]): readonly MeanCumulative[] => {
  const ages = [...new Set(hulls.flatMap(({ claims }) => claims))].sort((a, b) => a - b);
  const deviations = new Float64Array(hulls.length);
  let mean = 0;
  return ages.map((age) => {
    const atRisk = hulls.filter(({ until }) => until >= age).length;
    const counts = hulls.map(({ claims }) => claims.filter((claim) => claim === age).length);
    const step = counts.reduce((all, count) => all + count, 0) / atRisk;
    mean += step;
    hulls.forEach(({ until }, i) => {
      if (until >= age) deviations[i] = at(deviations, i) + (at(counts, i) - step) / atRisk;
    });
    return { age, atRisk, mean, se: Math.sqrt(deviations.reduce((all, value) => all + value * value, 0)) };
  });
};

/** The mean at an age: that of the last step up to it, 0 before the first. */
export const meanAt = (steps: readonly MeanCumulative[], age: number): MeanCumulative | null =>
  steps.filter((step) => step.age <= age).at(-1) ?? null;
