import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { canonicalJson, NotJson } from '@hull-record/evidence';

/** RFC 8785, section 3.2.2: the sample input, as the RFC prints it. */
const SAMPLE = String.raw`{
  "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
  "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
  "literals": [null, true, false]
}`;

/** RFC 8785, section 3.2.3: the sample whose names must be sorted by UTF-16 code units. */
const NAMES = String.raw`{
  "\u20ac": "Euro Sign",
  "\r": "Carriage Return",
  "\ufb33": "Hebrew Letter Dalet With Dagesh",
  "1": "One",
  "\ud83d\ude00": "Emoji: Grinning Face",
  "\u0080": "Control",
  "\u00f6": "Latin Small Letter O With Diaeresis"
}`;

/** RFC 8785, appendix B: bits of an IEEE 754 double, and the number as JSON. */
const NUMBERS = [
  ['0000000000000000', '0'],
  ['8000000000000000', '0'],
  ['0000000000000001', '5e-324'],
  ['8000000000000001', '-5e-324'],
  ['7fefffffffffffff', '1.7976931348623157e+308'],
  ['ffefffffffffffff', '-1.7976931348623157e+308'],
  ['4340000000000000', '9007199254740992'],
  ['c340000000000000', '-9007199254740992'],
  ['4430000000000000', '295147905179352830000'],
  ['44b52d02c7e14af5', '9.999999999999997e+22'],
  ['44b52d02c7e14af6', '1e+23'],
  ['44b52d02c7e14af7', '1.0000000000000001e+23'],
  ['444b1ae4d6e2ef4e', '999999999999999700000'],
  ['444b1ae4d6e2ef4f', '999999999999999900000'],
  ['444b1ae4d6e2ef50', '1e+21'],
  ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
  ['3eb0c6f7a0b5ed8d', '0.000001'],
  ['41b3de4355555553', '333333333.3333332'],
  ['41b3de4355555554', '333333333.33333325'],
  ['41b3de4355555555', '333333333.3333333'],
  ['41b3de4355555556', '333333333.3333334'],
  ['41b3de4355555557', '333333333.33333343'],
  ['becbf647612f3696', '-0.0000033333333333333333'],
  ['43143ff3c1cb0959', '1424953923781206.2'],
] as const;

const fromBits = (bits: string): number => Buffer.from(bits, 'hex').readDoubleBE();

describe('canonical JSON', () => {
  it('gives the text of RFC 8785, section 3.2.2, for its sample', () => {
    const expected = String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`;
    expect(canonicalJson(JSON.parse(SAMPLE))).toBe(expected);
  });

  it('sorts names by UTF-16 code units, as RFC 8785, section 3.2.3, shows', () => {
    const text = canonicalJson(JSON.parse(NAMES));
    expect([...text.matchAll(/:"([^"]+)"/g)].map(([, value]) => value)).toEqual([
      'Carriage Return',
      'One',
      'Control',
      'Latin Small Letter O With Diaeresis',
      'Euro Sign',
      'Emoji: Grinning Face',
      'Hebrew Letter Dalet With Dagesh',
    ]);
  });

  it.each(NUMBERS)('writes the double %s of RFC 8785, appendix B, as %s', (bits, text) => {
    expect(canonicalJson(fromBits(bits))).toBe(text);
  });

  it.each([
    ['NaN (appendix B)', fromBits('7fffffffffffffff')],
    ['infinity (appendix B)', fromBits('7ff0000000000000')],
    ['minus infinity', -Infinity],
    ['half of a surrogate pair', { text: '\ud83d' }],
    ['half of a surrogate pair as a name', { '\ude00': 1 }],
    ['nothing at all', undefined],
    ['a function', () => 1],
    ['a big integer', 1n],
  ])('refuses %s', (_what, value) => {
    expect(() => canonicalJson(value)).toThrow(NotJson);
  });

  const json = fc.jsonValue({ stringUnit: 'grapheme' });

  it('says of any JSON value what the value is', () => {
    fc.assert(
      fc.property(json, (value) => expect(JSON.parse(canonicalJson(value))).toEqual(JSON.parse(JSON.stringify(value)))),
    );
  });

  it('does not depend on the order in which names were given', () => {
    const turned = (value: unknown): unknown => {
      if (Array.isArray(value)) return value.map(turned);
      if (typeof value !== 'object' || value === null) return value;
      return Object.fromEntries(
        Object.entries(value)
          .reverse()
          .map(([name, inner]) => [name, turned(inner)]),
      );
    };
    fc.assert(fc.property(json, (value) => expect(canonicalJson(turned(value))).toBe(canonicalJson(value))));
  });
});
