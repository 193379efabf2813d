import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  capability,
  chanceBetween,
  chartConstants,
  cpkLimits,
  cpLimits,
  cusum,
  cusumRunLength,
  ewma,
  fitCoarse,
  hullCharts,
  individualsChart,
  InputInvalid,
  meanAndDeviation,
  meanAndRange,
  NELSON,
  normal,
  normalLower,
  runsOf,
  seeded,
  TooLittle,
  WESTERN_ELECTRIC,
} from '@hull-record/statistics';

describe('the factors of charts', () => {
  it.each([2, 3, 5, 10, 25])('have as d2 for %d the integral of 1 - F^n - (1 - F)^n, taken anew', (n) => {
    const step = 0.001;
    let total = 0;
    for (let x = -9; x < 9; x += step) total += (1 - normalLower(x) ** n - normalLower(-x) ** n) * step;
    expect(chartConstants(n).d2).toBeCloseTo(total, 6);
  });

  it('for two values are 2/sqrt(pi), sqrt(2 - 4/pi) and sqrt(2/pi)', () => {
    const { d2, d3, c4 } = chartConstants(2);
    expect([d2, d3, c4]).toEqual(
      [2 / Math.sqrt(Math.PI), Math.sqrt(2 - 4 / Math.PI), Math.sqrt(2 / Math.PI)].map((x) => expect.closeTo(x, 9)),
    );
  });

  it.each([1, 26, 2.5])('are not known for %d', (n) => {
    expect(() => chartConstants(n)).toThrow(InputInvalid);
  });
});

describe('control charts', () => {
  const groups = [
    [10, 12, 11],
    [9, 11, 13],
    [12, 12, 9],
  ];

  it('of means take the spread within subgroups, by range (A2 1.023) or deviation (A3 1.954), ISO 7870-2', () => {
    expect(meanAndRange(groups).means.upper).toBeCloseTo(11 + 1.023 * 3, 2);
    const s = (1 + 2 + Math.sqrt(3)) / 3;
    expect(meanAndDeviation(groups).means.lower).toBeCloseTo(11 - 1.954 * s, 2);
    expect(meanAndRange(groups).spread).toMatchObject({ centre: 3, lower: 0 });
    expect(() =>
      meanAndRange([
        [1, 2],
        [1, 2, 3],
      ]),
    ).toThrow(InputInvalid);
  });

  it('of hulls take the spread between hulls: means that differ more than spots of one hull are no signal', () => {
    const hulls = [
      [500, 502],
      [560, 561],
      [520, 519],
      [580, 582],
      [530, 531],
    ];
    const means = hulls.map(([a = 0, b = 0]) => (a + b) / 2);
    const inside = ({ lower, upper }: { lower: number; upper: number }): number =>
      means.filter((m) => m > lower && m < upper).length;
    expect(inside(hullCharts(hulls).means.values)).toBe(5);
    expect(inside(meanAndRange(hulls).means)).toBeLessThan(3);
    expect(() => individualsChart([1])).toThrow(TooLittle);
  });

  it('by weighted mean start narrow, settle, and signal outside', () => {
    const points = ewma([0, 0, 0, 9], { weight: 0.2, target: 0, sigma: 1 });
    expect(points.map(({ signal }) => signal)).toEqual([false, false, false, true]);
    expect(points[0]?.upper).toBeCloseTo(3 * 0.2, 12);
    expect(() => ewma([1], { weight: 0, target: 0, sigma: 1 })).toThrow(InputInvalid);
  });

  it('by cumulative sum date a change, and see both sides alike', () => {
    const settings = { target: 0, slack: 0.5, limit: 4 };
    const up = cusum([0, -1, 2, 2, 2, 2], settings);
    const down = cusum([0, 1, -2, -2, -2, -2], settings);
    expect(up.map(({ high }) => high)).toEqual(down.map(({ low }) => low));
    expect(up.findIndex(({ signal }) => signal)).toBe(4);
    expect(up[4]?.highFor).toBe(3);
    expect(cusumRunLength({ slack: 0.5, limit: 5, shift: 0.5 })).toBeCloseTo(6.166 ** 2, 9);
    expect(cusumRunLength({ slack: 0.5, limit: 5, shift: 0.5 + 1e-5 })).toBeCloseTo(6.166 ** 2, 2);
  });
});

