/** Signature, flags and the length of an extension that is not used (PostgreSQL, COPY, binary format). */
const HEADER = 19;
/** A count of fields in place of a row: there are no more. */
const END = -1;

/** Rows of `copy ... to stdout (format binary)`, each as the bytes of its fields. */
export class BinaryRows {
  private held: Buffer[] = [];
  private length = 0;
  private needed = HEADER;

  constructor(private readonly chunks: AsyncIterable<Buffer>) {}

  async *[Symbol.asyncIterator](): AsyncGenerator<(Buffer | null)[]> {
    let begun = false;
    for await (const chunk of this.chunks) {
      this.held.push(chunk);
      this.length += chunk.length;
      if (this.length < this.needed) continue;
      let rest = this.held.length === 1 ? chunk : Buffer.concat(this.held, this.length);
      if (!begun) rest = rest.subarray(HEADER);
      begun = true;
      for (;;) {
        const row = rowAt(rest);
        if (typeof row === 'number') {
          this.needed = row;
          break;
        }
        if (row === null) return;
        yield row.fields;
        rest = rest.subarray(row.length);
      }
      this.held = [rest];
      this.length = rest.length;
    }
  }
}

/** The row at the beginning of bytes, null at the end of all; a number says how many bytes it would need at least. */
const rowAt = (bytes: Buffer): { readonly fields: (Buffer | null)[]; readonly length: number } | null | number => {
  if (bytes.length < 2) return 2;
  const count = bytes.readInt16BE(0);
  if (count === END) return null;
  const fields: (Buffer | null)[] = [];
  let at = 2;
  for (let field = 0; field < count; field += 1) {
    if (bytes.length < at + 4) return at + 4;
    const length = bytes.readInt32BE(at);
    at += 4;
    if (length < 0) {
      fields.push(null);
      continue;
    }
    if (bytes.length < at + length) return at + length;
    fields.push(bytes.subarray(at, at + length));
    at += length;
  }
  return { fields, length: at };
};
