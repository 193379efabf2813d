import { INK } from './ink.js';
import type { Verdict } from './layer-view.js';

/** Room that a verdict's shape takes before its word, points. */
export const VERDICT_WIDTH = 12;

const RADIUS = 3.6;

/** How far right of its x the middle of a shape is, points. */
export const VERDICT_MIDDLE = RADIUS + 0.5;

/**
 * Draws the shape of a verdict, its left edge at x and its middle at y.
 *
 * Ring with tick: inside. Square with cross: outside. Triangle with a bar: cannot be judged. Short line: no limit.
 * The word always stands beside it; the shape only makes it quick to find.
 */
export const drawVerdict = (doc: PDFKit.PDFDocument, verdict: Verdict, x: number, y: number): void => {
  doc.save().lineWidth(0.9).lineCap('round').lineJoin('round');
  SHAPES[verdict](doc, x + VERDICT_MIDDLE, y);
  doc.restore();
};

const SHAPES: Readonly<Record<Verdict, (doc: PDFKit.PDFDocument, x: number, y: number) => void>> = {
  inside: (doc, x, y) => {
    doc.circle(x, y, RADIUS).stroke(INK.ink);
    tick(doc, x, y);
  },
  outside: (doc, x, y) => {
    doc.rect(x - RADIUS, y - RADIUS, 2 * RADIUS, 2 * RADIUS).fillAndStroke(INK.mark, INK.mark);
    const arm = RADIUS - 1.5;
    doc.moveTo(x - arm, y - arm).lineTo(x + arm, y + arm);
    doc.moveTo(x - arm, y + arm).lineTo(x + arm, y - arm);
    doc.lineWidth(1.2).stroke(INK.white);
  },
  'cannot be judged': (doc, x, y) => {
    doc.polygon([x, y - RADIUS], [x + RADIUS, y + RADIUS - 0.5], [x - RADIUS, y + RADIUS - 0.5]).stroke(INK.ink);
    doc
      .moveTo(x, y - 1.2)
      .lineTo(x, y + 1.6)
      .stroke(INK.ink);
  },
  'no limit': (doc, x, y) => {
    doc
      .moveTo(x - 2.5, y)
      .lineTo(x + 2.5, y)
      .stroke(INK.soft);
  },
};

/** The tick of a ring of the usual size around a centre. */
export const tick = (doc: PDFKit.PDFDocument, x: number, y: number): void => {
  doc
    .moveTo(x - 1.8, y + 0.1)
    .lineTo(x - 0.5, y + 1.5)
    .lineTo(x + 2, y - 1.5)
    .stroke(INK.ink);
};
