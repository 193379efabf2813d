import fc from 'fast-check';
import { describe, expect, it } from '@jest/globals';
import { toUnits } from '../../../libs/paper/src/text-safe.js';
import type { Unit } from '../../../libs/paper/src/unit.js';

const latin = (code: number): boolean => code >= 0x20 && code < 0x100;
const extended = (code: number): boolean => code >= 0x100 && code < 0x180;
const units = (text: string): readonly Unit[] => toUnits(text, [latin, extended]);
const printed = (text: string): string =>
  units(text)
    .map((unit) => unit.text)
    .join('');

describe('text made safe for fonts', () => {
  it.each([
    ['a Chinese character', '中', '[U+4E2D]'],
    ['a character beyond the first plane', '🚤', '[U+1F6A4]'],
    ['half a surrogate pair', '\ud800', '[U+D800]'],
    ['a bell', 'a\u0007b', 'a[U+0007]b'],
    ['an override of the writing direction', 'lot \u202e123', 'lot [U+202E]123'],
    ['a zero width space', 'a\u200bb', 'a[U+200B]b'],
    ['a letter with a separate accent that exists in one piece', 'e\u0301', 'é'],
    ['a letter with an accent that no font has', 'q\u0301', 'q[U+0301]'],
    ['a letter of the second font', 'Łódź', 'Łódź'],
    ['a tab and a wide space', 'a\tb\u3000c', 'a b c'],
  ])('%s prints as something', (_name, text, expected) => {
    expect(printed(text)).toBe(expected);
  });

  it('takes the first font that has the character', () => {
    expect(units('aŁ中').map(({ font }) => font)).toEqual([0, 1, 0]);
  });

  it('takes every kind of line end as one', () => {
    expect(units('a\r\nb\nc\u2028d').filter(({ kind }) => kind === 'line end')).toHaveLength(3);
  });

  it('never leaves a character out', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const shown = units(text);
        expect(shown.length > 0).toBe(text.length > 0);
        expect(shown.every((unit) => unit.text !== '' || unit.kind === 'line end')).toBe(true);
        const composed = text.normalize('NFC');
        for (const character of text.match(/[A-Za-z0-9]/g) ?? []) {
          if (composed.includes(character)) expect(printed(text)).toContain(character);
        }
      }),
    );
  });
});
