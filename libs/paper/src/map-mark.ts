import type { MarkState } from './hull-map-view.js';
import { INK } from './ink.js';
import { NAME_HEIGHT, nearestIn, RING, type Labelled } from './map-labels.js';
import type { Sheet } from './sheet.js';

const WORDS: Readonly<Record<MarkState, string>> = {
  open: 'Bold ring: open.',
  repaired: 'Ring struck through: repaired.',
  concession: 'Ring with flag: under concession.',
  other: 'Thin ring: see the list of defects.',
};

/** One sentence for each way a mark is drawn that occurs. */
export const stateWords = (states: readonly MarkState[]): string =>
  (Object.keys(WORDS) as MarkState[])
    .filter((state) => states.includes(state))
    .map((state) => WORDS[state])
    .join(' ');

/** Draws a mark: its ring by state, its name, and a line to the name where that stands apart. */
export const drawMark = ({ doc, fonts }: Sheet, { mark, at, width, name, led }: Labelled): void => {
  ring(doc, mark.state, at.x, at.y);
  if (name === undefined) return;
  if (led) {
    const end = nearestIn({ ...name, width, height: NAME_HEIGHT }, at);
    const length = Math.hypot(end.x - at.x, end.y - at.y);
    const start = { x: at.x + ((end.x - at.x) * RING) / length, y: at.y + ((end.y - at.y) * RING) / length };
    doc.moveTo(start.x, start.y).lineTo(end.x, end.y).lineWidth(0.4).stroke(INK.mark);
  }
  doc.rect(name.x - 0.5, name.y + 0.5, width + 1, NAME_HEIGHT - 1).fill(INK.white);
  doc.fillColor(INK.mark);
  fonts.draw(fonts.units(mark.mark, 'mono-bold'), 'mono-bold', 8, name.x, name.y - 0.2);
};

const ring = (doc: PDFKit.PDFDocument, state: MarkState, x: number, y: number): void => {
  doc
    .circle(x, y, RING)
    .lineWidth(state === 'open' ? 1.5 : 0.7)
    .stroke(INK.mark);
  const arm = RING + 1.5;
  if (state === 'repaired')
    doc
      .moveTo(x - arm, y + arm)
      .lineTo(x + arm, y - arm)
      .stroke(INK.mark);
  if (state === 'concession') flag(doc, x + 2.6, y - 3.2);
};

const flag = (doc: PDFKit.PDFDocument, x: number, y: number): void => {
  doc.polygon([x, y - 7], [x + 6.5, y - 4.5], [x, y - 2]).fill(INK.mark);
  doc
    .moveTo(x, y)
    .lineTo(x, y - 7)
    .lineWidth(0.7)
    .stroke(INK.mark);
};
