import { describe, expect, it } from '@jest/globals';
import { below, poisson, seeded, unit, xoshiro, normal, quantile } from '@hull-record/statistics';

describe('the generator', () => {
  it('gives the numbers of the reference program for the state 1 2 3 4 (xoshiro128starstar.c, version 1.1, as published in the tests of rand_xoshiro)', () => {
    const random = xoshiro([1, 2, 3, 4]);
    expect(Array.from({ length: 10 }, random)).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
    ]);
  });

  it('gives the same stream for a seed, and unlike streams for seeds next to each other', () => {
    const stream = (seed: number): number[] => Array.from({ length: 5 }, seeded(seed));
    expect(stream(7)).toEqual(stream(7));
    expect(new Set([0, 1, 2, 3].flatMap(stream)).size).toBe(20);
  });
});

describe('draws', () => {
  it('of a whole number leave out the words that would favour the small ones', () => {
    const words = [2 ** 32 - 1, 5];
    expect(below(() => words.shift() ?? NaN, 3)).toBe(2);
  });

  const N = 20_000;
  const many = (draw: () => number): number[] => Array.from({ length: N }, draw);
  const mean = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0) / values.length;

  it('of a whole number below 6 are as often each, within four standard errors', () => {
    const random = seeded(1);
    const counts = many(() => below(random, 6)).reduce(
      (all, x) => all.with(x, (all[x] ?? 0) + 1),
      Array(6).fill(0) as number[],
    );
    for (const count of counts) expect(Math.abs(count - N / 6)).toBeLessThan(4 * Math.sqrt((N * 5) / 36));
  });

  it('of a unit are inside 0 and 1, and of a normal have mean 0 and variance 1, within four standard errors', () => {
    const random = seeded(2);
    for (const value of many(() => unit(random))) expect(value > 0 && value < 1).toBe(true);
    const normals = many(() => normal(random));
    expect(Math.abs(mean(normals))).toBeLessThan(4 / Math.sqrt(N));
    expect(Math.abs(mean(normals.map((z) => z * z)) - 1)).toBeLessThan(4 * Math.sqrt(2 / N));
  });

  it.each([0, 0.3, 5, 1234.5])('of a Poisson count of mean %d have that mean and variance', (expected) => {
    const random = seeded(3);
    const counts = many(() => poisson(random, expected));
    expect(Math.abs(mean(counts) - expected)).toBeLessThanOrEqual(4 * Math.sqrt(expected / N));
    const variance = mean(counts.map((count) => (count - expected) ** 2));
    expect(Math.abs(variance - expected)).toBeLessThanOrEqual(4 * Math.sqrt((2 * expected ** 2 + expected) / N));
  });
});

describe('a quantile', () => {
  it('lies between the two nearest values (type 7: the quartile of 1 2 3 4 is 1.75)', () => {
    expect([0, 0.25, 0.5, 1].map((share) => quantile([1, 2, 3, 4], share))).toEqual([1, 1.75, 2.5, 4]);
    expect(quantile([5], 0.9)).toBe(5);
  });
});
