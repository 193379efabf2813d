/** Signature, flags and the length of an extension that is not used (PostgreSQL, COPY, binary format). */
const HEADER = 19;
/** A count of fields in place of a row: there are no more. */
const END = -1;

/** A row as it was sent: bytes, and where in them each field begins and ends; null where it is null. */
export class BinaryRow {
  constructor(
    private readonly bytes: Buffer,
    private readonly from: readonly number[],
    private readonly to: readonly number[],
  ) {}

  text(field: number): string | null {
    const [from = 0, to = -1] = [this.from[field], this.to[field]];
    return to < from ? null : this.bytes.toString('utf8', from, to);
  }

  /** How many bytes a field has; none when it is null. */
  size(field: number): number {
    const [from = 0, to = -1] = [this.from[field], this.to[field]];
    return Math.max(0, to - from);
  }

  /** A field of four bytes as an integer, the highest first. */
  int32(field: number): number {
    return this.bytes.readInt32BE(this.from[field] ?? 0);
  }

  /** The bytes of a field, none when it is null; not copied, and there only as long as the row is told. */
  octets(field: number): Uint8Array {
    return new Uint8Array(this.bytes.buffer, this.bytes.byteOffset + (this.from[field] ?? 0), this.size(field));
  }
}

/**
 * Reads rows of `copy ... to stdout (format binary)`.
 *
 * Of a row that lies in two chunks the bytes are put together, and of no other: what is copied has to be cleared away.
 *
 * @param each is told every row
 */
export const readBinaryRows = async (chunks: AsyncIterable<Buffer>, each: (row: BinaryRow) => void): Promise<void> => {
  let held: Buffer = Buffer.alloc(0);
  let skipped = 0;
  for await (let chunk of chunks) {
    if (skipped < HEADER) {
      const skips = Math.min(HEADER - skipped, chunk.length);
      skipped += skips;
      chunk = chunk.subarray(skips);
    }
    while (held.length > 0 && chunk.length > 0) {
      const { needed } = rowsIn(held, each);
      const more = Math.min(needed - held.length, chunk.length);
      held = Buffer.concat([held, chunk.subarray(0, more)]);
      chunk = chunk.subarray(more);
      held = held.subarray(rowsIn(held, each).upTo);
    }
    if (chunk.length > 0) held = chunk.subarray(rowsIn(chunk, each).upTo);
  }
};

/** Tells every whole row in bytes; how far that was, and how many bytes the next one needs at least. */
const rowsIn = (bytes: Buffer, each: (row: BinaryRow) => void): { readonly upTo: number; readonly needed: number } => {
  let start = 0;
  for (;;) {
    let at = start + 2;
    if (bytes.length < at) return { upTo: start, needed: 2 };
    const count = bytes.readInt16BE(start);
    if (count === END) return { upTo: bytes.length, needed: Infinity };
    const [from, to]: [number[], number[]] = [[], []];
    while (from.length < count) {
      if (bytes.length < at + 4) return { upTo: start, needed: at + 4 - start };
      const length = bytes.readInt32BE(at);
      at += 4;
      if (bytes.length < at + length) return { upTo: start, needed: at + length - start };
      from.push(at);
      to.push(at + length);
      at += Math.max(0, length);
    }
    each(new BinaryRow(bytes, from, to));
    start = at;
  }
};
