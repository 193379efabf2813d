import { describe, expect, it } from '@jest/globals';
import { photoTypeOf } from '../../../apps/service/src/platform/photos/photo-type.js';
import { blank } from '../../support/photos.js';

const bytes = (text: string): Buffer => Buffer.from(text, 'latin1');

describe('what a file is by its first bytes', () => {
  it.each([
    ['jpeg', 'image/jpeg'],
    ['png', 'image/png'],
    ['webp', 'image/webp'],
  ] as const)('is found for a %s that another program wrote', async (format, type) => {
    expect(photoTypeOf(await blank(4, 4).toFormat(format).toBuffer())).toEqual({ format, type });
  });

  // Signatures: ITU-T T.81 B.1.1.3 (JPEG), ISO/IEC 15948 5.2 (PNG), RFC 9649 2.4 (WebP).
  it.each<[string, Buffer]>([
    ['nothing', bytes('')],
    ['the start of a JPEG without a marker behind it', bytes('\xff\xd8')],
    ['a JPEG one byte late', bytes(' \xff\xd8\xff\xe0')],
    ['a PNG whose line end was changed on the way', bytes('\x89PNG\n\x1a\n')],
    ['a PNG in small letters', bytes('\x89png\r\n\x1a\n')],
    ['a sound file in the frame that WebP uses', bytes('RIFF\x24\0\0\0WAVEfmt ')],
    ['a WebP cut off before its name ends', bytes('RIFF\x24\0\0\0WEB')],
    ['HTML', bytes('<!doctype html>')],
    ['a PDF', bytes('%PDF-1.7')],
    ['a GIF', bytes('GIF89a')],
  ])('is nothing that is taken: %s', (_what, file) => {
    expect(photoTypeOf(file)).toBeUndefined();
  });

  it('is found whatever line ends stand in the length of a WebP', () => {
    expect(photoTypeOf(bytes('RIFF\n\r\n\rWEBPVP8 '))?.format).toBe('webp');
  });
});
