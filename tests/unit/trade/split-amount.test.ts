import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { splitAmount, splitByCatalyst, SplitImpossible } from '@hull-record/trade';

/** A plain decimal in millionths, exactly. */
const millionths = (text: string): bigint => {
  const [whole = '0', fraction = ''] = text.split('.');
  return BigInt(whole + fraction.padEnd(6, '0'));
};

const sum = (parts: readonly string[]): bigint => parts.reduce((total, part) => total + millionths(part), 0n);
const quantity = fc.integer({ min: 100_000, max: 1_000_000_000 }).map((grams) => String(grams / 1000));
const weights = fc.array(fc.double({ min: 0.5, max: 50, noNaN: true }), { minLength: 1, maxLength: 40 });

describe('an amount split over weights', () => {
  it('a drop of 20 kg over three equal parts leaves nothing over', () => {
    expect(splitAmount('20', [1, 1, 1])).toEqual(['6.667', '6.667', '6.666']);
  });

  it('goes by area', () => {
    expect(splitAmount('90', [10, 20, 15])).toEqual(['20', '40', '30']);
  });

  it('sums exactly to the amount, each part within one last place of its due', () => {
    fc.assert(
      fc.property(quantity, weights, (amount, by) => {
        const parts = splitAmount(amount, by);
        const total = by.reduce((all, each) => all + each, 0);
        expect(sum(parts)).toBe(millionths(amount));
        parts.forEach((part, i) => {
          expect(Math.abs(Number(part) - (Number(amount) * (by[i] ?? 0)) / total)).toBeLessThan(0.00101);
        });
      }),
    );
  });

  it('has an end, and is right, whatever the weights are', () => {
    expect(splitAmount('999999999999.999999999', [1e308, 1e308])).toEqual(['500000000000', '499999999999.999999999']);
    expect(splitAmount('9', [1.5e308, 0.75e308])).toEqual(['6', '3']);
    expect(() => splitAmount('9', [1.5e308, 1e300])).toThrow(SplitImpossible);
  });

  it.each([[[]], [[0, 1]], [[NaN]], [[Infinity, 1]], [[1, 1e9]]])('over %p is refused', (by) => {
    expect(() => splitAmount('1', by)).toThrow(SplitImpossible);
  });
});

describe('resin and catalyst of a mass sprayed', () => {
  it('51 kg at 2 % of the resin are 50 kg and 1 kg', () => {
    expect(splitByCatalyst('51', 2)).toEqual({ resin: '50', catalyst: '1' });
  });

  it('sum exactly to the mass, the catalyst at its per cent of the resin', () => {
    fc.assert(
      fc.property(quantity, fc.double({ min: 0.5, max: 5, noNaN: true }), (mass, percent) => {
        const { resin, catalyst } = splitByCatalyst(mass, percent);
        expect(sum([resin, catalyst])).toBe(millionths(mass));
        expect(Math.abs((Number(catalyst) / Number(resin)) * 100 - percent)).toBeLessThan(1e-3);
      }),
    );
  });

  it.each([0, 100, NaN, -1])('at %d %% is refused', (percent) => {
    expect(() => splitByCatalyst('10', percent)).toThrow(SplitImpossible);
  });
});
