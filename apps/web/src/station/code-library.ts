import type { Looked } from './code-worker.js';

/** What looks for a code in the picture that a video shows now. */
export interface CodeReader {
  /** The text of a code in the picture, or undefined where none is seen. */
  readonly read: (shown: HTMLVideoElement) => Promise<string | undefined>;
  readonly close: () => void;
}

/** A picture is looked at in at most so many pixels a side: enough for a label that fills a quarter of it. */
const LARGEST = 1280;

/** Reads codes by a library in a thread of its own, so that the page goes on while a picture is looked at. */
export const openCodeLibrary = (): CodeReader => {
  const worker = new Worker(new URL('./code-worker.ts', import.meta.url));
  const canvas = document.createElement('canvas');
  const context = canvas.getContext('2d', { willReadFrequently: true });
  const look = (picture: ImageData): Promise<string | undefined> =>
    new Promise((found, failed) => {
      worker.onmessage = ({ data }: MessageEvent<Looked>) =>
        'wrong' in data ? failed(new Error(data.wrong)) : found(data.code);
      worker.onerror = (event) => failed(new Error(event.message));
      worker.postMessage(picture, [picture.data.buffer]);
    });
  return {
    read: async (shown) => {
      const scale = Math.min(1, LARGEST / Math.max(shown.videoWidth, shown.videoHeight, 1));
      const [width, height] = [Math.round(shown.videoWidth * scale), Math.round(shown.videoHeight * scale)];
      if (context === null || width === 0 || height === 0) return undefined;
      Object.assign(canvas, { width, height });
      context.drawImage(shown, 0, 0, width, height);
      return look(context.getImageData(0, 0, width, height));
    },
    close: () => worker.terminate(),
  };
};
