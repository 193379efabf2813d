import { openPaper } from '../read-pdf.js';

/** What the canvas of the PDF reader can do that is asked of it here. */
interface Drawn {
  readonly context: {
    getImageData(x: number, y: number, width: number, height: number): { readonly data: Uint8ClampedArray };
  };
}

/** A box in points, y down from the head of the page. */
interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const DOTS_PER_POINT = 8;

/** How many pieces of ink that do not touch lie in a box of the first page: joined letters are one. */
export const piecesOfInk = async (bytes: Buffer, box: Box): Promise<number> => {
  const paper = await openPaper(bytes);
  const page = await paper.getPage(1);
  const viewport = page.getViewport({ scale: DOTS_PER_POINT });
  const factory = paper.canvasFactory as { create(width: number, height: number): Drawn };
  const { context } = factory.create(Math.ceil(viewport.width), Math.ceil(viewport.height));
  await page.render({ canvas: null, canvasContext: context as never, viewport }).promise;
  const [x, y, width, height] = [box.x, box.y, box.width, box.height].map((v) => Math.round(v * DOTS_PER_POINT)) as [
    ...[number, number, number, number],
  ];
  const { data } = context.getImageData(x, y, width, height);
  await paper.loadingTask.destroy();
  const dark = Array.from({ length: width * height }, (_, i) => (data[i * 4] ?? 255) < 128);
  return countPieces(dark, width);
};

/** Dots that touch, also by a corner, are of one piece; the dots are used up. */
const countPieces = (dark: boolean[], width: number): number => {
  let pieces = 0;
  for (let start = dark.indexOf(true); start >= 0; start = dark.indexOf(true, start)) {
    pieces += 1;
    const waiting = [start];
    while (waiting.length > 0) {
      const at = waiting.pop() ?? 0;
      if (dark[at] !== true) continue;
      dark[at] = false;
      for (const dy of [-width, 0, width]) for (const dx of [-1, 0, 1]) waiting.push(at + dy + dx);
    }
  }
  return pieces;
};
