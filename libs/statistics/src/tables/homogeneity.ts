import { sum } from '../numbers.js';
import { chiSquareUpper } from '../special/chi-square.js';
import { bisect } from '../special/bisect.js';
import { marginsOf, rangeOf, type Table } from './table.js';

/** A chi-square test. */
export interface ChiSquareTest {
  readonly chiSquare: number;
  readonly degrees: number;
  readonly p: number;
}

const tested = (chiSquare: number, degrees: number): ChiSquareTest => ({
  chiSquare,
  degrees,
  p: chiSquareUpper(chiSquare, degrees),
});

/**
 * Whether strata share one odds ratio: Breslow-Day (1980), and with Tarone's correction (1985).
 *
 * `odds` is the common odds ratio of Mantel-Haenszel. Not valid for sparse tables; a small p says "tell each stratum by
 * itself". Tables with a zero margin are left out.
 */
export const breslowDay = (
  tables: readonly Table[],
  odds: number,
): { readonly breslowDay: ChiSquareTest; readonly tarone: ChiSquareTest } => {
  const speaking = tables.filter((table) => rangeOf(marginsOf(table))[0] < rangeOf(marginsOf(table))[1]);
  const fits = speaking.map((table) => fitted(table, odds));
  const plain = sum(fits.map(({ apart, variance }) => apart ** 2 / variance));
  const corrected = plain - sum(fits.map(({ apart }) => apart)) ** 2 / sum(fits.map(({ variance }) => variance));
  const degrees = speaking.length - 1;
  return { breslowDay: tested(plain, degrees), tarone: tested(corrected, degrees) };
};

/** The cell that has the odds within the margins of a table, how far off the observed one is, and its variance. */
const fitted = (table: Table, odds: number): { apart: number; variance: number } => {
  const { exposed, claims, total } = marginsOf(table);
  const [low, high] = rangeOf({ exposed, claims, total });
  const others = total - exposed - claims;
  const cell = bisect((a) => a * (others + a) - odds * (exposed - a) * (claims - a), low, high);
  const variance = 1 / (1 / cell + 1 / (exposed - cell) + 1 / (claims - cell) + 1 / (others + cell));
  return { apart: table.a - cell, variance };
};

/**
 * Woolf's test that strata share one odds ratio (1955): the weighted spread of log odds ratios.
 *
 * `added` is put on every cell: 0, or a half as in the documentation of R. It changes the digits, so it is named.
 */
export const woolf = (tables: readonly Table[], added: 0 | 0.5): ChiSquareTest => {
  const logs = tables.map(({ a, b, c, d }) => Math.log(((a + added) * (d + added)) / ((b + added) * (c + added))));
  const weights = tables.map((table) => 1 / sum(Object.values(table).map((cell: number) => 1 / (cell + added))));
  const centre = sum(logs.map((log, i) => log * (weights[i] ?? 0))) / sum(weights);
  return tested(sum(logs.map((log, i) => (weights[i] ?? 0) * (log - centre) ** 2)), tables.length - 1);
};
