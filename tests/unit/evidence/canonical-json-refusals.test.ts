import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { canonicalJson, NotCanonical, NotJson, readCanonicalJson } from '@hull-record/evidence';

const circle = (): unknown => {
  const value: Record<string, unknown> = {};
  value['self'] = value;
  return value;
};

const deep = (depth: number): string => '['.repeat(depth) + ']'.repeat(depth);

/** What JSON has no form for, each of which a lenient writer leaves out or writes as something else. */
const FORMLESS: readonly (readonly [string, unknown])[] = [
  ['a function', () => 1],
  ['a symbol', Symbol('s')],
  ['a map', new Map([['a', 1]])],
  ['a set', new Set([1])],
  ['bytes', new Uint8Array([1])],
  ['a pattern', /a/],
  ['a number in a box', Object(Number.NaN)],
];

describe('canonical JSON refuses', () => {
  it.each(FORMLESS)('%s, by itself, in a list and as a member', (_what, value) => {
    for (const given of [value, [value], { a: value }, { a: [{ b: value }] }])
      expect(() => canonicalJson(given)).toThrow(NotJson);
  });

  it('a hole in a list, and nothing at all in one', () => {
    expect(() => canonicalJson(Array(1))).toThrow(NotJson);
    expect(() => canonicalJson([undefined])).toThrow(NotJson);
  });

  it('a circle, and a value nested too deep to be written', () => {
    expect(() => canonicalJson(circle())).toThrow(NotJson);
    expect(() => canonicalJson(JSON.parse(deep(100_000)))).toThrow(NotJson);
  });

  it('neither a member that is undefined, which it leaves out, nor what says how it is written', () => {
    expect(canonicalJson({ a: undefined, b: 1 })).toBe('{"b":1}');
    expect(canonicalJson([new Date(0)])).toBe('["1970-01-01T00:00:00.000Z"]');
  });

  it('no shared part that is not a circle', () => {
    const part = { a: 1 };
    expect(canonicalJson([part, part])).toBe('[{"a":1},{"a":1}]');
  });
});

describe('reading canonical JSON', () => {
  it.each([
    ['a member named twice', '{"a":1,"a":1}'],
    ['a member named twice, once escaped', String.raw`{"a":1,"\u0061":1}`],
    ['members out of order', '{"b":1,"a":1}'],
    ['a space', '{"a": 1}'],
    ['a line ending', '{"a":1}\n'],
    ['a byte order mark', '\ufeff{"a":1}'],
    ['a number longer than a double', '9007199254740993'],
    ['a number that is infinite as a double', '1e999'],
    ['minus zero', '-0'],
    ['a number in another spelling', '1.0'],
    ['a letter escaped for no reason', String.raw`"\u0041"`],
    ['half of a surrogate pair', String.raw`"\ud83d"`],
    ['half of a surrogate pair as a name', String.raw`{"\ude00":1}`],
    ['what is not JSON', '{a:1}'],
    ['nothing', ''],
    ['brackets without end', deep(100_000)],
  ])('refuses %s', (_what, text) => {
    expect(() => readCanonicalJson(text)).toThrow(NotCanonical);
    expect(() => readCanonicalJson(Buffer.from(text))).toThrow(NotCanonical);
  });

  it.each([
    ['bytes that are not UTF-8', '22ff22'],
    ['a letter in more bytes than it needs', '22c18122'],
    ['half of a surrogate pair in UTF-8', '22eda0bd22'],
  ])('refuses %s', (_what, bytes) => {
    expect(() => readCanonicalJson(Buffer.from(bytes, 'hex'))).toThrow(NotCanonical);
  });

  it('gives back every value that was written, from text and from bytes', () => {
    fc.assert(
      fc.property(fc.jsonValue({ stringUnit: 'grapheme' }), (value) => {
        const text = canonicalJson(value);
        expect(canonicalJson(readCanonicalJson(text))).toBe(text);
        expect(canonicalJson(readCanonicalJson(Buffer.from(text)))).toBe(text);
      }),
    );
  });

  it('keeps a member that is named like a part of the language', () => {
    const text = '{"__proto__":{"a":1},"constructor":2,"toJSON":3}';
    expect(canonicalJson(readCanonicalJson(text))).toBe(text);
  });
});
