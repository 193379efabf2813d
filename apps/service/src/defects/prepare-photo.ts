import sharp from 'sharp';
import { Refusal } from '../platform/refusals.js';

const TYPES: Readonly<Record<string, string>> = { jpeg: 'image/jpeg', png: 'image/png', webp: 'image/webp' };

/** A decoded photo may have this many pixels: a small file can claim to be a very large picture. */
const PIXELS_AT_MOST = 80_000_000;

/** Longest side of the copy that is shown, px. */
const SHOWN_SIDE = 2_400;

export class NotAPhoto extends Refusal {
  readonly code = 'not-a-photo';
  readonly reason = 'unsupported';
  override readonly errors = [
    { pointer: '/photo', detail: 'send a JPEG, PNG or WebP picture of at most 80 megapixels' },
  ];
}

export interface PreparedPhoto {
  readonly type: string;
  /** Upright, px. */
  readonly width: number;
  readonly height: number;
  /** JPEG without any metadata, upright, at most 2400 px on its longest side. */
  readonly shown: Buffer;
}

/**
 * Checks a photo by its content, whatever its name says, and makes the copy that is shown.
 *
 * @throws NotAPhoto
 */
export const preparePhoto = async (original: Buffer): Promise<PreparedPhoto> => {
  try {
    const picture = sharp(original, { limitInputPixels: PIXELS_AT_MOST, failOn: 'error' });
    const { format, autoOrient } = await picture.metadata();
    const type = TYPES[format];
    if (type === undefined) throw new NotAPhoto(`A photo cannot be ${format}.`);
    const shown = await picture
      .rotate()
      .resize(SHOWN_SIDE, SHOWN_SIDE, { fit: 'inside', withoutEnlargement: true })
      .jpeg({ quality: 85 })
      .toBuffer();
    return { type, width: autoOrient.width, height: autoOrient.height, shown };
  } catch (error) {
    if (error instanceof NotAPhoto) throw error;
    throw new NotAPhoto('The file is not a photo that can be read.');
  }
};
