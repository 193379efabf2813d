import { describe, expect, it } from '@jest/globals';
import * as fc from 'fast-check';
import { parseQuery, texts, writeQuery } from '../../../apps/web/src/app/search-texts.js';
import { numbersIn } from '../../../apps/web/src/search/numbers-in.js';

describe('the query of an address', () => {
  it('comes back as it was written, also a number of digits alone', () => {
    const value = fc.string({ minLength: 1, unit: 'grapheme' });
    fc.assert(
      fc.property(
        fc.dictionary(fc.constantFrom('search', 'state', 'least'), value, { noNullPrototype: true }),
        (values) => {
          expect(parseQuery(writeQuery(values))).toEqual(values);
        },
      ),
    );
    expect(parseQuery(writeQuery({ search: '86' }))).toEqual({ search: '86' });
  });

  it('leaves out what is empty, and what a page does not ask for', () => {
    expect(writeQuery({ search: '', state: undefined })).toBe('');
    expect(texts('search')({ search: 'x', other: 'y' })).toEqual({ search: 'x' });
    expect(texts('search')({ search: 7 })).toEqual({});
  });
});

describe('hull numbers in a text', () => {
  it('are parted by commas, semicolons and lines, each is taken once', () => {
    expect(numbersIn('86-1\n86-3, 86-2;86-1\n\n ')).toEqual(['86-1', '86-3', '86-2']);
  });
});
