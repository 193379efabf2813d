import { at } from '../numbers.js';

/** A hull with all its claims: ages of the claims, and the ages from which (0 when left out) and until which it was watched. */
export interface Repeated {
  readonly claims: readonly number[];
  readonly until: number;
  readonly from?: number;
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
  const entries = Float64Array.from(hulls.flatMap(({ from = 0 }) => (from > 0 ? [from] : []))).sort();
  const deviations = new Float64Array(groups.length);
  let [mean, over, entered] = [0, 0, 0];
  return ages.map((age) => {
    while (over < untils.length && at(untils, over) < age) over += 1;
    while (entered < entries.length && at(entries, entered) < age) entered += 1;
    const atRisk = untils.length - over - (entries.length - entered);
    const counts = groups.map(({ claims }) => claims.filter((claim) => claim === age).length);
    const step = groups.reduce((all, { hulls: alike }, i) => all + alike * at(counts, i), 0) / atRisk;
    mean += step;
    let variance = 0;
    groups.forEach(({ until, from = 0, hulls: alike }, i) => {
      if (until >= age && (from === 0 || from < age))
        deviations[i] = at(deviations, i) + (at(counts, i) - step) / atRisk;
      variance += alike * at(deviations, i) ** 2;
    });
    return { age, atRisk, mean, se: Math.sqrt(variance) };
  });
};

interface Group extends Repeated {
  readonly hulls: number;
}

/** Each hull with a claim by itself; those without any by the ages between which they were watched, in which alone they differ. */
const groupsOf = (hulls: readonly Repeated[]): readonly Group[] => {
  const quiet = new Map<
    string,
    { readonly claims: []; readonly until: number; readonly from: number; hulls: number }
  >();
  for (const { claims, until, from = 0 } of hulls) {
    if (claims.length > 0) continue;
    const own = quiet.get(`${from} ${until}`);
    if (own) own.hulls += 1;
    else quiet.set(`${from} ${until}`, { claims: [], until, from, hulls: 1 });
  }
  return [...hulls.filter(({ claims }) => claims.length > 0).map((hull) => ({ ...hull, hulls: 1 })), ...quiet.values()];
};

/** The mean at an age: that of the last step up to it, 0 before the first. */
export const meanAt = (steps: readonly MeanCumulative[], age: number): MeanCumulative | null =>
  steps.filter((step) => step.age <= age).at(-1) ?? null;
