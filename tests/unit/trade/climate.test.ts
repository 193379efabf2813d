import { describe, expect, it } from '@jest/globals';
import {
  degreeHours,
  dewPointC,
  hoursAtLeast,
  judgeSurfaceMargin,
  largestDailySpreadC,
  longestHoursAtLeast,
  MAGNUS,
  MARGIN_RULES,
  requireClimateLog,
  saturationPressurePa,
  spreadC,
  whyNoDewPoint,
  type ClimatePoint,
} from '@hull-record/trade';
import fc from 'fast-check';

const H = 3_600_000;
/** A reading at an hour. */
const p = (hour: number, airC: number, humidityPercent = 60): ClimatePoint => ({ at: hour * H, airC, humidityPercent });
/** Invalid climate with its message. */
const invalid = (message: string, data: object) => expect.objectContaining({ code: 'climate-invalid', message, data });

const NO_INSTANT = 'A reading has no instant.';
const TWICE = 'Two readings of one area have the same instant.';
const outOfHumidity = (of: number): string => `Relative humidity is ${of} %; it must be more than 0 and at most 100.`;
const outOfAir = (of: number): string => `Air temperature is ${of} C; the formula holds from -45 to 60 C.`;

describe('the dew point', () => {
  it('follows from published constants', () => {
    expect(MAGNUS).toEqual({ alphaHPa: 6.112, beta: 17.62, lambdaC: 243.12, fromC: -45, toC: 60 });
  });

  it.each([
    [20, 50, 9.255175],
    [0, 100, 0],
    [-45, 50, -51.153918],
    [60, 10, 17.531753],
    [60, 100, 60],
  ])('of air of %d C and %d %% is %d C', (airC, humidity, dewPoint) => {
    expect(dewPointC(airC, humidity)).toBeCloseTo(dewPoint, 6);
    expect(whyNoDewPoint(airC, humidity)).toBeUndefined();
  });

  it.each([
    [20, 0, outOfHumidity(0)],
    [20, -1, outOfHumidity(-1)],
    [20, 100.1, outOfHumidity(100.1)],
    [20, NaN, outOfHumidity(NaN)],
    [-45.1, 50, outOfAir(-45.1)],
    [60.1, 50, outOfAir(60.1)],
    [NaN, 50, outOfAir(NaN)],
  ])('does not follow from %d C and %d %%: %s', (airC, humidityPercent, why) => {
    expect(whyNoDewPoint(airC, humidityPercent)).toBe(why);
    expect(() => dewPointC(airC, humidityPercent)).toThrow(invalid(why, { airC, humidityPercent }));
  });

  it('at it, air is saturated: the pressure of its vapour is the humidity of the warmer air', () => {
    const air = fc.double({ min: -10, max: 60, noNaN: true });
    fc.assert(
      fc.property(air, fc.double({ min: 10, max: 99, noNaN: true }), (airC, humidity) => {
        const point = dewPointC(airC, humidity);
        expect(saturationPressurePa(point) / saturationPressurePa(airC)).toBeCloseTo(humidity / 100, 9);
        expect(point).toBeLessThan(airC);
        expect(dewPointC(airC, humidity + 1)).toBeGreaterThan(point);
      }),
    );
  });
});

describe('the pressure of saturated vapour', () => {
  it.each([
    [-45, 11.170812],
    [0, 611.2],
    [20, 2332.596022],
    [60, 19993.287485],
  ])('at %d C is %d Pa', (airC, pascal) => {
    expect(saturationPressurePa(airC)).toBeCloseTo(pascal, 5);
  });

  it.each([-45.1, 60.1, NaN])('is not given at %d C', (airC) => {
    expect(() => saturationPressurePa(airC)).toThrow(invalid(outOfAir(airC), { airC }));
  });
});

describe('the margin of a surface over the dew point', () => {
  const iso = 'ISO 8502-4 (sentence from memory, confirm against the standard)';
  const charts = 'dew point charts in use in the US';

  it('is asked by one of two rules: 3 C, or 5 F, which are 25 / 9 C', () => {
    const fiveF = { marginC: expect.closeTo(2.777778, 6), source: charts };
    expect(MARGIN_RULES).toEqual({ '3 C': { marginC: 3, source: iso }, '5 F': fiveF });
  });

  // Saturated air of 0 C has its dew point at 0 C.
  it.each([
    [3, '3 C', 'enough', iso],
    [2.99, '3 C', 'too small', iso],
    [25 / 9, '5 F', 'enough', charts],
    [2.77, '5 F', 'too small', charts],
    [-1, '5 F', 'too small', charts],
  ] as const)('%d C by the rule of %s is %s', (surfaceC, rule, verdict, source) => {
    const judged = judgeSurfaceMargin({ airC: 0, humidityPercent: 100, surfaceC }, rule);
    expect(judged).toEqual({ verdict, dewPointC: 0, marginC: surfaceC, rule, source });
  });

  it.each([
    [20, 0, 20, outOfHumidity(0)],
    [70, 50, 20, outOfAir(70)],
    [20, 50, NaN, 'No surface temperature.'],
    [20, 50, Infinity, 'No surface temperature.'],
  ])('cannot be judged of %d C, %d %% and a surface of %d C', (airC, humidityPercent, surfaceC, note) => {
    const none = { verdict: 'cannot be judged', dewPointC: null, marginC: null, rule: '3 C', source: iso, note };
    expect(judgeSurfaceMargin({ airC, humidityPercent, surfaceC }, '3 C')).toEqual(none);
  });
});

