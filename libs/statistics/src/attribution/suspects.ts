import { lotsOf, type SuspectClass } from './classes.js';
import type { Judged } from './judged.js';
import type { Suspect } from './noisy-or.js';
import type { RiskCells } from './risk-cells.js';

/** For each hull, what share of all claims that ever show has shown by its age: F, 0 to 1. */
export const shownBy = ({ ages }: Judged, cells: RiskCells): Float64Array => {
  const order = [...cells.ages.keys()].sort((a, b) => (cells.ages[a] as number) - (cells.ages[b] as number));
  const rising = Float64Array.from(order, (cell) => cells.ages[cell] as number);
  let total = 0;
  const claims = Float64Array.from(order, (cell) => (total += cells.events[cell] as number));
  return ages.map((age) => {
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
 * A class as the posterior sees it, for a chance `theta` that a fully exposed hull has a claim in the end.
 *
 * A hull is spared with 1 - theta w F: w its share of the first lot of the class, F what has shown by its age.
 */
export const suspectOf = (
  suspect: SuspectClass,
  { places, shown, theta }: { places: Int32Array; shown: Float64Array; theta: number },
): Suspect => {
  const shares = suspect.members[0]?.shares ?? null;
  const claims: number[] = [];
  const spared: number[] = [];
  let sparedClean = 0;
  suspect.hulls.forEach((hull, i) => {
    const chance = 1 - theta * (shares ? (shares[i] as number) : 1) * (shown[hull] as number);
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
