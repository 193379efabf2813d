import { InputInvalid } from '../errors.js';
import type { Watched } from '../survival/watched.js';

/**
 * A watched hull that stands for `weight` hulls alike; 1 when left out.
 *
 * Hulls that were watched from a later age on have come to it without a claim: as many as end there are taken off again, with
 * a weight below 0 (left truncation: the likelihood of each is over its chance to come so far).
 */
export interface Weighted extends Omit<Watched, 'from'> {
  readonly weight?: number;
}

/** Hulls that speak, with their weights: those of age 0 without a claim say nothing. */
export const speaking = (hulls: readonly Weighted[]): readonly Required<Weighted>[] => {
  for (const hull of hulls) {
    const { age, event, weight = 1 } = hull;
    if ('from' in hull && hull.from !== 0)
      throw new InputInvalid(
        'from',
        Number(hull.from),
        '0: take hulls that are watched from later on together (alike)',
      );
    if (!(age >= (event ? Number.MIN_VALUE : 0) && age < Infinity))
      throw new InputInvalid('age', age, 'finite, from 0, and above 0 at a claim');
    if (!(event ? weight >= 0 && weight < Infinity : Number.isFinite(weight)))
      throw new InputInvalid('weight', weight, 'finite, and from 0 at a claim');
  }
  return hulls.filter(({ age, weight = 1 }) => age > 0 && weight !== 0).map((hull) => ({ weight: 1, ...hull }));
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
  const count = (age: number, event: boolean, more: number): void => {
    const own = counts[event ? 1 : 0];
    own.set(age, (own.get(age) ?? 0) + more);
  };
  for (const { age, event, from = 0 } of hulls) {
    count(age, event, 1);
    if (from > 0) count(from, false, -1);
  }
  return counts
    .flatMap((own, event) => [...own].map(([age, weight]) => ({ age, event: event === 1, weight })))
    .sort((a, b) => a.age - b.age || Number(a.event) - Number(b.event));
};
