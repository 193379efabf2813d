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
  const groups = groupsOf(hulls);
  const untils = Float64Array.from(hulls, ({ until }) => until).sort();
  const deviations = new Float64Array(groups.length);
  let [mean, over] = [0, 0];
  return ages.map((age) => {
    while (over < untils.length && at(untils, over) < age) over += 1;
    const atRisk = untils.length - over;
    const counts = groups.map(({ claims }) => claims.filter((claim) => claim === age).length);
    const step = groups.reduce((all, { hulls: alike }, i) => all + alike * at(counts, i), 0) / atRisk;
    mean += step;
    let variance = 0;
    groups.forEach(({ until, hulls: alike }, i) => {
      if (until >= age) deviations[i] = at(deviations, i) + (at(counts, i) - step) / atRisk;
      variance += alike * at(deviations, i) ** 2;
    });
    return { age, atRisk, mean, se: Math.sqrt(variance) };
  });
};

interface Group extends Repeated {
  readonly hulls: number;
}

/** Each hull with a claim by itself; those without any by the age until which they were watched, in which alone they differ. */
const groupsOf = (hulls: readonly Repeated[]): readonly Group[] => {
  const quiet = new Map<number, number>();
  for (const { claims, until } of hulls) if (claims.length === 0) quiet.set(until, (quiet.get(until) ?? 0) + 1);
  return [
    ...hulls.filter(({ claims }) => claims.length > 0).map((hull) => ({ ...hull, hulls: 1 })),
    ...[...quiet].map(([until, count]) => ({ claims: [], until, hulls: count })),
  ];
};

/** The mean at an age: that of the last step up to it, 0 before the first. */
export const meanAt = (steps: readonly MeanCumulative[], age: number): MeanCumulative | null =>
  steps.filter((step) => step.age <= age).at(-1) ?? null;
