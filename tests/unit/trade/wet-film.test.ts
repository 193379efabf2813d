import { describe, expect, it } from '@jest/globals';
import {
  coverageFt2PerUsGal,
  filmInterval,
  FilmIntervalInvalid,
  FilmNotPositive,
  onExampleGauge,
} from '@hull-record/trade';
import fc from 'fast-check';

describe('notches of a gauge', () => {
  it.each([
    [18, 16, 'mil', 'must be above'],
    [16, 16, 'mil', 'must be above'],
    [-1, 2, 'mil', '0 or more'],
    [NaN, 2, 'mil', 'must be numbers'],
    [16, Infinity, 'mil', 'must be numbers'],
    [16, 18, 'kg', 'not a unit of length'],
  ] as const)('last wet %d and next dry %d %s bound no film: %s', (lastWet, nextDry, unit, why) => {
    expect(() => filmInterval(lastWet, nextDry, unit)).toThrow(FilmIntervalInvalid);
    expect(() => filmInterval(lastWet, nextDry, unit)).toThrow(why);
  });

  it('an error names itself and carries what was entered', () => {
    const expected = { name: 'FilmIntervalInvalid', code: 'film-interval-invalid', data: { lastWet: 18, nextDry: 16 } };
    expect(() => filmInterval(18, 16, 'mil')).toThrow(expect.objectContaining({ name: expected.name }));
    expect(() => filmInterval(18, 16, 'mil')).toThrow(expect.objectContaining({ code: expected.code }));
    expect(() => filmInterval(18, 16, 'mil')).toThrow(
      expect.objectContaining({ data: expect.objectContaining(expected.data) }),
    );
  });

  it('a film that wets no notch lies between nothing and the first notch', () => {
    expect(filmInterval(0, 2, 'mil')).toMatchObject({ recorded: 0, low: 0, high: 2, lowUm: 0 });
  });

  it('the interval is never empty and keeps what was entered', () => {
    const notch = fc.integer({ min: 0, max: 200 });
    fc.assert(
      fc.property(notch, fc.integer({ min: 1, max: 50 }), (lastWet, step) => {
        const film = filmInterval(lastWet, lastWet + step, 'mil');
        expect([film.recorded, film.low, film.high]).toEqual([lastWet, lastWet, lastWet + step]);
        expect(film.highUm - film.lowUm).toBeCloseTo(step * 25.4, 6);
      }),
    );
  });
});

describe('readings that cannot be on a gauge', () => {
  it.each([
    [-2, 'mil'],
    [NaN, 'mil'],
    [Infinity, 'um'],
    [16, 'kg'],
  ] as const)('%d %s is on no gauge', (value, unit) => {
    expect(onExampleGauge(value, unit)).toBe(false);
  });

  it('a gauge that no film wetted reads 0', () => {
    expect(onExampleGauge(0, 'mil')).toBe(true);
  });

  it('inches are held to the mil steps and millimetres to the micrometre steps', () => {
    expect(onExampleGauge(0.016, 'in')).toBe(true);
    expect(onExampleGauge(0.017, 'in')).toBe(false);
    expect(onExampleGauge(0.45, 'mm')).toBe(true);
    expect(onExampleGauge(0.4572, 'mm')).toBe(false);
  });
});

describe('coverage', () => {
  it.each([0, -1, NaN, Infinity])('a film of %d mil covers no area', (mil) => {
    expect(() => coverageFt2PerUsGal(mil)).toThrow(FilmNotPositive);
  });

  it('a thicker film covers less', () => {
    const mil = fc.double({ min: 0.1, max: 200, noNaN: true });
    fc.assert(
      fc.property(mil, mil, (a, b) => {
        fc.pre(a < b);
        expect(coverageFt2PerUsGal(a)).toBeGreaterThanOrEqual(coverageFt2PerUsGal(b));
      }),
    );
  });
});