describe('the climate log', () => {
  it('is put in the order of time, and left as it was', () => {
    const log = [p(3, 20), p(1, 21), p(2, 22)];
    expect(requireClimateLog(log)).toEqual([p(1, 21), p(2, 22), p(3, 20)]);
    expect(log).toEqual([p(3, 20), p(1, 21), p(2, 22)]);
  });

  it.each([
    ['two readings at one instant', [p(1, 20), p(3, 20), p(1, 21)], TWICE, { at: H, airC: 21, humidityPercent: 60 }],
    ['no instant', [p(NaN, 20)], NO_INSTANT, { at: NaN, airC: 20, humidityPercent: 60 }],
    ['an endless instant', [p(1, 20), p(Infinity, 20)], NO_INSTANT, { at: Infinity, airC: 20, humidityPercent: 60 }],
    ['heat', [p(1, 61)], outOfAir(61), { at: H, airC: 61, humidityPercent: 60 }],
    ['dry air', [p(1, 20, 0)], outOfHumidity(0), { at: H, airC: 20, humidityPercent: 0 }],
  ] as const)('is none with %s', (_, log, why, data) => {
    expect(() => requireClimateLog(log)).toThrow(invalid(why, data));
  });

  it.each([
    [[], 0, 0],
    [[p(0, 20)], 0, 0],
    [[p(0, -5), p(12, -2), p(24, -9)], 7, 7],
    [[p(24.1, 25), p(0, 20)], 5, 0],
    [[p(24, 25), p(0, 20)], 5, 5],
    [[p(0, 20), p(20, 23), p(30, 18)], 5, 5],
    [[p(0, 10), p(20, 14), p(30, 17), p(44, 20)], 10, 6],
  ])('%j spreads over %d C, and over %d C within 24 h', (log, spread, daily) => {
    expect(spreadC(log)).toBe(spread);
    expect(largestDailySpreadC(log)).toBe(daily);
  });

  it('spreads within a day no more than as a whole', () => {
    const hours = fc.uniqueArray(fc.integer({ min: 0, max: 90 }), { maxLength: 12 });
    fc.assert(
      fc.property(hours, fc.array(fc.integer({ min: -20, max: 40 }), { minLength: 12, maxLength: 12 }), (at, airC) => {
        const log = at.map((hour, i) => p(hour, airC[i] ?? 0));
        expect(largestDailySpreadC(log)).toBeLessThanOrEqual(spreadC(log));
        expect(largestDailySpreadC([...log].reverse())).toBe(largestDailySpreadC(log));
      }),
    );
  });
});

describe('hours of warmth up to an instant', () => {
  it.each([
    ['nothing was read', [], 0],
    ['the first reading came later', [p(11, 20)], 0],
    ['every reading was warm', [p(2, 18), p(5, 19)], 8],
    ['it was cold before', [p(5, 19), p(2, 17.9), p(4, 18)], 6],
    ['it was cold twice', [p(1, 17), p(2, 18), p(6, 17), p(7, 20)], 3],
    ['it was cold at last', [p(1, 20), p(10, 17)], 0],
    ['it was cold later', [p(1, 20), p(11, 17)], 9],
  ])('when %s, over the log %j, are %d', (_, log, hours) => {
    expect(hoursAtLeast(log, 18, 10 * H)).toBe(hours);
  });
});

describe('the longest time of warmth', () => {
  it.each([
    ['nothing was read', [], 0],
    ['one reading was warm', [p(2, 20)], 0],
    ['no gap was longer', [p(12, 18), p(0, 20), p(6, 19)], 12],
    ['a gap was longer', [p(0, 20), p(6, 20), p(12.5, 20), p(14, 20)], 6],
    ['the time after a gap was the longest', [p(0, 20), p(7, 20), p(13, 20), p(15, 20)], 8],
    ['it was cold between', [p(0, 20), p(5, 20), p(6, 17.9), p(7, 20), p(10, 20)], 5],
    ['it was cold first and last', [p(0, 10), p(1, 20), p(4, 20), p(6, 10)], 3],
    ['it was never warm', [p(0, 10), p(3, 11)], 0],
  ])('when %s, over %j with gaps of 6 h at most, is %d h', (_, log, hours) => {
    expect(longestHoursAtLeast(log, 18, 6)).toBe(hours);
  });

  it.each([0, -1, NaN])('asks for a gap that is more than zero, not %d', (gap) => {
    const wrong = expect.objectContaining({ code: 'number-invalid', data: { name: 'gap', value: gap } });
    expect(() => longestHoursAtLeast([p(0, 20)], 18, gap)).toThrow(wrong);
  });
});

describe('degree-hours', () => {
  const log = [p(4, 24), p(0, 20), p(2, 24), p(6, 14)];

  it.each([
    [0, 6, 26],
    [0, 4, 20],
    [2, 4, 12],
    [4, 6, 6],
    [3.9, 9, 6],
    [-2, 0.5, null],
    [4.1, 5.9, null],
    [6, 9, null],
  ])(
    'above 18 C from hour %d to hour %d are %j, where readings below the base count as the base',
    (from, until, sum) => {
      expect(degreeHours(log, 18, { from: from * H, until: until * H })).toBe(sum);
    },
  );

  it('of two readings below the base are none', () => {
    expect(degreeHours(log, 30, { from: 0, until: 6 * H })).toBe(0);
  });

  it('add up at a reading, and a day of one degree more has 24 more', () => {
    const day = fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 25, maxLength: 25 });
    fc.assert(
      fc.property(day, fc.integer({ min: 1, max: 23 }), (airC, noon) => {
        const readings = airC.map((air, hour) => p(hour, air));
        const over = (from: number, until: number, base = 10): number =>
          degreeHours(readings, base, { from: from * H, until: until * H }) ?? NaN;
        expect(over(0, noon) + over(noon, 24)).toBeCloseTo(over(0, 24), 9);
        expect(over(0, 24, -1) - over(0, 24, 0)).toBeCloseTo(24, 9);
      }),
    );
  });
});
