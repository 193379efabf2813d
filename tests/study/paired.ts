import { binomialTest, normalQuantile, type Limits } from '@hull-record/statistics';

/** Two ways tried on the same plants: how many only the one got right, only the other, and all that were tried. */
export interface Pairs {
  readonly onlyFirst: number;
  readonly onlySecond: number;
  readonly all: number;
}

/** McNemar's exact test, two-sided: given the pairs that differ, each way is as likely to be the right one. */
export const mcNemar = ({ onlyFirst, onlySecond }: Pairs): number =>
  onlyFirst + onlySecond === 0 ? 1 : binomialTest(onlyFirst, onlyFirst + onlySecond, 0.5).pTwoSided;

/**
 * Limits of the difference of two paired rates, first less second, by the score test turned round.
 *
 * Tango 1998, Statistics in Medicine 17:891: z = (b - c - n d) / sqrt(n (2 q + d (1 - d))), q the rate of "only the second"
 * that is most likely when the difference is d. Keeps its level with few pairs that differ, or none.
 */
export const differenceLimits = (pairs: Pairs, level = 0.95): Limits => {
  const z = normalQuantile((1 - level) / 2);
  const observed = (pairs.onlyFirst - pairs.onlySecond) / pairs.all;
  return {
    lower: observed <= -1 ? -1 : crossing((d) => scoreAt(d, pairs) > z, -1, observed),
    upper: observed >= 1 ? 1 : crossing((d) => scoreAt(d, pairs) >= -z, observed, 1),
  };
};

/** The score of a difference; falls as it rises. */
const scoreAt = (d: number, { onlyFirst: b, onlySecond: c, all: n }: Pairs): number => {
  const half = -(b + c) + (2 * n - b + c) * d;
  const q = (Math.sqrt(half ** 2 + 8 * n * c * d * (1 - d)) - half) / (4 * n);
  return (b - c - n * d) / Math.sqrt(n * (2 * q + d * (1 - d)));
};

/** Where a statement that holds at the lower end ceases to. */
const crossing = (holds: (d: number) => boolean, low: number, high: number): number => {
  let [from, to] = [low, high];
  for (let i = 0; i < 60; i += 1) {
    const middle = (from + to) / 2;
    if (holds(middle)) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
};

/** Whether the first way is shown to be no worse than the second by more than a margin. */
export const notInferior = (pairs: Pairs, margin: number): boolean => differenceLimits(pairs).lower > -margin;
