import { describe, expect, it } from '@jest/globals';
import {
  catalystDose,
  catalystPercentByMass,
  catalystPercentByVolume,
  judgeCatalyst,
  massPercentOfVolumePercent,
  millilitresPerKg,
  NumberInvalid,
  percentAtTemperature,
  TYPICAL_GEL_COAT_WINDOW,
} from '@hull-record/trade';
import fc from 'fast-check';

const positive = fc.double({ min: 0.01, max: 500, noNaN: true });

/** What the library says of a number that will not do. */
const wrong = (name: string, value: number, must: string): NumberInvalid => new NumberInvalid(name, value, must);
const [FINITE, POSITIVE, NOT_NEGATIVE] = ['a finite number', 'more than zero', 'zero or more'];

describe('catalyst per resin', () => {
  it.each([
    [0.2, 10, 2],
    [0.09, 5, 1.8],
    [0, 5, 0],
    [5, 5, 100],
  ])('%d kg to %d kg, or as many litres, are %d %%', (catalyst, resin, percent) => {
    expect(catalystPercentByMass(catalyst, resin)).toBeCloseTo(percent, 12);
    expect(catalystPercentByVolume(catalyst, resin)).toBeCloseTo(percent, 12);
  });

  it.each([
    [-0.1, 5, wrong('catalyst', -0.1, NOT_NEGATIVE)],
    [NaN, 5, wrong('catalyst', NaN, FINITE)],
    [0.1, 0, wrong('resin', 0, POSITIVE)],
    [0.1, -5, wrong('resin', -5, POSITIVE)],
    [0.1, Infinity, wrong('resin', Infinity, FINITE)],
  ])('%d to %d are no per cent', (catalyst, resin, error) => {
    expect(() => catalystPercentByMass(catalyst, resin)).toThrow(error);
    expect(() => catalystPercentByVolume(catalyst, resin)).toThrow(error);
  });

  it('2 % by volume of a catalyst of 1.1 kg/L in a resin of 1.25 kg/L are 1.76 % by mass', () => {
    expect(massPercentOfVolumePercent(2, { catalystKgPerL: 1.1, resinKgPerL: 1.25 })).toBeCloseTo(1.76, 12);
    expect(massPercentOfVolumePercent(0, { catalystKgPerL: 1.1, resinKgPerL: 1.25 })).toBe(0);
  });

  it.each([
    [-2, 1.1, 1.25, wrong('per cent by volume', -2, NOT_NEGATIVE)],
    [2, 0, 1.25, wrong('density of the catalyst', 0, POSITIVE)],
    [2, 1.1, 0, wrong('density of the resin', 0, POSITIVE)],
  ])('%d %% by volume of %d in %d kg/L are no per cent by mass', (percent, catalystKgPerL, resinKgPerL, error) => {
    expect(() => massPercentOfVolumePercent(percent, { catalystKgPerL, resinKgPerL })).toThrow(error);
  });

  it('by volume and by density is as by mass, and equal densities change nothing', () => {
    fc.assert(
      fc.property(positive, positive, positive, positive, (catalystL, resinL, catalystKgPerL, resinKgPerL) => {
        const byMass = catalystPercentByMass(catalystL * catalystKgPerL, resinL * resinKgPerL);
        const byVolume = catalystPercentByVolume(catalystL, resinL);
        expect(massPercentOfVolumePercent(byVolume, { catalystKgPerL, resinKgPerL }) / byMass).toBeCloseTo(1, 9);
        const equal = { catalystKgPerL: resinKgPerL, resinKgPerL };
        expect(massPercentOfVolumePercent(byVolume, equal) / byVolume).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('the dose for a mix', () => {
  it('2 % of 12 kg of resin are 240 g, and 200 mL at 1.2 kg/L', () => {
    const [grams, millilitres] = [expect.closeTo(240, 9), expect.closeTo(200, 9)];
    expect(catalystDose(12, 2, 1.2)).toEqual({ grams, millilitres });
    expect(catalystDose(12, 0, 1.2)).toEqual({ grams: 0, millilitres: 0 });
  });

  it('2 % to a kilogram of resin are 16 mL at 1.25 kg/L', () => {
    expect(millilitresPerKg(2, 1.25)).toBeCloseTo(16, 12);
  });

  it.each([
    [0, 2, 1.2, wrong('resin', 0, POSITIVE)],
    [12, -2, 1.2, wrong('per cent by mass', -2, NOT_NEGATIVE)],
    [12, 2, 0, wrong('density of the catalyst', 0, POSITIVE)],
  ])('there is none for %d kg at %d %% and %d kg/L', (resinKg, percent, density, error) => {
    expect(() => catalystDose(resinKg, percent, density)).toThrow(error);
  });

  it('makes the per cent it was asked for, and is so many millilitres to each kilogram', () => {
    fc.assert(
      fc.property(positive, fc.double({ min: 0.1, max: 5, noNaN: true }), positive, (resinKg, percent, density) => {
        const { grams, millilitres } = catalystDose(resinKg, percent, density);
        expect(catalystPercentByMass(grams / 1000, resinKg)).toBeCloseTo(percent, 9);
        expect((millilitresPerKg(percent, density) * resinKg) / millilitres).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('a per cent by mass against the window of a material', () => {
  const window = { minPercent: 1, maxPercent: 2.5, source: 'data sheet of an invented resin' };
  const verdictOn = (percent: number, verdict: string) => ({ verdict, percentByMass: percent, source: window.source });

  it('gel coat has a typical window, which comes after its own data', () => {
    expect(TYPICAL_GEL_COAT_WINDOW).toEqual({
      minPercent: 1.2,
      maxPercent: 3,
      source: 'gel coat supplier guide (1.2 to 3 %; 1.8 % at 77 F); the data sheet of the material comes first',
    });
  });

  it.each([
    [0, 'too little'],
    [0.999, 'too little'],
    [1, 'inside'],
    [1.8, 'inside'],
    [2.5, 'inside'],
    [2.501, 'too much'],
    [-0.1, 'cannot be judged'],
    [NaN, 'cannot be judged'],
    [Infinity, 'cannot be judged'],
  ])('%d %% in a window of 1 to 2.5 %% is %s', (percent, verdict) => {
    expect(judgeCatalyst(percent, window)).toEqual(verdictOn(percent, verdict));
  });

  it.each([
    [NaN, 2.5],
    [1, NaN],
    [1, Infinity],
    [2.5, 1],
  ])('a window of %d to %d %% judges nothing', (minPercent, maxPercent) => {
    const judged = judgeCatalyst(1.5, { ...window, minPercent, maxPercent });
    expect(judged).toEqual(verdictOn(1.5, 'cannot be judged'));
  });

  it('a window may be of one value, and begin at none', () => {
    expect(judgeCatalyst(2, { ...window, minPercent: 2, maxPercent: 2 }).verdict).toBe('inside');
    expect(judgeCatalyst(0, { ...window, minPercent: 0 }).verdict).toBe('inside');
  });

  it('more catalyst is never judged as less', () => {
    const order = ['too little', 'inside', 'too much'];
    const percent = fc.double({ min: 0, max: 5, noNaN: true });
    fc.assert(
      fc.property(percent, percent, (one, other) => {
        const rank = (of: number): number => order.indexOf(judgeCatalyst(of, window).verdict);
        expect(rank(Math.min(one, other))).toBeLessThanOrEqual(rank(Math.max(one, other)));
      }),
    );
  });
});

describe('the per cent that a data sheet names at a temperature', () => {
  const sheet = [
    { temperatureC: 30, percentByMass: 1 },
    { temperatureC: 15, percentByMass: 2.5 },
    { temperatureC: 20, percentByMass: 2 },
  ];

  it.each([
    [15, 2.5],
    [20, 2],
    [30, 1],
    [16, 2.4],
    [17.5, 2.25],
    [22, 1.8],
    [27, 1.3],
    [14.9, null],
    [30.1, null],
  ])('%d C has %j %%, on the line between its rows', (temperature, percent) => {
    const named = percentAtTemperature(sheet, temperature);
    expect(named).toEqual(percent === null ? null : expect.closeTo(percent, 12));
  });

  it('nothing is named by a sheet without rows, and one temperature by a sheet of one row', () => {
    expect(percentAtTemperature([], 20)).toBeNull();
    expect(percentAtTemperature(sheet.slice(0, 1), 30)).toBe(1);
    expect(percentAtTemperature(sheet.slice(0, 1), 29)).toBeNull();
  });

  it('reads rows in any order, and leaves them in theirs', () => {
    const turned = [...sheet].reverse();
    expect(percentAtTemperature(turned, 27)).toBe(percentAtTemperature(sheet, 27));
    expect(sheet.map(({ temperatureC }) => temperatureC)).toEqual([30, 15, 20]);
  });

  it.each([
    [
      'one temperature twice',
      { temperatureC: 20, percentByMass: 3 },
      wrong('temperature', 20, 'named once in the sheet'),
    ],
    ['no temperature', { temperatureC: NaN, percentByMass: 3 }, wrong('temperature', NaN, FINITE)],
    ['no per cent', { temperatureC: 25, percentByMass: 0 }, wrong('per cent by mass', 0, POSITIVE)],
    ['an endless per cent', { temperatureC: 25, percentByMass: Infinity }, wrong('per cent by mass', Infinity, FINITE)],
  ])('a sheet with %s is none', (_, row, error) => {
    expect(() => percentAtTemperature([...sheet, row], 16)).toThrow(error);
  });

  it('asks for a temperature that is a number', () => {
    expect(() => percentAtTemperature(sheet, NaN)).toThrow(wrong('temperature', NaN, FINITE));
  });

  it('is never beyond the rows around it, and falls as the shop warms', () => {
    const temperature = fc.double({ min: 15, max: 30, noNaN: true });
    fc.assert(
      fc.property(temperature, temperature, (one, other) => {
        const at = (of: number): number => percentAtTemperature(sheet, of) ?? NaN;
        expect(at(Math.max(one, other))).toBeLessThanOrEqual(at(Math.min(one, other)) + 1e-12);
        expect(at(one)).toBeGreaterThanOrEqual(1 - 1e-12);
        expect(at(one)).toBeLessThanOrEqual(2.5 + 1e-12);
      }),
    );
  });
});
