import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  add,
  compare,
  divide,
  fromDecimal,
  multiply,
  ONE,
  rational,
  sum,
  toNumber,
  ZERO,
} from '../../support/walk/index.js';

const fraction = fc
  .tuple(fc.bigInt({ min: -(10n ** 30n), max: 10n ** 30n }), fc.bigInt({ min: 1n, max: 10n ** 30n }))
  .map(([numerator, denominator]) => rational(numerator, denominator));

describe('exact fractions', () => {
  it.each([
    ['12.50', 25n, 2n],
    ['-3', -3n, 1n],
    ['0.000', 0n, 1n],
    ['1e-9', 1n, 1_000_000_000n],
    ['2.5E+3', 2500n, 1n],
  ])('reads %s exactly', (text, numerator, denominator) => {
    expect(fromDecimal(text)).toEqual({ numerator, denominator });
  });

  it.each(['', '.', '1,5', 'NaN', ' 1', '0x1', '1.'])('refuses "%s", which is not a decimal', (text) => {
    expect(() => fromDecimal(text)).toThrow(RangeError);
  });

  it('keeps lowest terms and a denominator above 0', () => {
    expect(rational(6n, -8n)).toEqual({ numerator: -3n, denominator: 4n });
    expect(add(rational(1n, 6n), rational(1n, 3n))).toEqual({ numerator: 1n, denominator: 2n });
    expect(multiply(rational(2n, 3n), rational(3n, 4n))).toEqual({ numerator: 1n, denominator: 2n });
    expect(divide(rational(2n, 3n), rational(-4n, 3n))).toEqual({ numerator: -1n, denominator: 2n });
  });

  it('has no fraction of nothing', () => {
    expect(() => rational(1n, 0n)).toThrow(RangeError);
    expect(() => divide(ONE, ZERO)).toThrow(RangeError);
  });

  it('adds and multiplies as the schoolbook does, and stays in lowest terms', () => {
    fc.assert(
      fc.property(fraction, fraction, (a, b) => {
        const denominator = a.denominator * b.denominator;
        expect(add(a, b)).toEqual(rational(a.numerator * b.denominator + b.numerator * a.denominator, denominator));
        expect(multiply(a, b)).toEqual(rational(a.numerator * b.numerator, denominator));
        expect(compare(a, b)).toBe(-compare(b, a) || 0);
        expect(compare(add(a, ONE), a)).toBe(1);
      }),
    );
  });

  it('sums to 0 what is nothing, and to 1 ten tenths', () => {
    expect(sum([])).toEqual(ZERO);
    expect(sum(Array.from({ length: 10 }, () => fromDecimal('0.1')))).toEqual(ONE);
  });
});

describe('the double nearest to an exact fraction', () => {
  it('is the double that was written down as a decimal', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e300, max: 1e300 }), (value) => {
        // Below 2 ** -1022 a double has fewer bits and is rounded twice; no mass is that small.
        fc.pre(Math.abs(value) >= 2 ** -1022);
        expect(toNumber(fromDecimal(String(value)))).toBe(value);
      }),
    );
  });

  it('is finite although numerator and denominator are each beyond the largest double', () => {
    expect(toNumber(rational(10n ** 2000n, 3n * 10n ** 2000n + 1n))).toBe(1 / 3);
    expect(toNumber(rational(-(7n ** 900n), 2n * 7n ** 900n))).toBe(-0.5);
  });

  it.each([
    ['0', ZERO, 0],
    ['2^-1060, below the normal doubles', rational(1n, 2n ** 1060n), 2 ** -1060],
    ['10^-400, below every double', rational(1n, 10n ** 400n), 0],
    ['2^1000, near the largest double', rational(2n ** 1000n, 1n), 2 ** 1000],
    ['10^400, above every double', rational(10n ** 400n, 1n), Infinity],
    ['2^53 + 1, halfway between two doubles, to the even one', rational(2n ** 53n + 1n, 1n), 2 ** 53],
    ['just above halfway, up', rational((2n ** 53n + 1n) * 2n ** 200n + 1n, 2n ** 200n), 2 ** 53 + 2],
  ])('of %s is right', (_what, exact, expected) => {
    expect(toNumber(exact)).toBe(expected);
  });
});
