import { describe, expect, it } from '@jest/globals';
import {
  followingOf,
  hullCharts,
  normal,
  processChart,
  processFigures,
  readingsCapability,
  seeded,
  skewOf,
  TooLittle,
  WESTERN_ELECTRIC,
  withinHullsChart,
} from '@hull-record/statistics';

const SETTINGS = { rules: WESTERN_ELECTRIC, weight: 0.2, reach: 3, slack: 0.5, limit: 4 };
const draw = normal;
/** Hulls with a spread of their own, and within: so many hulls of so many readings. */
const hullsOf = (count: number, each: number, between: number, within: number, seed = 1): number[][] => {
  const random = seeded(seed);
  return Array.from({ length: count }, () => {
    const middle = 500 + between * draw(random);
    return Array.from({ length: each }, () => middle + within * draw(random));
  });
};
const asRead = (hulls: readonly (readonly number[])[]) => hulls.map((of) => of.map((value) => ({ value })));

describe('charts of hulls', () => {
  const hulls = [
    [10, 12, 11],
    [9, 11, 13],
    [12, 12, 12.6],
  ];

  it('of one size have the limits of ISO 7870-2 within, and those of single values between', () => {
    const { within, means } = hullCharts(hulls);
    const spread = withinHullsChart(hulls).points[0];
    expect([spread?.centre, spread?.lower, spread?.upper]).toEqual(
      [within.centre, within.lower, within.upper].map((x) => expect.closeTo(x, 9)),
    );
    const chart = processChart(hulls, SETTINGS);
    expect(chart.means.upper).toBeCloseTo(means.values.upper, 9);
    expect(chart.movingRange.upper).toBeCloseTo(means.movingRange.upper, 9);
  });

  it('of different sizes have wider limits within where there are fewer readings, and none of a single one', () => {
    const [two, five, one] = withinHullsChart([[1, 3], [1, 2, 3, 4, 5], [7]]).points;
    expect((two?.upper ?? 0) > (five?.upper ?? 0)).toBe(true);
    expect(one).toBeNull();
    expect(() => withinHullsChart([[1], [2]])).toThrow(TooLittle);
  });

  it('by frozen figures find a shift that figures of all hulls hide', () => {
    const before = hullsOf(25, 4, 5, 3);
    const after = before.map((of) => of.map((value) => value + 18));
    const frozen = processChart([...before, ...after], SETTINGS, processFigures(before));
    const last = frozen.points.at(-1);
    expect(last?.ewma.signal && last.cusum.signal).toBe(true);
    expect(frozen.points.slice(33).every(({ fired }) => fired.length > 0)).toBe(true);
    expect(frozen.stable).toBe(false);
  });

  it('cannot be drawn when all means are the same, though arithmetic leaves traces', () => {
    expect(() => processFigures([[0.1, 0.1, 0.1], [0.1], [0.1, 0.1, 0.1]])).toThrow(TooLittle);
  });
});

describe('the shape of readings', () => {
  it('is lopsided or even: 1 to 8 has no skew, their fourth powers have', () => {
    const even = [1, 2, 3, 4, 5, 6, 7, 8];
    expect(skewOf(even)).toMatchObject({ coefficient: expect.closeTo(0, 9), skewed: false });
    expect(skewOf([...even, ...even].map((x) => x ** 4))?.skewed).toBe(true);
    expect(skewOf([1, 2, 3])).toBeNull();
  });

  it('follows what was before, or not', () => {
    expect(followingOf([1, 2, 3, 4, 5, 6, 7, 8, 9, 10])?.correlated).toBe(true);
    expect(followingOf([1, 2, 1, 2, 1, 2, 1, 2, 1, 2])?.coefficient).toBeLessThan(-0.8);
    expect(followingOf([3, 3, 3, 3, 3, 3, 3, 3])).toBeNull();
  });
});

describe('capability of readings', () => {
  it('of a minimum alone has the lower side alone, and its interval', () => {
    const found = readingsCapability(asRead(hullsOf(30, 4, 5, 3)), { lower: 470 });
    expect(found).toMatchObject({ says: 'indices', byIntervals: false, ofLogarithms: false });
    if (found.says !== 'indices') return;
    expect([found.long.cp, found.long.cpUpper, found.short?.cp]).toEqual([null, null, null]);
    const { cpk = 0, cpkInterval } = found.long;
    expect((cpkInterval?.lower ?? 9) < (cpk ?? 0) && (cpk ?? 0) < (cpkInterval?.upper ?? 0)).toBe(true);
    expect(cpk).toBe(found.long.cpLower);
  });

  it('counts spots of one hull as about one reading when hulls differ and spots do not', () => {
    const effective = (between: number, within: number): number => {
      const found = readingsCapability(asRead(hullsOf(40, 5, between, within)), { lower: 400 });
      return found.says === 'indices' ? found.effective : NaN;
    };
    expect(effective(10, 0.1)).toBeLessThan(42);
    expect(effective(0, 10)).toBeGreaterThan(120);
  });

  it('over a short time is the spread of one reading, not of means', () => {
    const found = readingsCapability(asRead(hullsOf(400, 4, 6, 8, 3)), { lower: 400, upper: 600 });
    expect(found.says === 'indices' ? found.short?.sigma : NaN).toBeCloseTo(10, 0);
  });

  it('says that a gauge of four steps is too coarse, and that there is nothing to fit without limits', () => {
    const coarse = hullsOf(20, 4, 1, 1).map((of) => of.map((value) => ({ value: Math.round((value - 500) / 3) * 3 })));
    expect(readingsCapability(coarse, { lower: 1 })).toMatchObject({ says: 'gauge too coarse' });
    expect(readingsCapability(coarse, {})).toEqual({ says: 'no specification' });
    expect(readingsCapability(coarse.slice(0, 4), { lower: 1 })).toEqual({ says: 'too few', hulls: 4 });
  });

  it('of a comb gauge is that of the film behind its teeth: the last wet tooth alone would be low by half a step', () => {
    const spots = hullsOf(60, 5, 20, 15, 5).map((of) =>
      of.map((value) => {
        const from = Math.floor(value / 25) * 25;
        return { value: from + 12.5, from, to: from + 25 };
      }),
    );
    const found = readingsCapability(spots, { lower: 400 });
    expect(found).toMatchObject({ says: 'indices', byIntervals: true, short: null });
    if (found.says !== 'indices') return;
    expect(Math.abs(found.mean - 500)).toBeLessThan(6);
    expect(Math.abs(found.long.sigma - 25)).toBeLessThan(3);
  });

  it('of lopsided readings is that of their logarithms', () => {
    const lopsided = hullsOf(60, 4, 30, 50, 7).map((of) => of.map((value) => Math.exp(value / 100)));
    const found = readingsCapability(asRead(lopsided), { upper: 2000 });
    expect(found).toMatchObject({ says: 'indices', ofLogarithms: true, skew: { skewed: false } });
  });
});
