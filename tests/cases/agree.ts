/** How far apart numbers may be: within either tolerance; without any they must be equal. */
export interface Tolerance {
  readonly rel?: number | undefined;
  readonly abs?: number | undefined;
}

/** What JSON cannot hold and stands there as a word. */
const WORDS = ['NaN', 'Infinity', '-Infinity'];

/**
 * Why a value is not as expected, with the way to the place; undefined when it is.
 *
 * An expected object names only the keys it is about; a list is expected whole.
 */
export const difference = (value: unknown, expected: unknown, within: Tolerance, at = ''): string | undefined => {
  if (typeof expected === 'number' && typeof value === 'number')
    return near(value, expected, within) ? undefined : `${at} is ${value}, expected ${expected}`.trim();
  if (typeof value === 'number' && WORDS.some((word) => word === expected) && Object.is(value, Number(expected)))
    return undefined;
  if (Array.isArray(expected)) return listDifference(value, expected, within, at);
  if (expected !== null && typeof expected === 'object') return objectDifference(value, expected, within, at);
  return Object.is(value ?? null, expected ?? null)
    ? undefined
    : `${at} is ${JSON.stringify(value)}, expected ${JSON.stringify(expected)}`.trim();
};

const near = (value: number, expected: number, { rel, abs }: Tolerance): boolean => {
  if (value === expected) return true;
  const apart = Math.abs(value - expected);
  return apart <= (abs ?? 0) || apart <= (rel ?? 0) * Math.abs(expected);
};

const listDifference = (
  value: unknown,
  expected: readonly unknown[],
  within: Tolerance,
  at: string,
): string | undefined => {
  if (!Array.isArray(value) || value.length !== expected.length)
    return `${at} is ${JSON.stringify(value)}, expected ${JSON.stringify(expected)}`.trim();
  return first(expected.map((each, i) => difference(value[i], each, within, `${at}/${i}`)));
};

const objectDifference = (value: unknown, expected: object, within: Tolerance, at: string): string | undefined => {
  if (value === null || typeof value !== 'object')
    return `${at} is ${JSON.stringify(value)}, expected an object`.trim();
  const has = value as Readonly<Record<string, unknown>>;
  return first(Object.entries(expected).map(([key, each]) => difference(has[key], each, within, `${at}/${key}`)));
};

const first = (differences: readonly (string | undefined)[]): string | undefined =>
  differences.find((each) => each !== undefined);
