import canonicalize from 'canonicalize';

/** A value that JSON cannot carry, such as NaN, a function, or half of a surrogate pair. */
export class NotJson extends Error {
  override readonly name = 'NotJson';
}

/**
 * Canonical JSON by RFC 8785 (JSON Canonicalization Scheme): equal values give equal text, whatever the order of keys.
 *
 * Decimals that must keep their digits are given as strings: numbers are IEEE 754 doubles here.
 *
 * @throws NotJson for NaN, infinities, lone surrogates, and values that JSON has no form for
 */
export const canonicalJson = (value: unknown): string => {
  const text = attempt(value);
  if (text === undefined) throw new NotJson('The value has no JSON form.');
  return text;
};

const attempt = (value: unknown): string | undefined => {
  try {
    return canonicalize(value);
  } catch (error) {
    throw new NotJson(error instanceof Error ? error.message : String(error), { cause: error });
  }
};
