/** A text or value that has not the form asked for; `at` is the JSON pointer (RFC 6901) of what is wrong, '' for all. */
export class Malformed extends Error {
  override readonly name = 'Malformed';
  readonly code = 'malformed';

  constructor(
    readonly at: string,
    why: string,
    options?: ErrorOptions,
  ) {
    super(why, options);
  }
}

/** What a member has to be, in words that follow "has to be", and the check of it. */
export interface Kind<T> {
  readonly is: string;
  readonly holds: (value: unknown) => value is T;
}

/** A kind for each member of an object that has these members and no other. */
export type Shape<T> = { readonly [Name in keyof T]: Kind<T[Name]> };

/**
 * The value as an object of exactly the members of a shape.
 *
 * @param at JSON pointer of the value
 * @throws Malformed with the pointer of the first member that is missing, too many or of another kind
 */
export const exactly = <T extends object>(value: unknown, shape: Shape<T>, at: string): T => {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new Malformed(at, `${at || 'The whole'} has to be an object.`);
  const extra = Object.keys(value).find((name) => !Object.hasOwn(shape, name));
  if (extra !== undefined) throw new Malformed(at, `${at || 'The whole'} has a member too many: ${extra}.`);
  for (const [name, kind] of Object.entries<Kind<unknown>>(shape)) {
    const member: unknown = Object.hasOwn(value, name) ? value[name as keyof typeof value] : undefined;
    if (!kind.holds(member)) throw new Malformed(`${at}/${name}`, `${at}/${name} has to be ${kind.is}.`);
  }
  return value as T;
};

const kind = <T>(is: string, holds: (value: unknown) => boolean): Kind<T> => ({
  is,
  holds: (value): value is T => holds(value),
});

/** Bytes as so many small hexadecimal digits: bytes have no second spelling. */
export const hexOf = (bytes: number): Kind<string> =>
  kind(
    `${bytes} bytes as small hexadecimal digits`,
    (value) => typeof value === 'string' && value.length === bytes * 2 && /^[0-9a-f]*$/.test(value),
  );

export const literally = <T extends string>(text: T): Kind<T> => kind(`"${text}"`, (value) => value === text);

export const wholeNumber: Kind<number> = kind(
  'a whole number of at least 0 that a double holds exactly',
  (value) => Number.isSafeInteger(value) && (value as number) >= 0,
);

export const someText: Kind<string> = kind(
  'a text that is not empty',
  (value) => typeof value === 'string' && value !== '',
);

/** An instant as ISO 8601 in UTC to the millisecond, `2026-04-11T09:30:00.000Z`: it has no second spelling. */
export const instant: Kind<string> = kind('an instant in UTC, such as 2026-04-11T09:30:00.000Z', (value) => {
  if (typeof value !== 'string' || !/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/.test(value)) return false;
  const time = new Date(value);
  return !Number.isNaN(time.getTime()) && time.toISOString() === value;
});

export const orNull = <T>(other: Kind<T>): Kind<T | null> =>
  kind(`${other.is}, or null`, (value) => value === null || other.holds(value));

export const listOf = <T>(each: Kind<T>, most: number): Kind<readonly T[]> =>
  kind(
    `a list of at most ${most}, each ${each.is}`,
    (value) => Array.isArray(value) && value.length <= most && value.every((one) => each.holds(one)),
  );

/** Anything that JSON has a form for. */
export const anything: Kind<unknown> = kind('there', (value) => value !== undefined);
