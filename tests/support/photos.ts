import { crc32 } from 'node:zlib';
import sharp, { type Sharp } from 'sharp';

/** A picture of one colour. */
export const blank = (width: number, height: number): Sharp =>
  sharp({ create: { width, height, channels: 3, background: { r: 180, g: 190, b: 200 } } });

/** Bytes that follow no pattern; more than this repeat, at no width of a picture. */
const NOISE_BYTES = 1_000_003;

/** A picture in which every pixel differs from the next, so that it compresses badly: the worst a camera can take. */
export const noisy = (width: number, height: number, seed = 1): Sharp => {
  const noise = Buffer.alloc(Math.min(NOISE_BYTES, width * height * 3));
  let state = seed;
  for (let i = 0; i < noise.length; i += 1) {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    noise[i] = state >>> 24;
  }
  return sharp(Buffer.alloc(width * height * 3, noise), { raw: { width, height, channels: 3 } });
};

/** A photo as a telephone takes it: lying on its side, with who took it and where. Everything in it is invented. */
export const taken = (width: number, height: number): Promise<Buffer> =>
  blank(width, height)
    .withMetadata({ orientation: 6 })
    .withExifMerge({
      IFD0: { Artist: 'Somebody Private' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '43/1 30/1 0/1' },
    })
    .jpeg()
    .toBuffer();

const chunk = (type: string, data: Buffer): Buffer => {
  const content = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const frame = Buffer.alloc(8);
  frame.writeUInt32BE(data.length, 0);
  frame.writeUInt32BE(crc32(content), 4);
  return Buffer.concat([frame.subarray(0, 4), content, frame.subarray(4)]);
};

/** A PNG of a few bytes that says it is as large as this (ISO/IEC 15948 5.3, 11.2.2). */
export const boastful = (width: number, height: number): Buffer => {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 2, 0, 0, 0], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    signature,
    chunk('IHDR', header),
    chunk('IDAT', Buffer.alloc(20)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
};

/** A JPEG with a text in a comment behind its first marker (ITU-T T.81 B.2.4.5). */
export const withComment = (jpeg: Buffer, text: string): Buffer => {
  const words = Buffer.from(text, 'latin1');
  const head = Buffer.from([0xff, 0xfe, 0, 0]);
  head.writeUInt16BE(words.length + 2, 2);
  return Buffer.concat([jpeg.subarray(0, 2), head, words, jpeg.subarray(2)]);
};
