import { InputInvalid } from '../errors.js';
import type { Watched } from '../survival/watched.js';

/** A watched hull that stands for `weight` hulls alike; 1 when left out. */
export interface Weighted extends Watched {
  readonly weight?: number;
}

/** Hulls that speak, with their weights: those of age 0 without a claim say nothing. */
export const speaking = (hulls: readonly Weighted[]): readonly Required<Weighted>[] => {
  for (const { age, event, weight = 1 } of hulls) {
    if (!(age >= (event ? Number.MIN_VALUE : 0) && age < Infinity))
      throw new InputInvalid('age', age, 'finite, from 0, and above 0 at a claim');
    if (!(weight >= 0 && weight < Infinity)) throw new InputInvalid('weight', weight, 'finite, from 0');
  }
  return hulls.filter(({ age, weight = 1 }) => age > 0 && weight > 0).map((hull) => ({ weight: 1, ...hull }));
};

/** The sum over hulls of their weight times something. */
export const weightedSum = (hulls: readonly Required<Weighted>[], of: (hull: Required<Weighted>) => number): number =>
  hulls.reduce((total, hull) => total + hull.weight * of(hull), 0);

/**
 * Hulls of the same age, with a claim or without, taken together, the youngest first: ages are whole days, so that a plant has
 * far fewer of them than hulls.
 */
export const alike = (hulls: readonly Watched[]): readonly Required<Weighted>[] => {
  const counts = [new Map<number, number>(), new Map<number, number>()] as const;
  for (const { age, event } of hulls) {
    const own = counts[event ? 1 : 0];
    own.set(age, (own.get(age) ?? 0) + 1);
  }
  return counts
    .flatMap((own, event) => [...own].map(([age, weight]) => ({ age, event: event === 1, weight })))
    .sort((a, b) => a.age - b.age || Number(a.event) - Number(b.event));
};
