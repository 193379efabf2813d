import { lotsOf, type SuspectClass } from './classes.js';
import type { Judged } from './judged.js';
import type { Suspect } from './noisy-or.js';
import type { RiskCells } from './risk-cells.js';

/** For each hull, what share of all claims that ever show has shown by its age, and before it was watched: F, 0 to 1. */
export interface Shown {
  readonly by: Float64Array;
  /** Null when all were watched from age 0 on. */
  readonly before: Float64Array | null;
}

/** Shares of claims that have shown, from the claims of all hulls together. */
export const shownBy = ({ ages, from }: Judged, cells: RiskCells): Shown => {
  const at = sharesAt(cells);
  return { by: at(ages), before: from ? at(from) : null };
};

const sharesAt = (cells: RiskCells): ((ages: Float64Array) => Float64Array) => {
  const order = [...cells.ages.keys()].sort((a, b) => (cells.ages[a] as number) - (cells.ages[b] as number));
  const rising = Float64Array.from(order, (cell) => cells.ages[cell] as number);
  let total = 0;
  const claims = Float64Array.from(order, (cell) => (total += cells.events[cell] as number));
  return (ages) =>
    ages.map((age) => {
      let [low, high] = [0, rising.length];
      while (low < high) {
        const middle = (low + high) >> 1;
        if ((rising[middle] as number) <= age) low = middle + 1;
        else high = middle;
      }
      return low === 0 ? 0 : (claims[low - 1] as number) / total;
    });
};

/** The place of each hull in the list of claims; -1 without one. */
export const claimPlaces = ({ claimed }: Judged): Int32Array => {
  let next = 0;
  return Int32Array.from(claimed, (claim) => (claim === 1 ? next++ : -1));
};

/**
 * The share of each hull of a class: the largest that it has of one of its lots, for which of them is at fault nobody can
 * tell, and their order must not matter. Null where it is all of one of them everywhere.
 */
export const sharesOf = ({ members }: SuspectClass): Float64Array | null => {
  const lists = members.map(({ shares }) => shares);
  const [first = null] = lists;
  if (lists.length < 2 || lists.every((shares) => shares === first)) return first;
  const known = lists.filter((shares) => shares !== null);
  if (known.length < lists.length) return null;
  return (first as Float64Array).map((_, i) => known.reduce((most, shares) => Math.max(most, shares[i] as number), 0));
};

/**
 * A class as the posterior sees it, for a chance `theta` that a fully exposed hull has a claim in the end.
 *
 * A hull is spared with 1 - theta w F: w its share (`sharesOf`), F what has shown by its age. One that was watched from a
 * later age on has had no claim until then: over 1 - theta w F at that age.
 */
export const suspectOf = (
  suspect: SuspectClass,
  { places, shown, theta }: { places: Int32Array; shown: Shown; theta: number },
): Suspect => {
  const shares = sharesOf(suspect);
  const claims: number[] = [];
  const spared: number[] = [];
  let sparedClean = 0;
  suspect.hulls.forEach((hull, i) => {
    const most = theta * (shares ? (shares[i] as number) : 1);
    const atEntry = shown.before ? 1 - most * (shown.before[hull] as number) : 1;
    const chance = (1 - most * (shown.by[hull] as number)) / atEntry;
    const place = places[hull] as number;
    if (place < 0) sparedClean += Math.log(chance);
    else {
      claims.push(place);
      spared.push(chance);
    }
  });
  return {
    lots: lotsOf(suspect).length,
    claims: Uint32Array.from(claims),
    spared: Float64Array.from(spared),
    sparedClean,
  };
};
