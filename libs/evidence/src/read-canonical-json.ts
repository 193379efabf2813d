import { canonicalJson, NotJson } from './canonical-json.js';

/** A text that is not canonical JSON (RFC 8785), though it may be JSON. */
export class NotCanonical extends Error {
  override readonly name = 'NotCanonical';
  readonly code = 'not-canonical';
}

/**
 * The value of a text that is canonical JSON to the letter (RFC 8785), and of no other text.
 *
 * So one value has one text, and what was read is all that stood there: a member named twice, of which a reader sees
 * only one, a number with more digits than a double keeps, spaces, or another spelling are refused.
 *
 * @param given text, or its bytes in UTF-8; a byte order mark is not canonical
 * @throws NotCanonical
 */
export const readCanonicalJson = (given: string | Uint8Array): unknown => {
  const text = typeof given === 'string' ? given : fromUtf8(given);
  const value = parsed(text);
  if (written(value) !== text) throw new NotCanonical('The text is JSON, but not in its canonical form.');
  return value;
};

const fromUtf8 = (bytes: Uint8Array): string => {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch (error) {
    throw new NotCanonical('The bytes are not UTF-8.', { cause: error });
  }
};

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new NotCanonical('The text is not JSON.', { cause: error });
  }
};

const written = (value: unknown): string => {
  try {
    return canonicalJson(value);
  } catch (error) {
    if (error instanceof NotJson) throw new NotCanonical(error.message, { cause: error });
    throw error;
  }
};
