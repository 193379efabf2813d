import type { FieldError } from '../refusals.js';

/** NUL, which PostgreSQL keeps in no text, and half of a surrogate pair, which is no character (RFC 8785 refuses it). */
const UNKEPT = /\0|\p{Surrogate}/u;

const escaped = (key: string): string => key.replaceAll('~', '~0').replaceAll('/', '~1');

/** Texts and names of fields in a request that cannot be kept, each by its JSON pointer. */
export const unkeptText = (value: unknown, pointer = ''): readonly FieldError[] => {
  if (typeof value === 'string') return UNKEPT.test(value) ? [{ pointer, detail: WHY }] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    UNKEPT.test(key) ? [{ pointer, detail: WHY }] : unkeptText(inner, `${pointer}/${escaped(key)}`),
  );
};

const WHY = 'has a character that cannot be kept (U+0000, or half of a surrogate pair): write it without';
