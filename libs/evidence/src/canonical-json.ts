import canonicalize from 'canonicalize';

/** A value that JSON cannot carry, such as NaN or a function. */
export class NotJson extends Error {
  override readonly name = 'NotJson';
}

/**
 * Canonical JSON by RFC 8785 (JSON Canonicalization Scheme): equal values give equal text, whatever the order of keys.
 *
 * Decimals that must keep their digits are given as strings: numbers are IEEE 754 doubles here.
 *
 * @throws NotJson for NaN, infinities, and values that JSON has no form for
 */
export const canonicalJson = (value: unknown): string => {
  const text = canonicalize(value);
  if (text === undefined) throw new NotJson('The value has no JSON form.');
  return text;
};
