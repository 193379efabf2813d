const partsOf = (pointer: string): readonly string[] =>
  pointer
    .split('/')
    .slice(1)
    .map((part) => part.replaceAll('~1', '/').replaceAll('~0', '~'));

/** The value at a JSON pointer (RFC 6901); undefined when there is none. */
export const valueAt = (of: unknown, pointer: string): unknown =>
  partsOf(pointer).reduce<unknown>(
    (at, part) => (typeof at === 'object' && at !== null ? (at as Record<string, unknown>)[part] : undefined),
    of,
  );

/** The same with another value at a JSON pointer; what is not on the way to it stays the same. */
export const withValueAt = (of: unknown, pointer: string, value: unknown): unknown => put(of, partsOf(pointer), value);

const put = (of: unknown, [first, ...rest]: readonly string[], value: unknown): unknown => {
  if (first === undefined) return value;
  if (Array.isArray(of)) return of.map((each: unknown, i) => (String(i) === first ? put(each, rest, value) : each));
  const object = (typeof of === 'object' && of !== null ? of : {}) as Record<string, unknown>;
  return { ...object, [first]: put(object[first], rest, value) };
};
