import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import { placesOf, type LabelStock } from '@hull-record/trade';
import { openPaper, readPages, type PrintedText } from './read-pdf.js';

/** Rectangle in points of a page, y down. */
export interface PageBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** One text line on a page as a box, ascent and descent included. */
export interface TextBox extends PageBox {
  readonly text: string;
  readonly size: number;
}

/** A square code that was read from the pixels of a page. */
export interface ReadCode extends PageBox {
  readonly text: string;
}

/** One page of labels, read back. */
export interface LabelPage {
  readonly texts: readonly TextBox[];
  readonly codes: readonly ReadCode[];
}

export const MM = 72 / 25.4;
const DOTS_PER_INCH = 240;

/** What the canvas of the PDF reader can do that is asked of it here. */
interface Drawn {
  readonly canvas: { toBuffer(type: 'image/png'): Uint8Array };
  readonly context: object;
}

interface Found {
  readonly text: string;
  readonly position: Readonly<Record<'topLeft' | 'topRight' | 'bottomLeft' | 'bottomRight', { x: number; y: number }>>;
}

const WASM = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm');
prepareZXingModule({ overrides: { wasmBinary: new Uint8Array(readFileSync(WASM)).buffer } });

/** Draws each page of a paper at 240 dots an inch, as PNG. */
export const rasterize = async (bytes: Buffer): Promise<readonly Uint8Array[]> => {
  const paper = await openPaper(bytes);
  const images: Uint8Array[] = [];
  for (let number = 1; number <= paper.numPages; number += 1) {
    const page = await paper.getPage(number);
    const viewport = page.getViewport({ scale: DOTS_PER_INCH / 72 });
    const factory = paper.canvasFactory as { create(width: number, height: number): Drawn };
    const { canvas, context } = factory.create(Math.round(viewport.width), Math.round(viewport.height));
    await page.render({ canvas: null, canvasContext: context as never, viewport }).promise;
    images.push(Uint8Array.from(canvas.toBuffer('image/png')));
  }
  await paper.loadingTask.destroy();
  return images;
};

/** Reads the square codes in an image with a decoder that is not the encoder's. */
const readCodes = async (png: Uint8Array): Promise<readonly ReadCode[]> => {
  const found: readonly Found[] = await readBarcodes(png, { formats: ['DataMatrix'], maxNumberOfSymbols: 255 });
  return found.map(({ text, position }) => {
    const corners = Object.values(position);
    const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
    const points = (dots: number): number => (dots * 72) / DOTS_PER_INCH;
    const [left, top] = [points(Math.min(...xs)), points(Math.min(...ys))];
    return { text, x: left, y: top, width: points(Math.max(...xs)) - left, height: points(Math.max(...ys)) - top };
  });
};

const boxOf = (pageHeight: number, { text, x, y, width, size }: PrintedText): TextBox => ({
  ...{ text, x, width, size },
  y: pageHeight - y - size * 0.984,
  height: size * 1.3,
});

/** The texts of each page of labels as boxes. */
export const readLabelTexts = async (bytes: Buffer, stock: LabelStock): Promise<readonly (readonly TextBox[])[]> =>
  (await readPages(bytes)).map((texts) => texts.map((text) => boxOf(stock.page.heightMm * MM, text)));

/** Reads labels back: their texts from the PDF, their square codes from its pixels. */
export const readLabels = async (bytes: Buffer, stock: LabelStock): Promise<readonly LabelPage[]> => {
  const pages = await readLabelTexts(bytes, stock);
  const images = await rasterize(bytes);
  return Promise.all(pages.map(async (texts, i) => ({ texts, codes: await readCodes(images[i] ?? new Uint8Array()) })));
};

/** The boxes of the label places of a page, row by row. */
export const placeBoxes = (stock: LabelStock): readonly PageBox[] =>
  Array.from({ length: placesOf(stock) }, (_, place) => ({
    x: (stock.firstMm.x + (place % stock.columns) * stock.pitchMm.x) * MM,
    y: (stock.firstMm.y + Math.floor(place / stock.columns) * stock.pitchMm.y) * MM,
    width: stock.label.widthMm * MM,
    height: stock.label.heightMm * MM,
  }));

/** Whether a box lies in another, a hundredth of a point aside, at least `inset` points from its edges. */
export const liesIn = (inner: PageBox, outer: PageBox, inset = 0): boolean =>
  inner.x >= outer.x + inset - 0.01 &&
  inner.y >= outer.y + inset - 0.01 &&
  inner.x + inner.width <= outer.x + outer.width - inset + 0.01 &&
  inner.y + inner.height <= outer.y + outer.height - inset + 0.01;

/** Whether two boxes share more than a hundredth of a point in both directions. */
export const overlap = (a: PageBox, b: PageBox): boolean =>
  Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x) > 0.01 &&
  Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y) > 0.01;
