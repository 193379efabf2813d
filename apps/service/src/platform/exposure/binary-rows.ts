/** Signature, flags and the length of an extension that is not used (PostgreSQL, COPY, binary format). */
const HEADER = 19;
/** A count of fields in place of a row: there are no more. */
const END = -1;

type Fields = (Buffer | null)[];

/**
 * Reads rows of `copy ... to stdout (format binary)`.
 *
 * @param each is told the bytes of the fields of every row; null for null
 */
export const readBinaryRows = async (chunks: AsyncIterable<Buffer>, each: (fields: Fields) => void): Promise<void> => {
  let held: Buffer[] = [];
  let [length, needed, from] = [0, HEADER, HEADER];
  for await (const chunk of chunks) {
    held.push(chunk);
    length += chunk.length;
    if (length < needed) continue;
    const bytes = held.length === 1 ? chunk : Buffer.concat(held, length);
    const read = rowsIn(bytes, from, each);
    held = [bytes.subarray(read.upTo)];
    length -= read.upTo;
    needed = read.needed;
    from = 0;
  }
};

/** Tells every whole row in bytes; how far that was, and how many bytes the next one needs at least. */
const rowsIn = (
  bytes: Buffer,
  from: number,
  each: (fields: Fields) => void,
): { readonly upTo: number; readonly needed: number } => {
  let start = from;
  for (;;) {
    let at = start + 2;
    if (bytes.length < at) return { upTo: start, needed: 2 };
    const count = bytes.readInt16BE(start);
    if (count === END) return { upTo: bytes.length, needed: Infinity };
    const fields: Fields = [];
    while (fields.length < count) {
      if (bytes.length < at + 4) return { upTo: start, needed: at + 4 - start };
      const length = bytes.readInt32BE(at);
      at += 4;
      if (bytes.length < at + length) return { upTo: start, needed: at + length - start };
      fields.push(length < 0 ? null : bytes.subarray(at, at + length));
      at += Math.max(0, length);
    }
    each(fields);
    start = at;
  }
};
