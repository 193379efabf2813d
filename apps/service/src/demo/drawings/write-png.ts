import { crc32, deflateSync } from 'node:zlib';

const SIGNATURE = Buffer.from('\x89PNG\r\n\x1a\n', 'latin1');

/**
 * A PNG of greys (ISO/IEC 15948), one byte a pixel, row by row from the top.
 *
 * Nothing is compressed, so that the bytes, and with them the id of a photo's content, are the same on any version of zlib.
 */
export const writePng = (width: number, height: number, greys: Uint8Array): Buffer => {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 0, 0, 0, 0], 8);
  const rows = Buffer.alloc(height * (width + 1));
  for (let y = 0; y < height; y += 1) rows.set(greys.subarray(y * width, (y + 1) * width), y * (width + 1) + 1);
  const stored = deflateSync(rows, { level: 0 });
  return Buffer.concat([SIGNATURE, chunk('IHDR', header), chunk('IDAT', stored), chunk('IEND', Buffer.alloc(0))]);
};

const chunk = (type: string, data: Buffer): Buffer => {
  const content = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  check.writeUInt32BE(crc32(content));
  return Buffer.concat([length, content, check]);
};
