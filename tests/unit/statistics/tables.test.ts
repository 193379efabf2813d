import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  binomialLimits,
  binomialTest,
  breslowDay,
  InputInvalid,
  mantelHaenszel,
  poissonLimits,
  rateRatio,
  riskRatio,
  sampleOdds,
  trendTest,
} from '@hull-record/statistics';
import { smallTable } from './tables.js';

const filled = smallTable(40).map(({ a, b, c, d }) => ({ a: a + 1, b: b + 1, c: c + 1, d: d + 1 }));

describe('sample ratios', () => {
  it('add a half to every cell when one is empty, and say so (Haldane 1956)', () => {
    expect(sampleOdds({ a: 6, b: 0, c: 4, d: 30 })).toMatchObject({
      halfAdded: true,
      ratio: expect.closeTo((6.5 * 30.5) / (0.5 * 4.5), 12),
    });
    expect(sampleOdds({ a: 6, b: 1, c: 4, d: 30 })).toMatchObject({ halfAdded: false, ratio: 45 });
  });

  it('have no risk ratio without a claim on either side', () => {
    expect(riskRatio({ a: 0, b: 5, c: 2, d: 9 })).toBeNull();
    expect(riskRatio({ a: 2, b: 9, c: 0, d: 5 })).toBeNull();
  });

  it('turn over when exposed and others change places', () => {
    fc.assert(
      fc.property(filled, ({ a, b, c, d }) => {
        const [one, other] = [riskRatio({ a, b, c, d }), riskRatio({ a: c, b: d, c: a, d: b })];
        expect((one?.ratio ?? NaN) * (other?.ratio ?? NaN)).toBeCloseTo(1, 10);
        expect((one?.lower ?? NaN) * (other?.upper ?? NaN)).toBeCloseTo(1, 8);
      }),
    );
  });
});

describe('stratified tables', () => {
  it('of one stratum have its cross product as their odds ratio, and agree with themselves', () => {
    fc.assert(
      fc.property(filled, (table) => {
        const found = mantelHaenszel([table]);
        expect(found.ratio / ((table.a * table.d) / (table.b * table.c))).toBeCloseTo(1, 10);
        const twice = breslowDay([table, table], mantelHaenszel([table, table]).ratio);
        expect(twice.breslowDay.chiSquare).toBeCloseTo(0, 8);
        expect(twice.breslowDay.p).toBeCloseTo(1, 6);
      }),
    );
  });

  it('with a zero margin add nothing, and are counted', () => {
    const table = { a: 8, b: 2, c: 1, d: 5 };
    const silent = { a: 0, b: 0, c: 3, d: 7 };
    const [alone, both] = [mantelHaenszel([table]), mantelHaenszel([table, silent])];
    expect(both).toEqual({ ...alone, silent: 1 });
    expect(breslowDay([table, silent, table], 5).breslowDay.degrees).toBe(1);
  });

  it('take no half off a difference smaller than a half', () => {
    const found = mantelHaenszel([{ a: 5, b: 5, c: 5, d: 6 }]);
    expect(found.chiSquare).toBe(found.chiSquareUncorrected);
  });
});

describe('counts and rates', () => {
  it('have limits that leave a fortieth in the tail they are named after', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 30 }), (x, more) => {
        const n = x + more;
        const { lower, upper } = binomialLimits(x, n);
        expect(binomialTest(x, n, lower).pGreater).toBeCloseTo(0.025, 9);
        expect(binomialTest(x, n, upper).pLess).toBeCloseTo(0.025, 9);
      }),
    );
  });

  it('without an event have 3.689 as their upper limit at 95 % and 2.996 at 90 %: -log of the tail', () => {
    expect(poissonLimits(0)).toEqual({ lower: 0, upper: expect.closeTo(-Math.log(0.025), 12) });
    expect(poissonLimits(0, 0.9).upper).toBeCloseTo(-Math.log(0.05), 12);
  });

  it('do not change with the unit of time', () => {
    const years = rateRatio({ claims: 7, time: 120 }, { claims: 3, time: 400 });
    const days = rateRatio({ claims: 7, time: 120 * 365 }, { claims: 3, time: 400 * 365 });
    expect(days.ratio).toBeCloseTo(years.ratio, 12);
    expect(days.pTwoSided).toBeCloseTo(years.pTwoSided, 12);
    expect(days.upper).toBeCloseTo(years.upper, 9);
  });

  it('refuse a time of nothing', () => {
    expect(() => rateRatio({ claims: 1, time: 0 }, { claims: 1, time: 1 })).toThrow(InputInvalid);
  });
});

describe('the trend test', () => {
  const groups = [
    { score: 0, claims: 1, hulls: 20 },
    { score: 0.5, claims: 3, hulls: 20 },
    { score: 1, claims: 9, hulls: 20 },
  ];

  it('does not change when scores are shifted and stretched', () => {
    const moved = groups.map((group) => ({ ...group, score: 7 + 100 * group.score }));
    expect(trendTest(moved).chiSquare).toBeCloseTo(trendTest(groups).chiSquare, 10);
  });

  it('of two groups is the chi-square of their table', () => {
    const [one, two] = [
      { score: 0, claims: 3, hulls: 20 },
      { score: 1, claims: 9, hulls: 25 },
    ];
    const [a, b, c, d] = [9, 16, 3, 17];
    const plain = (45 * (a * d - b * c) ** 2) / (25 * 20 * 12 * 33);
    expect(trendTest([one, two]).chiSquare).toBeCloseTo(plain, 12);
  });

  it('cannot be made when all scores are alike or nobody has a claim', () => {
    expect(() => trendTest(groups.map((group) => ({ ...group, score: 1 })))).toThrow(InputInvalid);
    expect(() => trendTest(groups.map((group) => ({ ...group, claims: 0 })))).toThrow(InputInvalid);
  });
});
