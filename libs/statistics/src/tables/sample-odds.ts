import type { Limits } from '../numbers.js';
import { twoSidedZ } from '../special/normal.js';
import type { Table } from './table.js';

/** An estimate with its limits. */
export interface Ratio extends Limits {
  readonly ratio: number;
}

/** The cross product ratio of a table and whether a half was added to its cells. */
export interface SampleOdds extends Ratio {
  readonly halfAdded: boolean;
}

/**
 * The odds ratio ad/bc with Wald limits exp(log OR +- z sqrt(1/a + 1/b + 1/c + 1/d)).
 *
 * With a zero cell, a half is added to all four (Haldane 1956, Anscombe 1956), and the answer says so.
 */
export const sampleOdds = (table: Table, level = 0.95): SampleOdds => {
  const halfAdded = Object.values(table).includes(0);
  const [a, b, c, d] = [table.a, table.b, table.c, table.d].map((cell) => cell + (halfAdded ? 0.5 : 0)) as Cells;
  const ratio = (a * d) / (b * c);
  const reach = Math.exp(twoSidedZ(level) * Math.sqrt(1 / a + 1 / b + 1 / c + 1 / d));
  return { ratio, lower: ratio / reach, upper: ratio * reach, halfAdded };
};

type Cells = [number, number, number, number];

/**
 * The risk ratio (a/n1)/(c/n2) with Katz limits on the log scale (Katz et al. 1978).
 *
 * Without a claim on either side it has no limits: null, and the exact odds ratio is to be shown instead.
 */
export const riskRatio = ({ a, b, c, d }: Table, level = 0.95): Ratio | null => {
  if (a === 0 || c === 0) return null;
  const ratio = a / (a + b) / (c / (c + d));
  const reach = Math.exp(twoSidedZ(level) * Math.sqrt(1 / a - 1 / (a + b) + 1 / c - 1 / (c + d)));
  return { ratio, lower: ratio / reach, upper: ratio * reach };
};
