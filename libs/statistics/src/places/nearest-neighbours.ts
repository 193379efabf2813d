import { TooLittle } from '../errors.js';
import { mean } from '../numbers.js';

/** A place on a flat map, m. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/**
 * Mean distance to the nearest neighbour over what chance would give: below 1 clustered, above 1 spaced.
 *
 * R = mean distance 2 sqrt(n / area) (Clark and Evans 1954), without correction for edges, which raises R a little. One
 * hull with forty blisters is one hull: give one spot a hull. Throws TooLittle with fewer than 2 spots.
 */
export const clarkEvans = (spots: readonly Spot[], area: number): number => {
  if (spots.length < 2) throw new TooLittle('spots', spots.length, 2);
  const nearest = spots.map((spot, i) =>
    spots.reduce(
      (least, other, j) => (i === j ? least : Math.min(least, Math.hypot(spot.x - other.x, spot.y - other.y))),
      Infinity,
    ),
  );
  return mean(nearest) * 2 * Math.sqrt(spots.length / area);
};
