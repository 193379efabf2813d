import type { Limits } from '../numbers.js';
import { conditionalOdds, oddsLimits } from './conditional-odds.js';
import { convolve } from './convolution.js';
import { exactTest, type ExactTest } from './exact-test.js';
import { marginsOf, type Table } from './table.js';

/** An exact test with its odds ratio. */
export interface ExactOdds extends ExactTest {
  readonly observed: number;
  readonly oddsRatio: number;
  readonly limits: Limits;
}

/**
 * The exact test of one or more tables with a common odds ratio, with its limits at `level`.
 *
 * One table: Fisher's exact test. A table per stratum: the exact Mantel-Haenszel test (Mantel and Haenszel 1959; Gart
 * 1970). Right for few claims; two-sided p and limits invert different tests and may disagree (Fay 2010).
 * Throws InputInvalid when a cell is not a whole number from 0.
 */
export const exactOdds = (tables: readonly Table[], level = 0.95): ExactOdds => {
  const central = convolve(tables.map(marginsOf));
  const observed = tables.reduce((total, { a }) => total + a, 0);
  return {
    ...exactTest(central, observed),
    observed,
    oddsRatio: conditionalOdds(central, observed),
    limits: oddsLimits(central, observed, level),
  };
};

/** Fisher's exact test of one table. */
export const fisherExact = (table: Table, level = 0.95): ExactOdds => exactOdds([table], level);
