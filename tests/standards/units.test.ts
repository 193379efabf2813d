import { describe, expect, it } from '@jest/globals';
import { fromSi, toKilograms, toSi, type UnitCode } from '@hull-record/trade';
import { publishedCases } from '../support/published-cases.js';

publishedCases('units');

const INCH = 'inch is 25.4 mm exactly';
const MAT = 'mat is sold by oz/ft2, woven and stitched by oz/yd2; derived from exact units';

const convert = (value: number, from: UnitCode, to: UnitCode): number => fromSi(toSi(value, from), to);

describe('published pairs of units', () => {
  it.each([
    [1, 'mil', 25.4, 'um', 12, INCH],
    [0.5, 'mil', 12.7, 'um', 12, INCH],
    [16, 'mil', 406.4, 'um', 10, INCH],
    [18, 'mil', 457.2, 'um', 10, INCH],
    [20, 'mil', 508, 'um', 10, INCH],
    [22, 'mil', 558.8, 'um', 10, INCH],
    [25, 'mil', 635, 'um', 10, INCH],
    [450, 'um', 17.717, 'mil', 3, INCH],
    [500, 'um', 19.685, 'mil', 3, INCH],
    [508, 'um', 20, 'mil', 12, INCH],
    [15, 'mil', 381, 'um', 10, 'compositesmanufacturingmagazine.com 2016/11'],
    [35, 'mil', 889, 'um', 10, 'compositesmanufacturingmagazine.com 2016/11'],
    [1, 'lb', 0.45359237, 'kg', 15, 'international pound, exact'],
    [1, 'oz', 28.349523125, 'g', 12, 'pound / 16, exact'],
    [1, 'ft2', 0.09290304, 'm2', 15, 'exact'],
    [1, 'yd2', 0.83612736, 'm2', 15, 'exact'],
    [1, 'yd2', 9, 'ft2', 12, 'exact'],
    [1, 'usgal', 3.785411784, 'L', 12, 'US gallon is 231 cubic inches'],
    [1.5, 'oz/ft2', 457.7, 'g/m2', 1, MAT],
    [24, 'oz/yd2', 813.7, 'g/m2', 1, MAT],
    [77, 'F', 25, 'C', 10, 'exact'],
    [10.7, 'lb', 4.85344, 'kg', 5, 'international pound, exact'],
  ] as const)('%d %s is %d %s to %d decimals (%s)', (value, from, expected, to, digits, _source) => {
    expect(convert(value, from, to)).toBeCloseTo(expected, digits);
  });

  it('508 um is 20 mil and comes back without drift, as often as one likes (inch is 25.4 mm exactly)', () => {
    let um = 508;
    for (let trip = 0; trip < 1000; trip += 1) um = convert(convert(um, 'um', 'mil'), 'mil', 'um');
    expect(Math.abs(um - 508)).toBeLessThan(1e-9);
  });

  it('a gel coat of 10.7 to 11.0 lb a US gallon weighs 1.282 to 1.318 kg/L (gel coat data sheet of 10/03)', () => {
    const kgPerL = (lb: number): number => toSi(lb, 'lb') / fromSi(toSi(1, 'usgal'), 'L');
    expect(kgPerL(10.7)).toBeCloseTo(1.282, 3);
    expect(kgPerL(11)).toBeCloseTo(1.318, 3);
  });

  it('1 kg over 1.6 m2 at 1.25 kg/L is 0.5 mm (UK supplier guide: 0.4 to 0.6 mm)', () => {
    const litres = 1 / 1.25;
    expect(toKilograms(litres, 'L', { densityKgPerL: 1.25 })).toEqual({ kg: expect.closeTo(1, 12) });
    expect(fromSi(toSi(litres, 'L') / toSi(1.6, 'm2'), 'mm')).toBeCloseTo(0.5, 12);
  });
});
