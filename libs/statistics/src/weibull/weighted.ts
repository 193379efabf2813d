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
