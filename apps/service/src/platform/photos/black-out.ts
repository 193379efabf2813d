import sharp from 'sharp';
import { fewAtOnce } from '../few-at-once.js';
import type { Area } from '../texts/redaction.entities.js';

const inTurn = fewAtOnce(2);

/**
 * A copy of a shown photo with areas blacked out: the pixels are replaced before it is compressed, so that nothing of
 * them is left in it. Borders of an area are moved out to whole pixels.
 *
 * @param shown upright JPEG without metadata
 */
export const blackOut = (shown: Buffer, areas: readonly Area[]): Promise<Buffer> =>
  inTurn(async () => {
    const { width, height } = await sharp(shown).metadata();
    const boxes = areas.map((area) => boxOf(area, width, height));
    return sharp(shown, { failOn: 'error' })
      .composite(boxes.map(({ left, top, ...size }) => ({ input: { create: { ...size, ...BLACK } }, left, top })))
      .jpeg({ quality: 85 })
      .toBuffer();
  });

const BLACK = { channels: 3, background: '#000000' } as const;

const boxOf = ({ x, y, width, height }: Area, pixelsWide: number, pixelsHigh: number) => {
  const left = Math.min(Math.floor(x * pixelsWide), pixelsWide - 1);
  const top = Math.min(Math.floor(y * pixelsHigh), pixelsHigh - 1);
  const right = Math.min(Math.ceil((x + width) * pixelsWide), pixelsWide);
  const bottom = Math.min(Math.ceil((y + height) * pixelsHigh), pixelsHigh);
  return { left, top, width: Math.max(1, right - left), height: Math.max(1, bottom - top) };
};
