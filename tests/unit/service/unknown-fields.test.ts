import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { unknownFields } from '../../../apps/service/src/platform/http/unknown-fields.js';
import { wholly } from '../../../apps/service/src/platform/http/validation.js';
import { InvalidRequest } from '../../../apps/service/src/platform/refusals.js';

const paths = (given: unknown, read: unknown) => unknownFields(given, read).map(({ path }) => path.join('/'));

describe('fields that a schema did not read', () => {
  it.each([
    ['none of them', { lot: 'G-1' }, { lot: 'G-1' }, []],
    ['one that is misspelled', { lot: 'G-1', lott: 'G-2' }, { lot: 'G-1' }, ['lott']],
    ['one within another', { amount: { value: 1, unti: 'kg' } }, { amount: { value: 1, unit: 'kg' } }, ['amount/unti']],
    [
      'one in a list',
      { used: [{ lot: 'A' }, { lot: 'B', of: 1 }] },
      { used: [{ lot: 'A' }, { lot: 'B' }] },
      ['used/1/of'],
    ],
    ['all of them, in their order', { b: 1, a: { c: 2 } }, {}, ['b', 'a']],
    ['none of what a schema adds', {}, { turn: 1 }, []],
    ['none within what it reads as something else', { at: { day: 1 } }, { at: new Date(0) }, []],
    ['none of text, numbers and nothing', 'text', 'text', []],
    ['none of nothing', null, null, []],
  ])('are %s', (_what, given, read, unknown) => {
    expect(paths(given, read)).toEqual(unknown);
  });

  it('are none of anything that is read as it is', () => {
    fc.assert(fc.property(fc.jsonValue(), (value) => void expect(paths(value, structuredClone(value))).toEqual([])));
  });

  it('are each one that is taken away, wherever it is', () => {
    const value = fc.dictionary(
      fc.string({ minLength: 1 }),
      fc.array(fc.dictionary(fc.string({ minLength: 1 }), fc.jsonValue())),
    );
    fc.assert(
      fc.property(value, fc.string({ minLength: 1 }), (read, surplus) => {
        const found = Object.entries(read).flatMap(([name, list]) =>
          list.flatMap((each, i) => (Object.hasOwn(each, surplus) ? [] : [`${name}/${i}/${surplus}`])),
        );
        const given = Object.fromEntries(
          Object.entries(read).map(([name, list]) => [name, list.map((each) => ({ [surplus]: 1, ...each }))]),
        );
        expect(paths(given, read)).toEqual(found);
      }),
    );
  });

  it('are named up to twenty, however many there are', () => {
    const given = Object.fromEntries(Array.from({ length: 50_000 }, (_, i) => [`f${i}`, 1]));
    let refusal: unknown = null;
    try {
      wholly(given, {});
    } catch (error) {
      refusal = error;
    }
    expect(refusal).toBeInstanceOf(InvalidRequest);
    expect((refusal as InvalidRequest).errors.map(({ pointer }) => pointer)).toEqual(
      Array.from({ length: 20 }, (_, i) => `/f${i}`),
    );
  });
});
