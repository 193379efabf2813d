import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';

const WIDTH = 1280;
const HEIGHT = 720;

/** A camera for Chromium that shows one picture: given to its start, it is read when a page opens the camera. */
export interface FakeCamera {
  readonly args: readonly string[];
  /** What it sees from its next start on: an image on a grey table. */
  readonly show: (image: Uint8Array) => Promise<void>;
  readonly close: () => Promise<void>;
}

export const openFakeCamera = async (): Promise<FakeCamera> => {
  const folder = await mkdtemp(join(tmpdir(), 'hull-record-camera-'));
  const file = join(folder, 'seen.y4m');
  return {
    args: [
      '--use-fake-device-for-media-stream',
      '--use-fake-ui-for-media-stream',
      `--use-file-for-fake-video-capture=${file}`,
    ],
    show: async (image) => writeFile(file, asVideo(await onTable(image))),
    close: () => rm(folder, { recursive: true }),
  };
};

/** One byte a pixel, in the middle of the picture and a little askew, as a hand holds it. */
const onTable = async (image: Uint8Array): Promise<Buffer> => {
  const held = await sharp(image).rotate(7, { background: '#777' }).png().toBuffer();
  return sharp({ create: { width: WIDTH, height: HEIGHT, channels: 3, background: '#777' } })
    .composite([{ input: held }])
    .blur(0.8)
    .greyscale()
    .raw()
    .toBuffer();
};

/** YUV4MPEG2 of two frames without colour, which Chromium repeats. */
const asVideo = (luma: Buffer): Buffer => {
  const frame = [Buffer.from('FRAME\n'), luma.subarray(0, WIDTH * HEIGHT), Buffer.alloc((WIDTH * HEIGHT) / 2, 128)];
  return Buffer.concat([Buffer.from(`YUV4MPEG2 W${WIDTH} H${HEIGHT} F10:1 Ip A1:1 C420jpeg\n`), ...frame, ...frame]);
};
