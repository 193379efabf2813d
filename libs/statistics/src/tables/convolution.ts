import { hypergeometric, type LogChances } from './hypergeometric.js';
import type { Margins } from './table.js';

/**
 * The distribution of the sum of exposed claims over tables that are independent given their margins.
 *
 * One routine for four jobs: one table is Fisher's exact test; a table per stratum is the exact Mantel-Haenszel test; a
 * table per event time within a stratum is the exact log-rank test, whose odds are those of a discrete hazard. Done with
 * logarithms, since over hundreds of tables the ends fall below the smallest number. Time: the product of the ranges.
 */
export const convolve = (tables: readonly Margins[]): LogChances =>
  tables.map(hypergeometric).reduce(add, { low: 0, logs: Float64Array.of(0) });

const add = (left: LogChances, right: LogChances): LogChances => {
  const logs = new Float64Array(left.logs.length + right.logs.length - 1).fill(-Infinity);
  for (let j = 0; j < right.logs.length; j += 1)
    for (let i = 0; i < left.logs.length; i += 1)
      logs[i + j] = logOfSum(logs[i + j] as number, (left.logs[i] as number) + (right.logs[j] as number));
  return { low: left.low + right.low, logs };
};

/** log(e^a + e^b). */
const logOfSum = (a: number, b: number): number => {
  const [less, more] = a < b ? [a, b] : [b, a];
  return less === -Infinity ? more : more + Math.log1p(Math.exp(less - more));
};
