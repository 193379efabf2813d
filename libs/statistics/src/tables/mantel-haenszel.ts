import { sum } from '../numbers.js';
import { chiSquareUpper } from '../special/chi-square.js';
import { twoSidedZ } from '../special/normal.js';
import type { Ratio } from './sample-odds.js';
import type { Table } from './table.js';

/** Exposed claims of a table beside their mean and variance when claims disregard exposure. */
export const expectation = ({ a, b, c, d }: Table): { observed: number; expected: number; variance: number } => {
  const n = a + b + c + d;
  const [exposed, others, claims, none] = [a + b, c + d, a + c, b + d];
  return {
    observed: a,
    expected: (exposed * claims) / n,
    variance: n < 2 ? 0 : (exposed * others * claims * none) / (n * n * (n - 1)),
  };
};

/** The stratified test and the common odds ratio of tables. */
export interface MantelHaenszel extends Ratio {
  readonly chiSquare: number;
  readonly p: number;
  readonly chiSquareUncorrected: number;
  /** Tables with a zero margin: they add nothing. */
  readonly silent: number;
}

/**
 * The Mantel-Haenszel test and odds ratio with Robins-Breslow-Greenland limits (1959; 1986).
 *
 * chi2 = (|sum(a - E)| - 1/2)^2 / sum V; the half is taken off only when |sum(a - E)| is at least a half (rule of R).
 */
export const mantelHaenszel = (tables: readonly Table[], level = 0.95): MantelHaenszel => {
  const each = tables.map(expectation);
  const variance = sum(each.map((table) => table.variance));
  const apart = Math.abs(sum(each.map(({ observed, expected }) => observed - expected)));
  const chiSquare = (apart - (apart >= 0.5 ? 0.5 : 0)) ** 2 / variance;
  return {
    ...commonOdds(tables, level),
    chiSquare,
    p: chiSquareUpper(chiSquare, 1),
    chiSquareUncorrected: apart ** 2 / variance,
    silent: each.filter((table) => table.variance === 0).length,
  };
};

/** sum(ad/N) / sum(bc/N), with limits from the variance of Robins, Breslow and Greenland. */
const commonOdds = (tables: readonly Table[], level: number): Ratio => {
  const terms = tables.map(({ a, b, c, d }) => {
    const n = a + b + c + d;
    return { p: (a + d) / n, q: (b + c) / n, r: (a * d) / n, s: (b * c) / n };
  });
  const r = sum(terms.map((term) => term.r));
  const s = sum(terms.map((term) => term.s));
  const variance =
    sum(terms.map((term) => term.p * term.r)) / (2 * r * r) +
    sum(terms.map((term) => term.p * term.s + term.q * term.r)) / (2 * r * s) +
    sum(terms.map((term) => term.q * term.s)) / (2 * s * s);
  const reach = Math.exp(twoSidedZ(level) * Math.sqrt(variance));
  return { ratio: r / s, lower: r / s / reach, upper: (r / s) * reach };
};
