import canonicalize from 'canonicalize';

/** A value that JSON cannot carry, such as NaN, a function, or half of a surrogate pair. */
export class NotJson extends Error {
  override readonly name = 'NotJson';
  readonly code = 'not-json';
}

/**
 * Canonical JSON by RFC 8785 (JSON Canonicalization Scheme): equal values give equal text, whatever the order of keys.
 *
 * Decimals that must keep their digits are given as strings: numbers are IEEE 754 doubles here. A member that is
 * undefined is left out, and what has a `toJSON` is written as it says. What is refused are the limits of I-JSON
 * (RFC 7493): lone surrogates, NaN, infinities. Two members of one name are impossible in a value; in a text they are
 * refused by `readCanonicalJson`.
 *
 * @throws NotJson for NaN, infinities, lone surrogates, circles, and values that JSON has no form for, at any depth
 */
export const canonicalJson = (value: unknown): string => {
  try {
    const text = canonicalize(value);
    refuseWithoutForm(value);
    if (text === undefined) throw new NotJson('The value has no JSON form.');
    return text;
  } catch (error) {
    if (error instanceof NotJson) throw error;
    throw new NotJson(error instanceof Error ? error.message : String(error), { cause: error });
  }
};

/**
 * The library leaves out, or writes as `{}`, what JSON has no form for: a function in a list, a map, a hole. Two
 * different values would then have one text, and a few texts would not be JSON at all.
 */
const refuseWithoutForm = (value: unknown): void => {
  if (value === null || ['string', 'number', 'boolean'].includes(typeof value)) return;
  if (typeof value !== 'object') throw new NotJson(`JSON has no form for a value of type ${typeof value}.`);
  if ('toJSON' in value && typeof value.toJSON === 'function') return refuseWithoutForm(value.toJSON());
  if (Array.isArray(value)) return Array.from<unknown>(value).forEach(refuseWithoutForm);
  const kind = Object.prototype.toString.call(value);
  if (kind !== '[object Object]') throw new NotJson(`JSON has no form for ${kind}.`);
  for (const member of Object.values(value)) if (member !== undefined) refuseWithoutForm(member);
};
