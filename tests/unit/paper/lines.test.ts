import fc from 'fast-check';
import { describe, expect, it } from '@jest/globals';
import { breakLines } from '../../../libs/paper/src/lines.js';
import { toUnits } from '../../../libs/paper/src/text-safe.js';
import type { Unit } from '../../../libs/paper/src/unit.js';

const ascii = (code: number): boolean => code >= 0x20 && code < 0x7f;
/** A tenth of a typewriter: each character is one wide. */
const measure = (units: readonly Unit[]): number => units.reduce((sum, { text }) => sum + text.length, 0);
const broken = (text: string, width: number): readonly string[] =>
  breakLines(toUnits(text, [ascii]), width, measure).map((line) => line.map((unit) => unit.text).join(''));

const wide = (code: number): boolean => code >= 0x2e80 && code < 0xffef;
const rightToLeft = (code: number): boolean => code >= 0x0590 && code < 0x0700;
const inAnyScript = (text: string, width: number): readonly string[] =>
  breakLines(toUnits(text, [ascii, wide, rightToLeft]), width, measure).map((line) =>
    line.map((unit) => unit.text).join(''),
  );

describe('lines of writing without spaces', () => {
  it.each([
    ['break between any two characters', '船体记录', 3, ['船体记', '录']],
    ['break beside Latin words, not inside them', '厚度ply船', 4, ['厚度', 'ply船']],
    ['never begin with a closing sign', '记录。完', 2, ['记', '录。', '完']],
    ['never end with an opening sign', '记「录」', 2, ['记', '「录', '」']],
    ['never begin with a small kana', 'カタッタ', 2, ['カ', 'タッ', 'タ']],
    ['keep spaces that are there', '船体 记录', 5, ['船体 记录']],
  ])('%s', (_name, text, width, expected) => {
    expect(inAnyScript(text, width)).toEqual(expected);
  });

  it('stay in the order of writing where they run from right to left', () => {
    expect(inAnyScript('שלום עולם 12', 8)).toEqual(['שלום', 'עולם 12']);
  });
});

describe('lines', () => {
  it.each([
    ['break at spaces', 'two plies of mat', 8, ['two', 'plies of', 'mat']],
    ['never part a figure from its percent sign', 'under 0.1 % of it', 9, ['under', '0.1 % of', 'it']],
    ['part them in a column too narrow for both', '12 % x', 2, ['12', '%', 'x']],
    ['break before a percent sign of no figure', 'about % x', 6, ['about', '% x']],
    ['break a word that is longer than a line', 'abcdefgh ij', 3, ['abc', 'def', 'gh', 'ij']],
    ['break between code points in words, not inside', 'x中文', 9, ['x[U+4E2D]', '[U+6587]']],
    ['keep a space before a code point in words', 'a 中', 20, ['a [U+4E2D]']],
    ['end where the text ends a line', 'a\n\nb', 5, ['a', '', 'b']],
    ['take many spaces as one', 'a    b', 5, ['a b']],
    ['are one for an empty text', '', 5, ['']],
  ])('%s', (_name, text, width, expected) => {
    expect(broken(text, width)).toEqual(expected);
  });

  it('lose nothing and are never wider than the column unless a single unit is', () => {
    const text = fc.array(fc.constantFrom('ply', 'resin', ' ', '  ', 'x'.repeat(30), '中', '。', '「', 'שלום', '\n'), {
      maxLength: 30,
    });
    fc.assert(
      fc.property(text, fc.integer({ min: 1, max: 25 }), (parts, width) => {
        const units = toUnits(parts.join(''), width % 2 === 0 ? [ascii] : [ascii, wide, rightToLeft]);
        const lines = breakLines(units, width, measure);
        const solid = (list: readonly Unit[]): string =>
          list
            .map((unit) => unit.text)
            .join('')
            .replaceAll(' ', '');
        expect(solid(lines.flat())).toBe(solid(units));
        for (const line of lines) expect(line.length <= 1 || measure(line) <= width).toBe(true);
      }),
    );
  });
});
