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
        const kept = hulls.filter((_, i) => (shares[i] as number) >= fromShare);
        if (kept.length === size) return [];
        size = kept.length;
        return [{ lot, family, fromShare, hulls: kept, shares: shares.filter((share) => share >= fromShare) }];
      });
  });
