import { buffer } from 'node:stream/consumers';
import { drawBuildRecord, type BuildRecordView } from '@hull-record/paper';
import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A piece of text on a page, in points; y counts up from the foot of the page to the base line. */
export interface PrintedText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly size: number;
}

export const CREATED = new Date('2026-11-26T14:31:00Z');

export const draw = (view: BuildRecordView): Promise<Buffer> => buffer(drawBuildRecord(view, CREATED));

/** Opens a paper for reading; the reader takes the bytes over, so it gets a copy. */
export const openPaper = (bytes: Buffer): Promise<PDFDocumentProxy> =>
  getDocument({ data: Uint8Array.from(bytes), verbosity: 0, useSystemFonts: false }).promise;

/** The text of each page in the order in which it was drawn. */
export const readPages = async (bytes: Buffer): Promise<readonly (readonly PrintedText[])[]> => {
  const paper = await openPaper(bytes);
  const pages: PrintedText[][] = [];
  for (let number = 1; number <= paper.numPages; number += 1) {
    const { items } = await (await paper.getPage(number)).getTextContent({ disableNormalization: true });
    pages.push(
      items.flatMap((item) => {
        if (!('str' in item) || item.str.trim() === '') return [];
        const [across, , , size, from, y] = item.transform as [number, number, number, number, number, number];
        // A mirrored sign is drawn from its right edge to its left.
        const x = across < 0 ? from - item.width : from;
        return [{ text: item.str, x, y, width: item.width, size }];
      }),
    );
  }
  await paper.loadingTask.destroy();
  return pages;
};

/** Everything on the pages without spaces and line ends, for finding what may have been broken over lines. */
export const solid = (pages: readonly (readonly PrintedText[])[]): string =>
  pages
    .flat()
    .map(({ text }) => text)
    .join('')
    .replace(/\s/gu, '');
