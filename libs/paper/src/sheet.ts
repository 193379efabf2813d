import type { Fonts } from './fonts.js';
import { INK, STROKE } from './ink.js';
import { drawLines, heightOf, para, setLines, type SetLine } from './paragraph.js';
import { artifact } from './tags.js';

/** 15 mm in points. */
export const MARGIN = (15 * 72) / 25.4;
/** A4 (ISO 216) in points. */
export const A4 = { width: 595.28, height: 841.89 } as const;
/** The width that text and tables fill, points. */
export const CONTENT_WIDTH: number = A4.width - 2 * MARGIN;

const PAGE_NUMBER_WIDTH = 70;
const GAP = 5;

/** The paper being drawn: the document, its fonts, and where on the present page the next thing goes. */
export interface Sheet {
  readonly doc: PDFKit.PDFDocument;
  readonly fonts: Fonts;
  /** First and last y that content may use. */
  readonly top: number;
  readonly bottom: number;
  y: number;
  pageNumber: number;
  readonly furniture: { readonly head: readonly SetLine[]; readonly foot: readonly SetLine[] };
}

/** The running head and foot of every page; long ones wrap and take their room from the content. */
export interface RunningText {
  readonly head: string;
  readonly foot: readonly string[];
}

/** Opens a sheet without a page; `startPage` makes the first. */
export const openSheet = (doc: PDFKit.PDFDocument, fonts: Fonts, running: RunningText): Sheet => {
  const head = setLines(fonts, [para(running.head, 'note')], CONTENT_WIDTH);
  const foot = setLines(
    fonts,
    running.foot.map((text) => para(text, 'note')),
    CONTENT_WIDTH - PAGE_NUMBER_WIDTH,
  );
  const top = MARGIN + heightOf(head) + GAP + 12;
  const bottom = A4.height - MARGIN - heightOf(foot) - GAP - 8;
  return { doc, fonts, top, bottom, y: top, pageNumber: 0, furniture: { head, foot } };
};

/** Ends the present page, which is written out, and starts one with running head and foot. */
export const startPage = (sheet: Sheet): void => {
  const { doc, fonts } = sheet;
  doc.addPage();
  sheet.pageNumber += 1;
  sheet.y = sheet.top;
  artifact(doc, 'Pagination', () => {
    const { head, foot } = sheet.furniture;
    drawLines(doc, fonts, head, { x: MARGIN, y: MARGIN, width: CONTENT_WIDTH });
    rule(doc, MARGIN + heightOf(head) + GAP / 2);
    const y = A4.height - MARGIN - heightOf(foot);
    rule(doc, y - GAP);
    drawLines(doc, fonts, foot, { x: MARGIN, y, width: CONTENT_WIDTH });
    const number = setLines(fonts, [para(`page ${sheet.pageNumber}`, 'note')], PAGE_NUMBER_WIDTH);
    drawLines(doc, fonts, number, { x: MARGIN, y, width: CONTENT_WIDTH, align: 'right' });
  });
};

/** Starts a page unless `height` points are left on this one; a page without content is never left behind. */
export const need = (sheet: Sheet, height: number): void => {
  if (sheet.pageNumber === 0 || (sheet.y + height > sheet.bottom && sheet.y > sheet.top)) startPage(sheet);
};

/** A light rule at y, over the width of the content unless told otherwise. */
export const rule = (
  doc: PDFKit.PDFDocument,
  y: number,
  { from = MARGIN, width = CONTENT_WIDTH, ink = INK.soft }: { from?: number; width?: number; ink?: string } = {},
): void => {
  doc
    .moveTo(from, y)
    .lineTo(from + width, y)
    .lineWidth(STROKE.hair)
    .stroke(ink);
};
