import { OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { openPaper } from '../read-pdf.js';

/** A picture on a page, in points; y counts up from the foot of the page to its lower edge. */
export interface PrintedImage {
  readonly page: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

type Matrix = readonly [number, number, number, number, number, number];

/** One change of the axes after another (ISO 32000-1, 8.3.4). */
const times = (a: Matrix, b: Matrix): Matrix => [
  a[0] * b[0] + a[2] * b[1],
  a[1] * b[0] + a[3] * b[1],
  a[0] * b[2] + a[2] * b[3],
  a[1] * b[2] + a[3] * b[3],
  a[0] * b[4] + a[2] * b[5] + a[4],
  a[1] * b[4] + a[3] * b[5] + a[5],
];

/** Where pictures are drawn on the pages of a paper, in the order in which they are drawn; pages count from 1. */
export const readImages = async (bytes: Buffer): Promise<readonly PrintedImage[]> => {
  const paper = await openPaper(bytes);
  const images: PrintedImage[] = [];
  for (let page = 1; page <= paper.numPages; page += 1) {
    const { fnArray, argsArray } = await (await paper.getPage(page)).getOperatorList();
    let axes: Matrix = [1, 0, 0, 1, 0, 0];
    const kept: Matrix[] = [];
    fnArray.forEach((what, i) => {
      if (what === OPS.save) kept.push(axes);
      if (what === OPS.restore) axes = kept.pop() ?? axes;
      if (what === OPS.transform) axes = times(axes, argsArray[i] as Matrix);
      if (what !== OPS.paintImageXObject) return;
      const [width, , , up, x, y] = axes;
      images.push({ page, width, height: Math.abs(up), x, y: Math.min(y, y + up) });
    });
  }
  await paper.loadingTask.destroy();
  return images;
};

/** What figures say they show, page by page, in the order in which they are read. */
export const readAlternatives = async (bytes: Buffer): Promise<readonly string[]> => {
  const paper = await openPaper(bytes);
  const said: string[] = [];
  const walk = (node: { readonly alt?: string; readonly children?: readonly unknown[] }): void => {
    if (node.alt !== undefined) said.push(node.alt);
    for (const child of node.children ?? []) walk(child as typeof node);
  };
  for (let page = 1; page <= paper.numPages; page += 1) walk((await (await paper.getPage(page)).getStructTree()) ?? {});
  await paper.loadingTask.destroy();
  return said;
};
