import { describe, expect, it } from '@jest/globals';
import { wordSupplierLots } from '../../../apps/service/src/records/word-used.js';
import { amount, inline, limits, place, reading } from '../../../apps/service/src/records/word-values.js';

const lot = (supplierLot: string, fraction: number) => ({ supplierLot, material: 'Vinyl ester resin', fraction });

describe('The suppliers’ lots behind a lot', () => {
  it.each([
    ['one that is all', [lot('A', 1)], ['A (100 %)']],
    ['two', [lot('A', 0.81), lot('B', 0.19)], ['A (81 %)', 'B (19 %)']],
    ['one of just a thousandth by name', [lot('A', 0.999), lot('B', 0.001)], ['A (99.9 %)', 'B (0.1 %)']],
    [
      'those below a thousandth as a number',
      [lot('A', 0.9984), lot('B', 0.0009), lot('C', 0.0007)],
      ['A (99.8 %)', '2 earlier lots (0.2 %)'],
    ],
    [
      'nearly all not as all',
      [lot('A', 0.99999), lot('B', 0.00001)],
      ['A (over 99.9 %)', '1 earlier lot (under 0.1 %)'],
    ],
    ['none', [], []],
  ])('print %s', (_, lots, words) => {
    expect(wordSupplierLots(lots)).toEqual(words);
  });
});

describe('Figures', () => {
  it.each([
    [{ quantity: '18.50', unit: 'kg', kg: 18.5 }, '18.50 kg'],
    [{ quantity: '44.1', unit: 'lb', kg: 20.003423517 }, '44.1 lb (20.003 kg)'],
    [{ quantity: '0.4', unit: 'g', kg: 0.0004 }, '0.4 g (0.0004 kg)'],
    [{ quantity: '12', unit: 'm2', kg: 5.4 }, '12 m² (5.4 kg)'],
  ])('an amount prints as entered, with kilograms beside another unit: %j', (entered, words) => {
    expect(inline(amount(entered))).toBe(words);
  });

  it.each([
    [{ value: '16', below: '18', unit: 'mil' }, '16 to under 18 mil (406 to under 457 µm)'],
    [{ value: '450', below: null, unit: 'um' }, '450 µm'],
    [{ value: '0.5', below: null, unit: 'in' }, '0.5 in (12.7 mm)'],
    [{ value: '42', below: null, unit: 'Barcol' }, '42 Barcol'],
  ])('a reading prints as entered, a length also in metric: %j', (entered, words) => {
    expect(inline(reading(entered))).toBe(words);
  });

  it.each([
    [{ min: 16, max: 20, unit: 'mil' }, '16 to 20 mil (406 to 508 µm)'],
    [{ min: 36, unit: 'Barcol' }, 'at least 36 Barcol'],
    [{ max: 0, unit: 'C' }, 'at most 0 °C'],
    [{ unit: 'C' }, 'none'],
  ])('limits print what they limit: %j', (set, words) => {
    expect(limits(set)).toBe(words);
  });

  it('places print by side and the two distances that fix them', () => {
    expect(place({ surface: 'shell', side: 'port', fromTransomMm: 3_420, girthMm: 950 })).toBe(
      'port, 3.42\u00a0m from the transom, 0.95\u00a0m along the skin',
    );
    expect(place({ surface: 'transom', side: 'starboard', offsetMm: 300, heightMm: 120 })).toBe(
      'transom, starboard, 0.30\u00a0m off the centreline, 0.12\u00a0m up',
    );
  });
});
