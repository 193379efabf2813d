import type { Readable } from 'node:stream';
import { placesOf, type LabelStock } from '@hull-record/trade';
import { openDocument } from '../document.js';
import { openFonts, type Fonts } from '../fonts.js';
import type { PaperPoint } from '../geometry.js';
import { mark, open, type Element } from '../tags.js';
import { LINE_HEIGHT, type FittedText } from './fit-text.js';
import { layOutLabel, MM, type LabelLayout } from './label-layout.js';
import type { LabelsView } from './label-view.js';

/** Label printers know no other ink, and scanners no better one. */
const BLACK = '#000000';

/** A label has too much on it for its stock: its code, kind and caution cannot be printed whole, or its square code not. */
export class LabelTooSmall extends Error {
  /** @param index which of the labels, from 0 */
  constructor(readonly index: number) {
    super(`Label ${index} does not fit its stock.`);
  }
}

/**
 * Draws labels as a PDF, ended and ready to be read: a page a sheet, or a page a label of a roll. Black on white, tagged,
 * fonts embedded; print it at full size.
 *
 * The same view, stock and `created` give the same bytes on the same versions of PDFKit and zlib. Throws LabelTooSmall,
 * and a TypeError when `created` is no date, before anything is drawn.
 */
export const drawLabels = (view: LabelsView, stock: LabelStock, created: Date): Readable => {
  if (Number.isNaN(created.getTime())) throw new TypeError('The moment the labels are made must be a date.');
  const count = view.labels.length === 1 ? '1 label' : `${view.labels.length} labels`;
  const facts = { title: `Labels of ${view.plantName}`, author: view.plantName, subject: count, keywords: 'labels' };
  const doc = openDocument(facts, created);
  const fonts = openFonts(doc);
  const layouts = view.labels.map((label, index) => {
    const layout = layOutLabel(fonts, label, stock);
    if (layout === null) throw new LabelTooSmall(index);
    return layout;
  });
  const root = doc.struct('Document');
  doc.addStructure(root);
  for (const [index, layout] of layouts.entries()) {
    const place = (index + view.skip) % placesOf(stock);
    if (index === 0 || place === 0) addPage(doc, stock);
    drawLabel(doc, fonts, root, layout, placeAt(stock, place));
  }
  root.end();
  doc.end();
  return doc as unknown as Readable;
};

const addPage = (doc: PDFKit.PDFDocument, { page }: LabelStock): void => {
  doc.addPage({ size: [page.widthMm * MM, page.heightMm * MM], margin: 0 });
};

/** Top left corner in points of a place on a page, counted row by row. */
const placeAt = ({ columns, firstMm, pitchMm }: LabelStock, place: number): PaperPoint => ({
  x: (firstMm.x + (place % columns) * pitchMm.x) * MM,
  y: (firstMm.y + Math.floor(place / columns) * pitchMm.y) * MM,
});

const drawLabel = (
  doc: PDFKit.PDFDocument,
  fonts: Fonts,
  root: Element,
  layout: LabelLayout,
  corner: PaperPoint,
): void => {
  const section = open(doc, root, 'Sect');
  const figure = open(doc, section, 'Figure', { alt: `Data Matrix code: ${layout.view.path}` });
  mark(doc, figure, 'Figure', () => drawMatrix(doc, layout, corner));
  figure.end();
  const at = { x: corner.x + layout.textAt.x, y: corner.y + layout.textAt.y };
  for (const text of layout.texts) {
    const paragraph = open(doc, section, 'P');
    mark(doc, paragraph, 'P', () => drawText(doc, fonts, text, at));
    paragraph.end();
  }
  section.end();
};

/** All modules in one path: drawn apart, neighbours would show a hair of white between them. */
const drawMatrix = (doc: PDFKit.PDFDocument, { matrix, matrixAt, module }: LabelLayout, corner: PaperPoint): void => {
  for (const { row, from, length } of matrix.runs) {
    const [x, y] = [corner.x + matrixAt.x + from * module, corner.y + matrixAt.y + row * module];
    doc.rect(x, y, length * module, module);
  }
  doc.fill(BLACK);
};

const drawText = (doc: PDFKit.PDFDocument, fonts: Fonts, text: FittedText, at: PaperPoint): void => {
  const { lines, face, size } = text;
  doc.fillColor(BLACK);
  for (const [i, units] of lines.entries()) fonts.draw(units, face, size, at.x, at.y + text.y + i * size * LINE_HEIGHT);
};
