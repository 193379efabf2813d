import type { Judged } from '@hull-record/statistics';
import type { JudgedHull } from '../inputs/case-inputs.js';

/** The hulls of a case as the arrays that statistics take, strata numbered in the order of their names. */
export const judgedArrays = (hulls: readonly JudgedHull[]): Judged & { readonly strataCount: number } => {
  const names = [...new Set(hulls.map(({ stratum }) => stratum))].sort();
  const numbers = new Map(names.map((name, i) => [name, i]));
  const ages = new Float64Array(hulls.length);
  const claimed = new Uint8Array(hulls.length);
  const strata = new Uint32Array(hulls.length);
  const late = hulls.some(({ from }) => from > 0);
  hulls.forEach((hull, i) => {
    ages[i] = hull.age;
    claimed[i] = hull.claimed ? 1 : 0;
    strata[i] = numbers.get(hull.stratum) ?? 0;
  });
  const from = late ? { from: Float64Array.from(hulls, (hull) => hull.from) } : {};
  return { ages, ...from, claimed, strata, strataCount: names.length };
};

/** A figure as JSON can hold it: null where it has no bound or cannot be told. */
export const figure = (value: number): number | null => (Number.isFinite(value) ? value : null);
