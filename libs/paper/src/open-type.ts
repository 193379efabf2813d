import { inflateSync } from 'node:zlib';

const HEADER = 44;
const ENTRY = 20;

/**
 * Unpacks a WOFF 1.0 file (W3C Recommendation, 13 December 2012) to the OpenType font in it.
 *
 * Done once a face by zlib: the font reader would unpack every table again for every paper, in JavaScript.
 */
export const unpackWoff = (woff: Buffer): Buffer => {
  const count = woff.readUInt16BE(12);
  const entries = Array.from({ length: count }, (_, i) => {
    const at = HEADER + i * ENTRY;
    const [offset, packed, length] = [4, 8, 12].map((field) => woff.readUInt32BE(at + field)) as [
      number,
      number,
      number,
    ];
    const body = woff.subarray(offset, offset + packed);
    return { tag: woff.subarray(at, at + 4), checksum: woff.subarray(at + 16, at + 20), length, body };
  });
  const directory: Buffer[] = [];
  const bodies: Buffer[] = [];
  let offset = 12 + count * 16;
  for (const { tag, checksum, length, body } of entries) {
    directory.push(tag, checksum, words(offset, length));
    bodies.push(body.length < length ? inflateSync(body) : body, Buffer.alloc((4 - (length % 4)) % 4));
    offset += length + ((4 - (length % 4)) % 4);
  }
  return Buffer.concat([woff.subarray(4, 8), searchFields(count), ...directory, ...bodies]);
};

const words = (...values: readonly number[]): Buffer => {
  const bytes = Buffer.alloc(values.length * 4);
  values.forEach((value, i) => bytes.writeUInt32BE(value, i * 4));
  return bytes;
};

/** Number of tables, and what readers of 1990 wanted to know for a binary search. */
const searchFields = (count: number): Buffer => {
  const power = Math.floor(Math.log2(count));
  const bytes = Buffer.alloc(8);
  [count, 2 ** power * 16, power, (count - 2 ** power) * 16].forEach((value, i) => bytes.writeUInt16BE(value, i * 2));
  return bytes;
};
