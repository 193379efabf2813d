const MESSAGE = 'is not a field of this request: check how it is spelled, or leave it out';

interface Unknown {
  readonly message: string;
  readonly path: readonly PropertyKey[];
}

type Fields = Readonly<Record<string, unknown>>;

/** An object as JSON and forms have it: what a schema made a date of has no fields any more. */
const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && [Object.prototype, null].includes(Object.getPrototypeOf(value));

/**
 * Fields of a request that its schema did not read: a misspelled one would otherwise be dropped without a word.
 *
 * @param given what was sent
 * @param read what the schema made of it
 */
export const unknownFields = (given: unknown, read: unknown, path: readonly PropertyKey[] = []): readonly Unknown[] => {
  if (Array.isArray(given) && Array.isArray(read))
    return given.flatMap((each, i) => unknownFields(each, read[i], [...path, i]));
  if (!isFields(given) || !isFields(read)) return [];
  return Object.entries(given).flatMap(([name, value]) =>
    Object.hasOwn(read, name)
      ? unknownFields(value, read[name], [...path, name])
      : [{ message: MESSAGE, path: [...path, name] }],
  );
};
