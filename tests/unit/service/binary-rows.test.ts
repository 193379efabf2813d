import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { readBinaryRows } from '../../../apps/service/src/platform/exposure/binary-rows.js';

type Row = readonly (string | null)[];

/** Rows as PostgreSQL copies them out (documentation of COPY, "Binary Format"). */
const copied = (rows: readonly Row[]): Buffer => {
  const short = (value: number): Buffer => {
    const bytes = Buffer.alloc(2);
    bytes.writeInt16BE(value);
    return bytes;
  };
  const long = (value: number): Buffer => {
    const bytes = Buffer.alloc(4);
    bytes.writeInt32BE(value);
    return bytes;
  };
  const field = (value: string | null): Buffer =>
    value === null ? long(-1) : Buffer.concat([long(Buffer.byteLength(value)), Buffer.from(value)]);
  const signature = Buffer.from('PGCOPY\n\xff\r\n\0', 'latin1');
  const tuples = rows.map((row) => Buffer.concat([short(row.length), ...row.map(field)]));
  return Buffer.concat([signature, long(0), long(0), ...tuples, short(-1)]);
};

async function* cut(bytes: Buffer, lengths: readonly number[]): AsyncGenerator<Buffer> {
  let [at, turn] = [0, 0];
  while (at < bytes.length) {
    const length = Math.max(1, lengths[turn % lengths.length] ?? 1);
    yield bytes.subarray(at, at + length);
    await Promise.resolve();
    at += length;
    turn += 1;
  }
}

const read = async (rows: readonly Row[], lengths: readonly number[]): Promise<Row[]> => {
  const found: Row[] = [];
  await readBinaryRows(cut(copied(rows), lengths), (row) =>
    found.push(rows[found.length]?.map((_, i) => row.text(i)) ?? []),
  );
  return found;
};

describe('rows that are copied out as bytes', () => {
  it('are read as they are, wherever what is sent is cut', async () => {
    const row = fc.array(fc.option(fc.string({ unit: 'binary', maxLength: 30 })), { minLength: 1, maxLength: 5 });
    const lengths = fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 6 });
    await fc.assert(
      fc.asyncProperty(fc.array(row, { maxLength: 8 }), lengths, async (rows, cuts) => {
        expect(await read(rows, cuts)).toEqual(rows);
      }),
      { numRuns: 300 },
    );
  });

  it('are none when there are none, and have empty fields that are not null', async () => {
    expect(await read([], [7])).toEqual([]);
    expect(await read([['', null, 'x']], [1])).toEqual([['', null, 'x']]);
  });
});
