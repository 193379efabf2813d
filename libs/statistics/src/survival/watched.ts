import { InputInvalid } from '../errors.js';

/**
 * A hull that was watched until it had its first claim or until the data end.
 *
 * `age` is that age in any unit of time, at least 0; `event` says whether it ends with a claim; `from` is the age from which
 * on it was watched, below `age`; 0 when left out. A hull that is not launched is not at risk and is left out.
 */
export interface Watched {
  readonly age: number;
  readonly event: boolean;
  readonly from?: number;
}

/** One age at which there were claims, and who was at risk of one then. */
export interface RiskSet {
  readonly age: number;
  /** Hulls watched from before this age until it or longer: claims come before ends of watching at the same age. */
  readonly atRisk: number;
  readonly events: number;
}

/** Throws InputInvalid when an age is not a number of at least 0, or a hull is watched from no earlier than its age on. */
export const requireWatched = (watched: readonly Watched[]): void => {
  for (const { age, from = 0 } of watched) {
    if (!(age >= 0 && age < Infinity)) throw new InputInvalid('age', age, 'finite, from 0');
    if (!(from === 0 || (from > 0 && from < age))) throw new InputInvalid('from', from, 'from 0, below the age');
  }
};

/** The risk sets of hulls by age. Throws InputInvalid as `requireWatched` does. */
export const riskSets = (watched: readonly Watched[]): readonly RiskSet[] => {
  requireWatched(watched);
  const entries = Float64Array.from(watched.flatMap(({ from = 0 }) => (from > 0 ? [from] : []))).sort();
  let entered = 0;
  const ordered = [...watched].sort((a, b) => a.age - b.age);
  const sets: RiskSet[] = [];
  for (let i = 0; i < ordered.length;) {
    const { age } = ordered[i] as Watched;
    let next = i;
    let events = 0;
    for (; next < ordered.length && ordered[next]?.age === age; next += 1) events += ordered[next]?.event ? 1 : 0;
    while (entered < entries.length && (entries[entered] as number) < age) entered += 1;
    if (events > 0) sets.push({ age, atRisk: ordered.length - i - (entries.length - entered), events });
    i = next;
  }
  return sets;
};
