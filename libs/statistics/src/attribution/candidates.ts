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
export const candidatesOf = (exposures: readonly Exposure[], thresholds: readonly number[]): readonly Candidate[] => {
  const rising = [...thresholds].sort((a, b) => a - b);
  const found: Candidate[] = [];
  for (const { lot, family, hulls, shares } of exposures) {
    if (!shares) {
      found.push({ lot, family, fromShare: 0, hulls, shares: null });
      continue;
    }
    let size = -1;
    for (const fromShare of rising) {
      const kept = fromOn(fromShare, hulls, shares);
      if (kept.hulls.length === size) continue;
      size = kept.hulls.length;
      found.push({ lot, family, fromShare, hulls: kept.hulls, shares: kept.shares });
    }
  }
  return found;
};

interface Kept {
  readonly hulls: Uint32Array;
  readonly shares: Float64Array;
}

/** Hulls with at least a share. Where all have it, as most lots that were used by themselves, nothing is copied. */
const fromOn = (least: number, hulls: Uint32Array, shares: Float64Array): Kept => {
  let count = 0;
  for (let i = 0; i < shares.length; i += 1) if ((shares[i] as number) >= least) count += 1;
  if (count === shares.length) return { hulls, shares };
  const kept = { hulls: new Uint32Array(count), shares: new Float64Array(count) };
  for (let i = 0, next = 0; next < count; i += 1) {
    if (!((shares[i] as number) >= least)) continue;
    kept.hulls[next] = hulls[i] as number;
    kept.shares[next] = shares[i] as number;
    next += 1;
  }
  return kept;
};
