import { describe, expect, it } from '@jest/globals';
import { dimensionOf, fromSi, isUnit, toSi, UNITS, type UnitCode } from '@hull-record/trade';
import fc from 'fast-check';

const codes = Object.keys(UNITS) as UnitCode[];
const anyUnit = fc.constantFrom(...codes);
const anyValue = fc.integer({ min: -1e9, max: 1e9 }).map((thousandths) => thousandths / 1000);

describe('units', () => {
  it.each(['toString', 'MIL', 'oz/m2', '', 'constructor', 'µm'])('%s is no unit', (code) => {
    expect(isUnit(code)).toBe(false);
  });

  it.each(codes)('%s is a unit', (code) => {
    expect(isUnit(code)).toBe(true);
    expect(dimensionOf(code)).toBe(UNITS[code].dimension);
  });

  it.each([
    ['m', 'length'],
    ['oz', 'mass'],
    ['oz/ft2', 'arealMass'],
    ['ft2', 'area'],
    ['usgal', 'volume'],
    ['F', 'temperature'],
    ['d', 'time'],
    ['mbar', 'pressure'],
    ['Barcol', 'hardness'],
    ['pc', 'count'],
    ['%', 'ratio'],
    ['1', 'ratio'],
  ] as const)('%s measures %s', (code, dimension) => {
    expect(dimensionOf(code)).toBe(dimension);
  });

  it.each([
    [0, 'C', 273.15],
    [32, 'F', 273.15],
    [1, 'h', 3600],
    [1, 'd', 86400],
    [1, 'bar', 100000],
    [1013.25, 'mbar', 101325],
    [50, '%', 0.5],
    [0.5, '1', 0.5],
    [40, 'Barcol', 40],
    [12, 'pc', 12],
    [1, 't', 1000],
    [1, 'ft', 0.3048],
  ] as const)('%d %s is %d in SI', (value, unit, si) => {
    expect(toSi(value, unit)).toBeCloseTo(si, 9);
  });

  it('a value comes back from SI within a few units in the last place', () => {
    fc.assert(
      fc.property(anyValue, anyUnit, (value, unit) => {
        // A temperature passes through kelvin, where a small value loses what the offset outweighs.
        const scale = Math.abs(value) + (UNITS[unit].offset ?? 0);
        expect(Math.abs(fromSi(toSi(value, unit), unit) - value)).toBeLessThanOrEqual(scale * 4 * Number.EPSILON);
      }),
    );
  });

  it('more in a unit is more in SI', () => {
    fc.assert(
      fc.property(fc.integer(), fc.integer({ min: 1 }), anyUnit, (value, step, unit) => {
        expect(toSi(value + step, unit)).toBeGreaterThan(toSi(value, unit));
      }),
    );
  });
});
