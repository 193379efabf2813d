import { describe, expect, it } from '@jest/globals';
import { judgeBarcol, readingsWanted } from '@hull-record/trade';
import { publishedCases } from '../support/published-cases.js';

publishedCases('hardness');

/** Hardness, number of readings and variance of the sample-size table of ASTM D2583, from memory. */
const TABLE = {
  reinforced: [
    [30, 22.4],
    [40, 17.2],
    [50, 12],
    [60, 7.8],
    [70, 3.6],
  ],
  homogeneous: [
    [20, 2.47],
    [30, 2.2],
    [40, 1.93],
    [50, 1.66],
    [60, 1.39],
    [70, 1.12],
    [80, 0.85],
  ],
} as const;

describe('the sample-size table of ASTM D2583 (from memory)', () => {
  it.each([
    ['reinforced', 0.72, 0.783],
    ['homogeneous', 0.274, 0.284],
  ] as const)(
    'variance of the average is equal in the whole table, %s: %d to %d (derived from its title)',
    (kind, least, most) => {
      for (const [hardness, variance] of TABLE[kind]) {
        const ofAverage = variance / (readingsWanted(hardness, kind) ?? Number.NaN);
        expect(ofAverage).toBeGreaterThanOrEqual(least);
        expect(ofAverage).toBeLessThanOrEqual(most);
      }
    },
  );
});

describe('populations', () => {
  it('gel coat and laminate are two sets: each is judged against its own minimum (derived)', () => {
    const rule = { minimum: 40, fraction: 1, source: 'as given' };
    const gelCoat = judgeBarcol({ values: Array<number>(10).fill(30), side: 'gel coat' }, { ...rule, minimum: 30 });
    const laminate = judgeBarcol({ values: Array<number>(10).fill(42), side: 'laminate' }, rule);
    expect([gelCoat.verdict, laminate.verdict]).toEqual(['hard enough', 'hard enough']);
    const pooled = judgeBarcol(
      { values: [...Array<number>(10).fill(30), ...Array<number>(10).fill(42)], side: 'laminate' },
      rule,
    );
    expect(pooled.verdict).toBe('too soft');
  });
});
