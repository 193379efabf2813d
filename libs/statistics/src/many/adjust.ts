import { sum } from '../numbers.js';

/** Places of the values from the smallest to the largest. */
const byRank = (ps: readonly number[]): readonly number[] =>
  ps.map((_, i) => i).sort((i, j) => (ps[i] as number) - (ps[j] as number));

/** p times a factor of its rank from 1, cumulated from one end; in the order given. */
const cumulated = (
  ps: readonly number[],
  order: readonly number[],
  factor: (rank: number) => number,
  pick: (a: number, b: number) => number,
): readonly number[] => {
  const adjusted = new Array<number>(ps.length);
  let last: number | undefined;
  for (const i of order) {
    const own = Math.min(1, factor(i) * (ps[i] as number));
    last = last === undefined ? own : pick(last, own);
    adjusted[i] = last;
  }
  return adjusted;
};

const ranksOf = (order: readonly number[]): readonly number[] => {
  const ranks = new Array<number>(order.length);
  order.forEach((i, k) => (ranks[i] = k + 1));
  return ranks;
};

/** Bonferroni: m p, at most 1. */
export const bonferroni = (ps: readonly number[]): readonly number[] => ps.map((p) => Math.min(1, p * ps.length));

/** Holm 1979: the chance of any false finding; max over smaller ones of (m - j + 1) p(j). */
export const holm = (ps: readonly number[]): readonly number[] => {
  const order = byRank(ps);
  const ranks = ranksOf(order);
  return cumulated(ps, order, (i) => ps.length + 1 - (ranks[i] as number), Math.max);
};

const stepUp = (ps: readonly number[], times: number): readonly number[] => {
  const order = byRank(ps);
  const ranks = ranksOf(order);
  return cumulated(ps, [...order].reverse(), (i) => (times * ps.length) / (ranks[i] as number), Math.min);
};

/**
 * Benjamini and Hochberg 1995: the share of false findings among all, for tests that are independent or depend
 * positively; min over larger ones of m p(j) / j. In the order given.
 */
export const benjaminiHochberg = (ps: readonly number[]): readonly number[] => stepUp(ps, 1);

/** Benjamini and Yekutieli 2001: the same under any dependence, larger by the sum of 1/j. */
export const benjaminiYekutieli = (ps: readonly number[]): readonly number[] =>
  stepUp(ps, sum(ps.map((_, j) => 1 / (j + 1))));
