import type { Rational } from './rational.js';

/**
 * The double nearest to an exact fraction.
 *
 * Numerator and denominator of a deep genealogy are each far above the largest double, where Number(n) / Number(d) would
 * be Infinity / Infinity; so the quotient is first brought to more than 64 bits as a whole number. Below the smallest
 * double it is 0, above the largest Infinity.
 */
export const toNumber = ({ numerator, denominator }: Rational): number => {
  if (numerator < 0n) return -toNumber({ numerator: -numerator, denominator });
  if (numerator === 0n) return 0;
  const shift = 66 - (bitsOf(numerator) - bitsOf(denominator));
  const [top, bottom] =
    shift > 0 ? [numerator << BigInt(shift), denominator] : [numerator, denominator << BigInt(-shift)];
  const quotient = top / bottom;
  // A last bit that stands for all those cut off, so that halfway cases round as the exact value would.
  return scale(Number(top % bottom === 0n ? quotient : quotient | 1n), -shift);
};

/** In two steps: 2 ** -1100 is 0 although the product need not be. */
const scale = (value: number, power: number): number => {
  const half = Math.trunc(power / 2);
  return value * 2 ** half * 2 ** (power - half);
};

/** To within 4 bits, which is enough to choose a shift. */
const bitsOf = (value: bigint): number => value.toString(16).length * 4;
