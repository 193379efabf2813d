import { InputInvalid } from '../errors.js';

/**
 * A hull that was watched from age 0 until it had its first claim or until the data end.
 *
 * `age` is that age in any unit of time, at least 0; `event` says whether it ends with a claim. A hull that is not
 * launched is not at risk and is left out.
 */
export interface Watched {
  readonly age: number;
  readonly event: boolean;
}

/** One age at which there were claims, and who was at risk of one then. */
export interface RiskSet {
  readonly age: number;
  /** Hulls watched until this age or longer: claims come before ends of watching at the same age. */
  readonly atRisk: number;
  readonly events: number;
}

/** The risk sets of hulls by age. Throws InputInvalid when an age is not a number of at least 0. */
export const riskSets = (watched: readonly Watched[]): readonly RiskSet[] => {
  for (const { age } of watched)
    if (!(age >= 0 && age < Infinity)) throw new InputInvalid('age', age, 'finite, from 0');
  const ordered = [...watched].sort((a, b) => a.age - b.age);
  const sets: RiskSet[] = [];
  for (let i = 0; i < ordered.length;) {
    const { age } = ordered[i] as Watched;
    let next = i;
    let events = 0;
    for (; next < ordered.length && ordered[next]?.age === age; next += 1) events += ordered[next]?.event ? 1 : 0;
    if (events > 0) sets.push({ age, atRisk: ordered.length - i, events });
    i = next;
  }
  return sets;
};