describe('run rules', () => {
  const [, , trend, alternating, , , near, far] = NELSON as [never, never, ...typeof NELSON];
  it.each([
    ['six steadily up', trend, [0, 1, 2, 3, 4, 5, 5], [5]],
    ['level is neither up nor down', trend, [1, 1, 1, 1, 1, 1], []],
    ['fourteen by turns', alternating, Array.from({ length: 15 }, (_, i) => (i % 2 ? 1 : -1)), [13, 14]],
    ['fifteen near the centre', near, Array(15).fill(0.5) as number[], [14]],
    ['eight far on both sides', far, [2, -2, 2, -2, 2, -2, 2, -2], [7]],
    ['eight far on one side are no mixture', far, Array(8).fill(2) as number[], []],
    [
      'a point on the centre ends a run',
      { kind: 'beyond', count: 8, of: 8, distance: 0 } as const,
      [1, 1, 1, 1, 0, 1, 1, 1, 1],
      [],
    ],
    [
      'three of four in a row, as set',
      { kind: 'beyond', count: 3, of: 4, distance: 1 } as const,
      [2, 2, 0, 2, -2],
      [3],
    ],
  ])('%s', (_name, rule, zs, places) => {
    expect(runsOf(zs, rule as NonNullable<typeof rule>)).toEqual(places);
  });

  it('do not mind which side is up', () => {
    const zs = fc.array(fc.double({ min: -4, max: 4, noNaN: true }), { maxLength: 40 });
    fc.assert(
      fc.property(zs, fc.constantFrom(...NELSON, ...WESTERN_ELECTRIC), (given, rule) => {
        expect(
          runsOf(
            given.map((z) => -z),
            rule,
          ),
        ).toEqual(runsOf(given, rule));
      }),
    );
  });

  it('of Western Electric signal after about 92 points of a steady process (Champ and Woodall 1987, from memory)', () => {
    const random = seeded(11);
    const lengths = Array.from({ length: 400 }, () => {
      const zs: number[] = [];
      for (;;) {
        zs.push(normal(random));
        const last = zs.slice(-8);
        if (WESTERN_ELECTRIC.some((rule) => runsOf(last, rule).includes(last.length - 1))) return zs.length;
      }
    });
    expect(Math.abs(lengths.reduce((a, b) => a + b, 0) / 400 - 91.75)).toBeLessThan(4 * (90 / 20));
  });
});

describe('capability', () => {
  it('of a minimum has one side, and no Cp', () => {
    expect(capability(500, 20, { lower: 450 })).toEqual({
      cp: null,
      cpLower: expect.closeTo(50 / 60, 12),
      cpUpper: null,
      cpk: expect.closeTo(50 / 60, 12),
      offCentre: null,
    });
    expect(capability(500, 20, {}).cpk).toBeNull();
  });

  it('has limits that close in on it as values grow in number', () => {
    const width = (n: number): number => cpkLimits(1, n).upper - cpkLimits(1, n).lower;
    expect(width(400)).toBeCloseTo(width(100) / 2, 2);
    expect(cpLimits(1, 1e6).upper).toBeCloseTo(1, 2);
    // chi-square of 29 degrees: 16.0471 and 45.7223 (printed tables).
    expect(cpLimits(1, 30)).toEqual({
      lower: expect.closeTo(Math.sqrt(16.0471 / 29), 5),
      upper: expect.closeTo(Math.sqrt(45.7223 / 29), 5),
    });
  });
});

describe('a coarse gauge', () => {
  const cut = (values: readonly number[], step: number) =>
    [...new Set(values.map((value) => Math.floor(value / step)))].map((from) => ({
      from: from * step,
      to: (from + 1) * step,
      count: values.filter((value) => Math.floor(value / step) === from).length,
    }));
  const random = seeded(3);
  const values = Array.from({ length: 2000 }, () => 19.3 + 1.2 * normal(random));
  const mean = values.reduce((a, b) => a + b, 0) / 2000;
  const deviation = Math.sqrt(values.reduce((total, value) => total + (value - mean) ** 2, 0) / 2000);

  it('keeps the chance of an interval in either tail', () => {
    expect(chanceBetween(20, 30)).toBeCloseTo(normalLower(-20), 95);
    expect(chanceBetween(20, 30)).toBeGreaterThan(1e-90);
    expect(chanceBetween(-30, -20)).toBe(chanceBetween(20, 30));
  });

  it('with steps of nearly nothing gives mean and deviation of the values', () => {
    const fit = fitCoarse(cut(values, 0.01));
    expect(fit.mean).toBeCloseTo(mean, 3);
    expect(fit.deviation).toBeCloseTo(deviation, 3);
  });

  it('with steps of 2 mil finds both again, where the teeth alone would be a mil low', () => {
    const coarse = cut(values, 2);
    const fit = fitCoarse(coarse);
    const teeth = coarse.reduce((total, { from, count }) => total + from * count, 0) / 2000;
    expect(Math.abs(fit.mean - mean)).toBeLessThan(0.06);
    expect(Math.abs(fit.deviation - deviation)).toBeLessThan(0.06);
    expect(mean - teeth).toBeGreaterThan(0.9);
  });

  it('reads open ends, keeps the unit, and needs three intervals', () => {
    const readings = [
      { from: -Infinity, to: 16, count: 3 },
      { from: 16, to: 18, count: 10 },
      { from: 18, to: Infinity, count: 4 },
    ];
    const fit = fitCoarse(readings);
    // Two free parameters and three intervals: the fit meets the shares exactly.
    expect(normalLower((16 - fit.mean) / fit.deviation)).toBeCloseTo(3 / 17, 6);
    expect(normalLower((fit.mean - 18) / fit.deviation)).toBeCloseTo(4 / 17, 6);
    const um = fitCoarse(readings.map(({ from, to, count }) => ({ from: from * 25.4, to: to * 25.4, count })));
    expect(um.mean / fit.mean).toBeCloseTo(25.4, 5);
    expect(() => fitCoarse(readings.slice(1))).toThrow(TooLittle);
    expect(() => fitCoarse([{ from: 2, to: 2, count: 1 }])).toThrow(InputInvalid);
  });
});
