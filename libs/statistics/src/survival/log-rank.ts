import { groups } from '../grouping.js';
import { sum } from '../numbers.js';
import { chiSquareUpper } from '../special/chi-square.js';
import { exactOdds, type ExactOdds } from '../tables/fisher.js';
import { expectation } from '../tables/mantel-haenszel.js';
import type { Table } from '../tables/table.js';
import { riskSets, type Watched } from './watched.js';

/** A watched hull, whether it is exposed, and its stratum: build quarter and model, for instance. */
export interface Compared extends Watched {
  readonly exposed: boolean;
  readonly stratum?: string | number;
}

/** The log-rank test of the exposed against the others. */
export interface LogRank {
  readonly observed: number;
  readonly expected: number;
  readonly variance: number;
  /** Above 0 when the exposed have more claims than expected. */
  readonly z: number;
  readonly chiSquare: number;
  readonly p: number;
}

/** A table for each age with claims within each stratum: exposed and others, with a claim at that age and without. */
export const riskTables = (hulls: readonly Compared[]): readonly Table[] =>
  [...groups(hulls, ({ stratum }) => stratum).values()].flatMap((within) =>
    riskSets(within).map(({ age }) => tableAt(within, age)),
  );

const tableAt = (hulls: readonly Compared[], age: number): Table => {
  const count = (exposed: boolean, claim: boolean): number =>
    hulls.filter(
      (hull) =>
        hull.exposed === exposed && hull.age >= age && isIn(hull, age) && claim === (hull.event && hull.age === age),
    ).length;
  return { a: count(true, true), b: count(true, false), c: count(false, true), d: count(false, false) };
};

/** Whether a hull is watched already at an age above 0. */
const isIn = ({ from = 0 }: Watched, age: number): boolean => from === 0 || from < age;

/**
 * The log-rank test, stratified: expectations and variances are summed over strata before squaring.
 *
 * E = d n1/n and V = d (n1/n)(1 - n1/n)(n - d)/(n - 1) at each age with d claims (Mantel 1966; Peto and Peto 1972). No
 * continuity correction. Little power where curves cross.
 */
export const logRank = (hulls: readonly Compared[]): LogRank => {
  const each = riskTables(hulls).map(expectation);
  const observed = sum(each.map((table) => table.observed));
  const expected = sum(each.map((table) => table.expected));
  const variance = sum(each.map((table) => table.variance));
  const z = (observed - expected) / Math.sqrt(variance);
  return { observed, expected, variance, z, chiSquare: z * z, p: chiSquareUpper(z * z, 1) };
};

/**
 * The exact conditional log-rank test, with the hazard odds ratio of the exposed and its limits.
 *
 * The sum of exposed claims over the tables of riskTables, given their margins; the odds ratio equals that of Cox's
 * exact method for ties (Cox 1972).
 */
export const exactLogRank = (hulls: readonly Compared[], level = 0.95): ExactOdds =>
  exactOdds(riskTables(hulls), level);
