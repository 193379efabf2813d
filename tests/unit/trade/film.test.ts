import { describe, expect, it } from '@jest/globals';
import { dryFilm, filmFromKgUm, filmKg, judgeFilmFit, NumberInvalid, wetFilm } from '@hull-record/trade';
import fc from 'fast-check';

/** What the library says of a number that will not do. */
const wrong = (name: string, value: number, must: string): NumberInvalid => new NumberInvalid(name, value, must);
const [FINITE, POSITIVE, NOT_NEGATIVE] = ['a finite number', 'more than zero', 'zero or more'];

const positive = fc.double({ min: 0.01, max: 500, noNaN: true });

describe('the kilograms in a wet film', () => {
  it.each([
    [1, 1, 1, 0.001],
    [10, 500, 1.2, 6],
    [2.5, 400, 1, 1],
    [10, 0, 1.2, 0],
  ])('%d m2 of %d um at %d kg/L take %d kg, without losses', (areaM2, filmUm, density, kg) => {
    expect(filmKg(areaM2, filmUm, density)).toBeCloseTo(kg, 12);
    expect(filmFromKgUm(kg, areaM2, density)).toBeCloseTo(filmUm, 9);
  });

  it.each([
    [0, 500, 1.2, wrong('area', 0, POSITIVE)],
    [-1, 500, 1.2, wrong('area', -1, POSITIVE)],
    [10, -1, 1.2, wrong('film', -1, NOT_NEGATIVE)],
    [10, NaN, 1.2, wrong('film', NaN, FINITE)],
    [10, 500, 0, wrong('density', 0, POSITIVE)],
  ])('are none for %d m2 of %d um at %d kg/L', (areaM2, filmUm, density, error) => {
    expect(() => filmKg(areaM2, filmUm, density)).toThrow(error);
  });

  it.each([
    [-1, 10, 1.2, wrong('mass', -1, NOT_NEGATIVE)],
    [6, 0, 1.2, wrong('area', 0, POSITIVE)],
    [6, 10, 0, wrong('density', 0, POSITIVE)],
    [Infinity, 10, 1.2, wrong('mass', Infinity, FINITE)],
  ])('%d kg on %d m2 at %d kg/L make no film', (kg, areaM2, density, error) => {
    expect(() => filmFromKgUm(kg, areaM2, density)).toThrow(error);
  });

  it('make that film again, and are those of the parts of an area', () => {
    fc.assert(
      fc.property(positive, positive, positive, positive, (areaM2, more, filmUm, density) => {
        expect(filmFromKgUm(filmKg(areaM2, filmUm, density), areaM2, density) / filmUm).toBeCloseTo(1, 9);
        const parts = filmKg(areaM2, filmUm, density) + filmKg(more, filmUm, density);
        expect(parts / filmKg(areaM2 + more, filmUm, density)).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('whether the kilograms used fit the film that was measured', () => {
  /** A film of 10 kg on 20 m2. */
  const made = { areaM2: 20, filmUm: 500, densityKgPerL: 1, usedKg: 10, lossAllowance: 0.25 };

  it.each([
    [10, 0, 'fits'],
    [9.2, -0.086957, 'fits'],
    [9, -0.111111, 'less used than the film holds'],
    [5, -1, 'less used than the film holds'],
    [12.5, 0.2, 'fits'],
    [14.5, 0.310345, 'fits'],
    [15, 0.333333, 'more used than the film holds'],
    [40, 0.75, 'more used than the film holds'],
  ])('of %d kg used for a film of 10 kg, a part of %d is lost: %s', (usedKg, lost, verdict) => {
    expect(judgeFilmFit({ ...made, usedKg })).toEqual({
      expectedKg: expect.closeTo(10, 12),
      lostFraction: expect.closeTo(lost, 6),
      verdict,
      text: `${usedKg} kg were used; 10.00 kg are in a film of 500 um on 20 m2.`,
    });
  });

  it.each([
    [1100, 'fits'],
    [1101, 'less used than the film holds'],
    [900, 'fits'],
    [899, 'more used than the film holds'],
  ])('ten per cent either way pass for the gauge: 10 kg on 10 m2 at %d um, losing nothing, %s', (filmUm, verdict) => {
    expect(judgeFilmFit({ ...made, areaM2: 10, filmUm, lossAllowance: 0 }).verdict).toBe(verdict);
  });

  it('the text has kilograms to a hundredth and the film to a micrometre', () => {
    const text = '8.25 kg were used; 9.31 kg are in a film of 467 um on 17.5 m2.';
    const measured = { areaM2: 17.5, filmUm: 466.7, densityKgPerL: 1.14, usedKg: 8.25, lossAllowance: 0 };
    expect(judgeFilmFit(measured).text).toBe(text);
  });

  it.each([
    ['no area', { areaM2: 0 }],
    ['no film', { filmUm: 0 }],
    ['no density', { densityKgPerL: 0 }],
    ['nothing used', { usedKg: 0 }],
    ['less than nothing used', { usedKg: -1 }],
    ['an area that is no number', { areaM2: NaN }],
    ['an endless area', { areaM2: Infinity }],
    ['an endless film', { filmUm: Infinity }],
    ['endless use', { usedKg: Infinity }],
    ['an allowance below zero', { lossAllowance: -0.1 }],
    ['an allowance of all', { lossAllowance: 1 }],
    ['an allowance of more than all', { lossAllowance: 1.5 }],
    ['an allowance that is no number', { lossAllowance: NaN }],
  ])('cannot be judged with %s', (_, change) => {
    expect(judgeFilmFit({ ...made, ...change })).toEqual({
      expectedKg: 0,
      lostFraction: 0,
      verdict: 'cannot be judged',
      text: 'Area, film, density and kilograms must be more than zero, and the loss allowance below 1.',
    });
  });

  it('more used is never judged as less, and more allowance never as more lost', () => {
    const order = ['less used than the film holds', 'fits', 'more used than the film holds'];
    const part = fc.double({ min: 0, max: 0.95, noNaN: true });
    fc.assert(
      fc.property(positive, positive, part, part, (usedKg, more, lossAllowance, other) => {
        const rank = (change: object): number =>
          order.indexOf(judgeFilmFit({ ...made, usedKg, lossAllowance, ...change }).verdict);
        expect(rank({})).toBeLessThanOrEqual(rank({ usedKg: usedKg + more }));
        const [least, most] = [Math.min(lossAllowance, other), Math.max(lossAllowance, other)];
        expect(rank({ lossAllowance: most })).toBeLessThanOrEqual(rank({ lossAllowance: least }));
      }),
    );
  });
});

describe('the film of a coating that dries', () => {
  it.each([
    [100, 60, 60],
    [250, 40, 100],
    [250, 100, 250],
    [0, 60, 0],
  ])('%d wet at %d %% of solids is %d dry', (wet, solids, dry) => {
    expect(dryFilm(wet, solids)).toBeCloseTo(dry, 12);
    expect(wetFilm(dry, solids)).toBeCloseTo(wet, 12);
  });

  it('is thicker wet by what it was thinned: 60 dry at 60 % with 10 % of thinner are 110 wet', () => {
    expect(wetFilm(60, 60, 10)).toBeCloseTo(110, 12);
    expect(wetFilm(60, 60, 0)).toBeCloseTo(100, 12);
  });

  it.each([
    [-1, 60, wrong('wet film', -1, NOT_NEGATIVE)],
    [100, 0, wrong('volume solids', 0, POSITIVE)],
    [100, 100.1, wrong('volume solids', 100.1, 'at most 100 per cent')],
    [100, NaN, wrong('volume solids', NaN, FINITE)],
  ])('%d wet at %d %% of solids have no dry film', (wet, solids, error) => {
    expect(() => dryFilm(wet, solids)).toThrow(error);
  });

  it.each([
    [-1, 60, 0, wrong('dry film', -1, NOT_NEGATIVE)],
    [60, 0, 0, wrong('volume solids', 0, POSITIVE)],
    [60, 100.1, 0, wrong('volume solids', 100.1, 'at most 100 per cent')],
    [60, 60, -1, wrong('thinner', -1, NOT_NEGATIVE)],
  ])('%d dry at %d %% of solids with %d %% of thinner have no wet film', (dry, solids, thinner, error) => {
    expect(() => wetFilm(dry, solids, thinner)).toThrow(error);
  });

  it('dries to what was wanted, and is never thicker dry than wet', () => {
    fc.assert(
      fc.property(positive, fc.double({ min: 1, max: 100, noNaN: true }), (dry, solids) => {
        const wet = wetFilm(dry, solids);
        expect(dryFilm(wet, solids) / dry).toBeCloseTo(1, 9);
        expect(wet).toBeGreaterThanOrEqual(dry - 1e-9);
      }),
    );
  });
});
