import { describe, expect, it } from '@jest/globals';
import { BASES, toKilograms, UNITS, weakestBasis, type Basis, type UnitCode } from '@hull-record/trade';
import fc from 'fast-check';

const all = { densityKgPerL: 1.1, arealMassKgPerM2: 0.45, pieceMassKg: 2.5 };

describe('amounts in kilograms', () => {
  it.each([
    [2, 'kg', 2],
    [1, 'lb', 0.45359237],
    [16, 'oz', 0.45359237],
    [10, 'L', 11],
    [500, 'mL', 0.55],
    [1, 'usgal', 4.1639529624],
    [10, 'm2', 4.5],
    [1, 'yd2', 0.376257312],
    [4, 'pc', 10],
    [0, 'kg', 0],
    [-3, 'kg', -3],
  ] as const)('%d %s of the material is %d kg', (quantity, unit, kg) => {
    expect(toKilograms(quantity, unit, all)).toEqual({ kg: expect.closeTo(kg, 12) });
  });

  it.each([
    ['L', 'density'],
    ['m2', 'areal mass'],
    ['pc', 'piece mass'],
  ] as const)('an amount in %s needs the %s of the material', (unit, missing) => {
    expect(toKilograms(1, unit, {})).toEqual({ missing });
    const worthless = { densityKgPerL: 0, arealMassKgPerM2: -1, pieceMassKg: NaN };
    expect(toKilograms(1, unit, worthless)).toEqual({ missing });
  });

  it('a mass needs no conversion', () => {
    expect(toKilograms(5, 'g', {})).toEqual({ kg: 0.005 });
  });

  it.each(['C', 'mm', 'min', 'bar', 'Barcol', '%', 'g/m2'] as const)('something in %s is not an amount', (unit) => {
    expect(toKilograms(1, unit, all)).toEqual({ missing: 'not an amount' });
  });

  it.each([NaN, Infinity, -Infinity])('%d is not an amount', (quantity) => {
    expect(toKilograms(quantity, 'kg', all)).toEqual({ missing: 'not an amount' });
  });

  it('more of a material is more kilograms', () => {
    const units = (Object.keys(UNITS) as UnitCode[]).filter((unit) => 'kg' in toKilograms(1, unit, all));
    fc.assert(
      fc.property(fc.integer(), fc.integer({ min: 1 }), fc.constantFrom(...units), (quantity, more, unit) => {
        const [less, greater] = [toKilograms(quantity, unit, all), toKilograms(quantity + more, unit, all)];
        if (!('kg' in less) || !('kg' in greater)) throw new Error(`${unit} gave no kilograms`);
        expect(greater.kg).toBeGreaterThan(less.kg);
      }),
    );
  });
});

describe('the basis a figure is printed with', () => {
  it.each([
    [['weighed', 'weighed'], 'weighed'],
    [['weighed', 'metered'], 'metered'],
    [['apportioned', 'weighed', 'metered'], 'apportioned'],
    [['as scheduled', 'apportioned'], 'as scheduled'],
    [[], 'as scheduled'],
  ] as const)('%j is known as %s', (bases, weakest) => {
    expect(weakestBasis(bases)).toBe(weakest);
  });

  it('a longer path is never known better, and order does not matter', () => {
    const path = fc.array(fc.constantFrom<Basis>(...BASES), { minLength: 1 });
    fc.assert(
      fc.property(path, path, (first, second) => {
        const joined = weakestBasis([...first, ...second]);
        expect(BASES.indexOf(joined)).toBeGreaterThanOrEqual(BASES.indexOf(weakestBasis(first)));
        expect(joined).toBe(weakestBasis([weakestBasis(second), weakestBasis(first)]));
      }),
    );
  });
});
