/** A value of DER (X.690): its tag, all its bytes, and what is in it. */
export interface Der {
  readonly tag: number;
  readonly whole: Buffer;
  readonly content: Buffer;
}

/** Reads the values that stand one after the other; by hand, so that no library of signatures has a say. */
export const readDer = (bytes: Buffer): readonly Der[] => {
  const values: Der[] = [];
  for (let at = 0; at < bytes.length;) {
    const first = bytes[at + 1] ?? 0;
    const more = first < 0x80 ? 0 : first & 0x7f;
    const length = more === 0 ? first : bytes.readUIntBE(at + 2, more);
    const start = at + 2 + more;
    values.push({
      tag: bytes[at] ?? 0,
      whole: bytes.subarray(at, start + length),
      content: bytes.subarray(start, start + length),
    });
    at = start + length;
  }
  return values;
};

/** What is in the value at each step down; throws when there is none. */
export const down = (bytes: Buffer, ...steps: readonly number[]): Der => {
  let [found] = readDer(bytes);
  for (const step of steps) found = found && readDer(found.content).at(step);
  if (!found) throw new Error(`There is nothing at ${steps.join('.')}.`);
  return found;
};
