import { sum } from '../numbers.js';

/** So many hulls of one chance of a claim, 0 to 1. */
export interface Chance {
  readonly chance: number;
  readonly hulls: number;
}

/**
 * The chances of 0, 1, 2 ... claims among independent hulls of differing chances, by exact convolution.
 *
 * Ends where what is left is far below anything that matters (mean + 12 standard deviations + 40).
 */
export const poissonBinomial = (chances: readonly Chance[]): Float64Array => {
  const mean = sum(chances.map(({ chance, hulls }) => chance * hulls));
  const all = sum(chances.map(({ hulls }) => hulls));
  const values = new Float64Array(Math.min(all, Math.ceil(mean + 12 * Math.sqrt(mean) + 40)) + 1);
  values[0] = 1;
  let most = 0;
  for (const { chance, hulls } of chances)
    for (let hull = 0; hull < hulls; hull += 1) {
      most = Math.min(most + 1, values.length - 1);
      for (let k = most; k > 0; k -= 1)
        values[k] = (values[k] as number) * (1 - chance) + (values[k - 1] as number) * chance;
      values[0] = (values[0] as number) * (1 - chance);
    }
  return values;
};

/** The smallest count whose cumulative chance reaches a share: the quantile of a count. */
export const countQuantile = (chances: Float64Array, share: number): number => {
  let total = 0;
  for (let k = 0; k < chances.length; k += 1) {
    total += chances[k] as number;
    if (total >= share) return k;
  }
  return chances.length - 1;
};
