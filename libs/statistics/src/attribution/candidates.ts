import type { Exposure } from './judged.js';

/** A lot at a share threshold: hulls of which a layer has at least that share of it. */
export interface Candidate {
  readonly lot: string;
  readonly family: string;
  /** The threshold; 0 for any trace. */
  readonly fromShare: number;
  readonly hulls: Uint32Array;
  readonly shares: Float64Array | null;
}

/**
 * The candidates of exposures: each lot at each threshold at which its hulls differ from those at the one before.
 *
 * A trace of a lot in a tank heel need not do what a full layer of it does, and nobody knows from which share on; so each
 * threshold is a question of its own, and all count among the tests.
 */
export const candidatesOf = (exposures: readonly Exposure[], thresholds: readonly number[]): readonly Candidate[] =>
  exposures.flatMap(({ lot, family, hulls, shares }): readonly Candidate[] => {
    if (!shares) return [{ lot, family, fromShare: 0, hulls, shares: null }];
    let size = -1;
    return [...thresholds]
      .sort((a, b) => a - b)
      .flatMap((fromShare): readonly Candidate[] => {
        const kept = fromOn(fromShare, { hulls, shares });
        if (kept.hulls.length === size) return [];
        size = kept.hulls.length;
        return [{ lot, family, fromShare, ...kept }];
      });
  });

interface Kept {
  readonly hulls: Uint32Array;
  readonly shares: Float64Array;
}

/** Hulls with at least a share. Where all have it, as most lots that were used by themselves, nothing is copied. */
const fromOn = (least: number, all: Kept): Kept => {
  let count = 0;
  for (let i = 0; i < all.shares.length; i += 1) if ((all.shares[i] as number) >= least) count += 1;
  if (count === all.shares.length) return all;
  const kept = { hulls: new Uint32Array(count), shares: new Float64Array(count) };
  for (let i = 0, next = 0; next < count; i += 1) {
    if (!((all.shares[i] as number) >= least)) continue;
    kept.hulls[next] = all.hulls[i] as number;
    kept.shares[next] = all.shares[i] as number;
    next += 1;
  }
  return kept;
};
