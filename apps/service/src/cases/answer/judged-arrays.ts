import type { Judged } from '@hull-record/statistics';
import type { JudgedHull } from '../inputs/case-inputs.js';

/** The hulls of a case as the arrays that statistics take, strata numbered in the order of their names. */
export const judgedArrays = (hulls: readonly JudgedHull[]): Judged & { readonly strataCount: number } => {
  const names = [...new Set(hulls.map(({ stratum }) => stratum))].sort();
  const numbers = new Map(names.map((name, i) => [name, i]));
  return {
    ages: Float64Array.from(hulls, ({ age }) => age),
    claimed: Uint8Array.from(hulls, ({ claimed }) => (claimed ? 1 : 0)),
    strata: Uint32Array.from(hulls, ({ stratum }) => numbers.get(stratum) ?? 0),
    strataCount: names.length,
  };
};

/** A figure as JSON can hold it: null where it has no bound or cannot be told. */
export const figure = (value: number): number | null => (Number.isFinite(value) ? value : null);
