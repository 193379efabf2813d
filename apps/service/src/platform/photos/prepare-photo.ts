import sharp from 'sharp';
import { fewAtOnce } from '../few-at-once.js';
import { anotherKind, broken, MEGAPIXELS_AT_MOST, tooManyPixels } from './not-a-photo.js';
import { photoTypeOf, pngIsWhole } from './photo-type.js';

/** Longest side of the copy that is shown, px. */
const SHOWN_SIDE = 2_400;

/** A photo of 80 megapixels takes 240 MB while it is decoded. */
const inTurn = fewAtOnce(2);

export interface PreparedPhoto {
  readonly type: string;
  /** Upright, px. */
  readonly width: number;
  readonly height: number;
  /** JPEG without any metadata, upright, at most 2400 px on its longest side. */
  readonly shown: Buffer;
}

/**
 * Checks a photo by its content, whatever its name says, and makes the copy that is shown: the same bytes of the same
 * file on the same versions of sharp and libvips.
 *
 * The size that the file declares is looked at before a pixel is decoded.
 *
 * @throws NotAPhoto
 */
export const preparePhoto = async (original: Buffer): Promise<PreparedPhoto> => {
  const kind = photoTypeOf(original);
  if (kind === undefined) throw anotherKind();
  if (kind.format === 'png' && !pngIsWhole(original)) throw broken(kind.format);
  return inTurn(async () => {
    const { width, height } = await declared(original, kind.format);
    if (width * height > MEGAPIXELS_AT_MOST * 1e6) throw tooManyPixels(width, height);
    const shown = await copy(original).catch(() => {
      throw broken(kind.format);
    });
    return { type: kind.type, width, height, shown };
  });
};

/** Reads the header alone, so that it needs no limit. */
const declared = async (original: Buffer, format: string): Promise<{ width: number; height: number }> => {
  try {
    const found = await sharp(original, { limitInputPixels: false }).metadata();
    if (found.format === format) return found.autoOrient;
  } catch {
    // What it says makes no difference to who sent it.
  }
  throw broken(format);
};

const copy = (original: Buffer): Promise<Buffer> =>
  sharp(original, { limitInputPixels: MEGAPIXELS_AT_MOST * 1e6, failOn: 'error' })
    .autoOrient()
    .flatten({ background: '#ffffff' })
    .resize(SHOWN_SIDE, SHOWN_SIDE, { fit: 'inside', withoutEnlargement: true })
    .jpeg({ quality: 85 })
    .toBuffer();
