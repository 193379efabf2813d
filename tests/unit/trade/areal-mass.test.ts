import { describe, expect, it } from '@jest/globals';
import { AREAL_MASS_UNITS, ArealMassAmbiguous, ArealMassUnitUnknown, readArealMassUnit } from '@hull-record/trade';
import fc from 'fast-check';

describe('the unit of an areal mass as people write it', () => {
  it.each([
    ['g/m2', 'g/m2'],
    ['g/m²', 'g/m2'],
    ['gsm', 'g/m2'],
    ['kg/m2', 'kg/m2'],
    ['kg/m²', 'kg/m2'],
    ['oz/ft2', 'oz/ft2'],
    ['oz/ft²', 'oz/ft2'],
    ['oz/sq ft', 'oz/ft2'],
    ['oz/yd2', 'oz/yd2'],
    ['oz/yd²', 'oz/yd2'],
    ['oz/sq yd', 'oz/yd2'],
    ['  GSM ', 'g/m2'],
    ['Oz/Yd2', 'oz/yd2'],
  ])('"%s" is %s', (text, unit) => {
    expect(readArealMassUnit(text)).toBe(unit);
  });

  it('there are four, each written as it is stored', () => {
    expect(AREAL_MASS_UNITS).toEqual(['g/m2', 'kg/m2', 'oz/ft2', 'oz/yd2']);
    expect(AREAL_MASS_UNITS.map(readArealMassUnit)).toEqual(AREAL_MASS_UNITS);
  });

  it.each(['oz', 'OZ', 'oz.', ' oz ', 'ounce', 'ounces', 'Ounces.'])(
    '"%s" may be one of two: which is asked',
    (text) => {
      expect(() => readArealMassUnit(text)).toThrow(ArealMassAmbiguous);
      expect(() => readArealMassUnit(text)).toThrow(
        expect.objectContaining({
          code: 'areal-mass-ambiguous',
          message: 'Which ounce: oz/ft2, as mat is sold, or oz/yd2, as cloth is?',
          data: { unit: text },
        }),
      );
    },
  );

  it.each(['lb/ft2', 'fl oz', 'floz', 'oz/m2', 'ozs', 'ounces per yard', 'kg', ''])('"%s" is no areal mass', (text) => {
    expect(() => readArealMassUnit(text)).toThrow(ArealMassUnitUnknown);
    expect(() => readArealMassUnit(text)).toThrow(
      expect.objectContaining({
        code: 'areal-mass-unit-unknown',
        message: `"${text}" is no areal mass: write g/m2, kg/m2, oz/ft2 or oz/yd2.`,
        data: { unit: text },
      }),
    );
  });

  it('capitals and spaces around it make no difference', () => {
    const space = fc.constantFrom('', ' ', '  ', '\t');
    fc.assert(
      fc.property(fc.constantFrom(...AREAL_MASS_UNITS), space, space, fc.boolean(), (unit, before, after, upper) => {
        expect(readArealMassUnit(before + (upper ? unit.toUpperCase() : unit) + after)).toBe(unit);
      }),
    );
  });
});
