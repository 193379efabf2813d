import type { Exposure } from './judged.js';

/** A lot at a share threshold: hulls of which a layer has at least that share of it. */
export interface Candidate {
  readonly lot: string;
  readonly family: string;
  /** The threshold; 0 for any trace. */
  readonly fromShare: number;
  readonly hulls: Uint32Array;
  readonly shares: Float64Array | null;
  /** All hulls that have any of it, with their shares: those below the threshold too. */
  readonly whole: { readonly hulls: Uint32Array; readonly shares: Float64Array | null };
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
      found.push({ lot, family, fromShare: 0, hulls, shares: null, whole: { hulls, shares: null } });
      continue;
    }
    const whole = { hulls, shares };
    const all = leasts.under(shares) >= (rising.at(-1) ?? 0);
    let before = -1;
    for (const fromShare of rising) {
      const kept = all ? whole : fromOn(fromShare, hulls, shares);
      if (kept.hulls.length === before) continue;
      before = kept.hulls.length;
      found.push({ lot, family, fromShare, ...kept, whole });
    }
  }
  return found;
};

interface Kept {
  readonly hulls: Uint32Array;
  readonly shares: Float64Array;
}

/**
 * Hulls with at least a share. Nothing is copied where all have it, as of most lots that were used by themselves, nor where
 * those that have it follow each other, as of most that went through a tank.
 */
const fromOn = (least: number, hulls: Uint32Array, shares: Float64Array): Kept => {
  let [count, first, last] = [0, shares.length, -1];
  for (let i = 0; i < shares.length; i += 1) {
    if (!((shares[i] as number) >= least)) continue;
    if (count === 0) first = i;
    count += 1;
    last = i;
  }
  if (last - first + 1 === count)
    return { hulls: hulls.subarray(first, last + 1), shares: shares.subarray(first, last + 1) };
  const kept = { hulls: new Uint32Array(count), shares: new Float64Array(count) };
  for (let i = first, next = 0; next < count; i += 1) {
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
  private readonly known = new Map<ArrayBufferLike, number | null>();

  /** Lists that begin where their memory does, for the second time, are the same; any other is looked at by itself. */
  under({ buffer, byteOffset }: Float64Array): number {
    if (byteOffset > 0) return -Infinity;
    const known = this.known.get(buffer);
    const least = known === null ? leastOf(new Float64Array(buffer, 0, buffer.byteLength >> 3)) : (known ?? null);
    this.known.set(buffer, least);
    return least ?? -Infinity;
  }
}

const leastOf = (values: Float64Array): number => {
  let least = Infinity;
  for (let i = 0; i < values.length; i += 1) if (!((values[i] as number) >= least)) least = values[i] as number;
  return least;
};
