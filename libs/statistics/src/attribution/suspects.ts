import { at } from '../numbers.js';
import { lotsOf, type SuspectClass } from './classes.js';
import type { Judged } from './judged.js';
import type { Suspect } from './noisy-or.js';
import type { RiskCells } from './risk-cells.js';

/** For each hull, what share of all claims that ever show has shown by its age: F, 0 to 1. */
export const shownBy = ({ ages }: Judged, cells: RiskCells): Float64Array => {
  const order = [...cells.ages.keys()].sort((a, b) => at(cells.ages, a) - at(cells.ages, b));
  const rising = Float64Array.from(order, (cell) => at(cells.ages, cell));
  let total = 0;
  const claims = Float64Array.from(order, (cell) => (total += at(cells.events, cell)));
  return ages.map((age) => {
    let [low, high] = [0, rising.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (at(rising, middle) <= age) low = middle + 1;
      else high = middle;
    }
    return low === 0 ? 0 : at(claims, low - 1) / total;
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
    const chance = 1 - theta * (shares ? at(shares, i) : 1) * at(shown, hull);
    const place = at(places, hull);
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
