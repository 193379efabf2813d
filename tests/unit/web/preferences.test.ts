import { describe, expect, it } from '@jest/globals';
import * as fc from 'fast-check';
import { firstSpoken } from '../../../apps/web/src/language/language.js';
import { CHOICES, readPreferences } from '../../../apps/web/src/preferences/preferences.js';

describe('the language at first', () => {
  it.each([
    [['es-MX', 'en'], 'es'],
    [['fr-CA', 'es-US'], 'es'],
    [['EN-us'], 'en'],
    [['de'], 'en'],
    [[], 'en'],
  ])('of a browser that wishes %j is %s', (wished, language) => {
    expect(firstSpoken(wished)).toBe(language);
  });
});

describe('preferences', () => {
  const atFirst = { language: 'en', theme: 'system', film: 'recorded', temperature: 'recorded', mass: 'kg' };

  it('are kept as they were chosen', () => {
    const chosen = { language: 'es', theme: 'glare', film: 'um', temperature: 'F', mass: 'lb' };
    expect(readPreferences(JSON.stringify(chosen), ['en'])).toEqual(chosen);
  });

  it.each(['', 'null', '7', '[]', '{"theme":"neon","mass":7,"language":"xx"}', '{"theme":'])(
    'are as at first where %j was kept',
    (kept) => {
      expect(readPreferences(kept, ['en'])).toEqual(atFirst);
    },
  );

  it('are always ones that can be chosen, whatever was kept', () => {
    fc.assert(
      fc.property(fc.json(), (kept) => {
        const { theme, film, temperature, mass } = readPreferences(kept, ['en']);
        expect(CHOICES.theme).toContain(theme);
        expect(CHOICES.film).toContain(film);
        expect(CHOICES.temperature).toContain(temperature);
        expect(CHOICES.mass).toContain(mass);
      }),
    );
  });
});
