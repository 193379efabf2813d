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
  const leasts = new Leasts();
  const found: Candidate[] = [];
  for (const { lot, family, hulls, shares } of exposures) {
    if (!shares) {
      found.push({ lot, family, fromShare: 0, hulls, shares: null });
      continue;
    }
    const least = leasts.under(shares);
    let size = -1;
    for (const fromShare of rising) {
      const kept = least >= fromShare ? { hulls, shares } : fromOn(fromShare, hulls, shares);
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

/**
 * What no number of a list is below, from the memory that it is a part of. Lots that are alone in their layers wherever they
 * are may all have the same list: its numbers are then read once, and not for each of thousands of lots.
 */
class Leasts {
  private readonly known = new Map<ArrayBufferLike, number>();

  under({ buffer, byteOffset }: Float64Array): number {
    const known = this.known.get(buffer);
    if (known !== undefined) return known;
    // A list that is not at the beginning of its memory is one of many in it: each is looked at by itself.
    const least = byteOffset > 0 ? -Infinity : leastOf(new Float64Array(buffer, 0, buffer.byteLength >> 3));
    this.known.set(buffer, least);
    return least;
  }
}

const leastOf = (values: Float64Array): number => {
  let least = Infinity;
  for (let i = 0; i < values.length; i += 1) if (!((values[i] as number) >= least)) least = values[i] as number;
  return least;
};
