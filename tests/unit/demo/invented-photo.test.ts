import { describe, expect, it } from '@jest/globals';
import sharp from 'sharp';
import { dotsOf } from '../../../apps/service/src/demo/drawings/letters.js';
import { inventedPhoto } from '../../../apps/service/src/demo/drawings/invented-photo.js';
import { preparePhoto } from '../../../apps/service/src/platform/photos/prepare-photo.js';

const WORDS = 'INVENTED DRAWING NO PHOTO';

/** Letters read back from the band below the picture, dot by dot. */
const bandOf = async (photo: Buffer): Promise<readonly string[]> => {
  const { data, info } = await sharp(photo).greyscale().raw().toBuffer({ resolveWithObject: true });
  const lit: string[] = [];
  for (let row = 0; row < 7; row += 1)
    for (let column = 0; column < WORDS.length * 6; column += 1) {
      const [x, y] = [20 + column * 4 + 2, 442 + row * 4 + 2];
      if ((data[y * info.width + x] ?? 0) > 128) lit.push(`${column},${row}`);
    }
  return lit.sort();
};

describe('an invented photo of the demo', () => {
  it.each(['blisters', 'voids'] as const)('of %s is a picture that is taken as a photo', async (seen) => {
    const photo = inventedPhoto('a name', seen);
    expect(await sharp(photo).metadata()).toMatchObject({ format: 'png', width: 640, height: 480 });
    expect(await preparePhoto(photo)).toMatchObject({ type: 'image/png', width: 640, height: 480 });
  });

  it('says in the picture that it is invented', async () => {
    const lit = dotsOf(WORDS).map(([column, row]) => `${column},${row}`);
    expect(lit.length).toBeGreaterThan(200);
    expect(await bandOf(inventedPhoto('a name', 'blisters'))).toEqual(lit.sort());
    for (const letter of new Set(WORDS.replaceAll(' ', ''))) expect(dotsOf(letter).length).toBeGreaterThan(6);
  });

  it('is the same for the same name, and another for another', () => {
    const one = inventedPhoto('a name', 'blisters');
    expect(inventedPhoto('a name', 'blisters').equals(one)).toBe(true);
    expect(inventedPhoto('another name', 'blisters').equals(one)).toBe(false);
    expect(inventedPhoto('a name', 'voids').equals(one)).toBe(false);
  });
});
