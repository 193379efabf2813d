/** An exact fraction in lowest terms; the denominator is above 0. */
export interface Rational {
  readonly numerator: bigint;
  readonly denominator: bigint;
}

export const ZERO: Rational = { numerator: 0n, denominator: 1n };
export const ONE: Rational = { numerator: 1n, denominator: 1n };

const gcd = (a: bigint, b: bigint): bigint => {
  let [x, y] = [a < 0n ? -a : a, b < 0n ? -b : b];
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
};

/** The fraction in lowest terms; throws RangeError when the denominator is 0. */
export const rational = (numerator: bigint, denominator: bigint): Rational => {
  if (denominator === 0n) throw new RangeError('A fraction of nothing: the denominator is 0.');
  const divisor = gcd(numerator, denominator) * (denominator < 0n ? -1n : 1n);
  return { numerator: numerator / divisor, denominator: denominator / divisor };
};

/**
 * The exact value of a decimal such as "12.50", "-3" or "1e-9".
 *
 * Throws RangeError for anything else, the empty text included.
 */
export const fromDecimal = (text: string): Rational => {
  const parts = /^([+-]?)(\d+)(?:\.(\d+))?(?:e([+-]?\d+))?$/i.exec(text);
  if (parts === null) throw new RangeError(`Not a decimal number: "${text}".`);
  const [, sign = '', whole = '', decimals = '', exponent = '0'] = parts;
  const digits = BigInt(whole + decimals) * (sign === '-' ? -1n : 1n);
  const power = Number(exponent) - decimals.length;
  return power < 0 ? rational(digits, 10n ** BigInt(-power)) : rational(digits * 10n ** BigInt(power), 1n);
};

/**
 * a + b.
 *
 * Here and in `multiply` common divisors are taken out before the product is formed (Knuth, The Art of Computer
 * Programming, volume 2, section 4.5.1; from memory): the fractions of a chain of fills have thousands of digits, and a
 * divisor of a long and a short number is found much faster than one of two long numbers.
 */
export const add = (a: Rational, b: Rational): Rational => {
  const common = gcd(a.denominator, b.denominator);
  const rest = b.denominator / common;
  const numerator = a.numerator * rest + b.numerator * (a.denominator / common);
  const divisor = common === 1n ? 1n : gcd(numerator, common);
  return { numerator: numerator / divisor, denominator: (a.denominator / divisor) * rest };
};

/** a x b. */
export const multiply = (a: Rational, b: Rational): Rational => {
  const first = gcd(a.numerator, b.denominator);
  const second = gcd(b.numerator, a.denominator);
  return {
    numerator: (a.numerator / first) * (b.numerator / second),
    denominator: (a.denominator / second) * (b.denominator / first),
  };
};

/** a / b; throws RangeError when b is 0. */
export const divide = (a: Rational, b: Rational): Rational => multiply(a, rational(b.denominator, b.numerator));

/** Below 0 when a < b, 0 when they are equal, above 0 when a > b. */
export const compare = (a: Rational, b: Rational): number => {
  const difference = a.numerator * b.denominator - b.numerator * a.denominator;
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
};

/** The sum of any number of fractions; 0 of none. */
export const sum = (all: Iterable<Rational>): Rational => {
  let total = ZERO;
  for (const each of all) total = add(total, each);
  return total;
};
