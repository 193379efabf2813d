import { describe, expect, it } from '@jest/globals';
import * as fc from 'fast-check';
import { en } from '../../../apps/web/src/language/en.js';
import { es } from '../../../apps/web/src/language/es.js';
import { readPreferences, type Preferences } from '../../../apps/web/src/preferences/preferences.js';
import { wordsOf } from '../../../apps/web/src/words/words.js';

const first = readPreferences(null, ['en']);
const words = (chosen: Partial<Preferences> = {}) =>
  wordsOf({ ...first, ...chosen }, chosen.language === 'es' ? es : en, 'America/New_York');

// By definition: the inch is 25.4 mm, so a mil 25.4 um; the pound 0.45359237 kg (international yard and pound, 1959);
// t/F = 1.8 t/C + 32 (NIST SP 811, B.8).
describe('a reading', () => {
  it.each([
    ['as entered, in mil with micrometres beside it', {}, ['16', '18', 'mil'], '16–18 mil (406–457 µm)'],
    ['in the chosen micrometres, with what was entered', { film: 'um' }, ['16', '18', 'mil'], '406–457 µm (16–18 mil)'],
    ['in the chosen mil, when it was entered in it', { film: 'mil' }, ['16', '18', 'mil'], '16–18 mil (406–457 µm)'],
    ['in the chosen mil, when it was entered in micrometres', { film: 'mil' }, ['508', null, 'um'], '20 mil (508 µm)'],
    ['of a thickness in millimetres stays', { film: 'mil' }, ['1.42', null, 'mm'], '1.42 mm'],
    ['in Fahrenheit', { temperature: 'F' }, ['21.5', null, 'C'], '70.7 °F (21.5 °C)'],
    ['in Celsius, when it was entered in it', { temperature: 'C' }, ['21.5', null, 'C'], '21.5 °C'],
    ['in pounds', { mass: 'lb' }, ['1000', null, 'kg'], '2\u202f205 lb (1000 kg)'],
    ['without the zeros of a decimal', {}, ['36.00', null, 'Barcol'], '36 Barcol'],
  ] as const)('%s', (_, chosen, [value, below, unit], said) => {
    expect(words(chosen).reading(value, below, unit)).toBe(said);
  });
});

describe('limits', () => {
  it.each([
    [{ min: 16, max: 20, unit: 'mil' }, {}, 'limit 16 to 20 mil'],
    [{ min: 16, max: 20, unit: 'mil' }, { film: 'um' }, 'limit 406 to 508 µm (16 to 20 mil)'],
    [{ min: 36, unit: 'Barcol' }, {}, 'limit at least 36 Barcol'],
    [{ max: 30, unit: 'C' }, { temperature: 'F' }, 'limit at most 86 °F (at most 30 °C)'],
  ] as const)('%j, chosen %j', (limits, chosen, said) => {
    expect(words(chosen).limits(limits)).toBe(said);
  });
});

describe('an amount', () => {
  const sheet = { quantity: '70.6', unit: 'm2', basis: 'weighed', kg: 21.18 };
  it.each([
    [{ quantity: '18.000', unit: 'kg', basis: 'weighed', kg: 18 }, {}, '18 kg'],
    [{ quantity: '18.000', unit: 'kg', basis: 'weighed', kg: 18 }, { mass: 'lb' }, '18 kg, that is 39.68 lb'],
    [{ quantity: '40', unit: 'lb', basis: 'weighed', kg: 18.1436948 }, {}, '40 lb, that is 18.14 kg'],
    [{ quantity: '40', unit: 'lb', basis: 'weighed', kg: 18.1436948 }, { mass: 'lb' }, '40 lb'],
    [sheet, {}, '70.6 m², that is 21.18 kg'],
    [sheet, { language: 'es' }, '70,6 m², es decir 21,18 kg'],
  ] as const)('%j, chosen %j', (amount, chosen, said) => {
    expect(words(chosen).amount(amount)).toBe(said);
  });
});

describe('a share', () => {
  it('never reads as the whole when it is not', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1 - 1e-8, noNaN: true }), (share) => {
        expect(words().percent(share)).not.toBe('100 %');
      }),
    );
    expect([words().percent(1), words().percent(0.99999)]).toEqual(['100 %', 'just under 100 %']);
  });
});

describe('a number', () => {
  it('has its decimal mark and its groups by language', () => {
    expect([words().figure(1234.5, 5), words({ language: 'es' }).figure(1234.5, 5)]).toEqual([
      '1\u202f234.5',
      '1\u202f234,5',
    ]);
  });

  it('is not rounded before the decimal mark', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999_999_999 }), (value) => {
        expect(words().figure(value, 3).replaceAll('\u202f', '')).toBe(String(value));
      }),
    );
  });
});
