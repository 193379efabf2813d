import { requireCount } from '../numbers.js';

/** Counts of hulls: the unit is the hull, never the blister or the claim line. */
export interface Table {
  /** Exposed, with a claim. */
  readonly a: number;
  /** Exposed, without. */
  readonly b: number;
  /** Not exposed, with a claim. */
  readonly c: number;
  /** Not exposed, without. */
  readonly d: number;
}

/** A table of which only the margins are known: how many are exposed, have a claim, and are there at all. */
export interface Margins {
  readonly exposed: number;
  readonly claims: number;
  readonly total: number;
}

/** The margins of a table. Throws InputInvalid when a cell is not a whole number from 0. */
export const marginsOf = ({ a, b, c, d }: Table): Margins => {
  for (const [name, count] of Object.entries({ a, b, c, d })) requireCount(name, count);
  return { exposed: a + b, claims: a + c, total: a + b + c + d };
};

/** The fewest and the most exposed claims that margins allow. */
export const rangeOf = ({ exposed, claims, total }: Margins): readonly [number, number] => [
  Math.max(0, claims - (total - exposed)),
  Math.min(exposed, claims),
];
