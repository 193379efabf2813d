import { INK } from './ink.js';
import type { HatchKind } from './layer-view.js';
import type { Box } from './geometry.js';

/** A hatch as drawn into a box that is already clipped, with the ink already chosen. */
type Hatch = (doc: PDFKit.PDFDocument, box: Box) => void;

/**
 * Fills a box with the hatch of a material: lines, dots and hexagons, cut at the box's edge.
 *
 * Always the same for the same box. A layer to come is drawn pale.
 */
export const fillWithHatch = (doc: PDFKit.PDFDocument, kind: HatchKind, box: Box, made: boolean): void => {
  const ink = made ? INK.hatch : INK.ghost;
  doc.save().rect(box.x, box.y, box.width, box.height).clip();
  doc.lineWidth(0.5).strokeColor(ink).fillColor(ink);
  HATCHES[kind](doc, box);
  doc.restore();
};

const slant = (doc: PDFKit.PDFDocument, { x, y, width, height }: Box, step: number, rise: 1 | -1): void => {
  for (let at = -height; at < width; at += step) {
    const [from, to] = rise > 0 ? [y + height, y] : [y, y + height];
    doc.moveTo(x + at, from).lineTo(x + at + height, to);
  }
  doc.stroke();
};

/** A fixed sequence in 0..1, so that speckle looks scattered and is the same every time. */
const scattered = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
};

const dots: Hatch = (doc, { x, y, width, height }) => {
  const next = scattered(7);
  for (let row = 0; row * 5 < height + 5; row += 1) {
    for (let column = 0; column * 5.5 < width + 6; column += 1) {
      const dx = next() * 3 + (row % 2) * 2.5;
      doc.circle(x + column * 5.5 + dx, y + row * 5 + next() * 3, 0.45 + next() * 0.4);
    }
  }
  doc.fill();
};

const speckle: Hatch = (doc, { x, y, width, height }) => {
  const next = scattered(11);
  for (let row = 0; row * 7 < height + 7; row += 1) {
    for (let column = 0; column * 8 < width + 8; column += 1) {
      const [cx, cy, turn] = [x + column * 8 + next() * 5, y + row * 7 + next() * 5, next() * 6.28];
      const corner = (i: number): [number, number] => [
        cx + 1.8 * Math.cos(turn + i * 2.1),
        cy + 1.8 * Math.sin(turn + i * 2.1),
      ];
      doc.polygon(corner(0), corner(1), corner(2));
    }
  }
  doc.stroke();
};

const cells: Hatch = (doc, { x, y, width, height }) => {
  const side = 4;
  const [across, down] = [side * Math.sqrt(3), side * 1.5];
  for (let row = 0; row * down < height + 2 * side; row += 1) {
    for (let column = 0; column * across < width + 2 * across; column += 1) {
      const [cx, cy] = [x + column * across - ((row % 2) * across) / 2, y + row * down];
      const corner = (i: number): [number, number] => [
        cx + side * Math.sin((i * Math.PI) / 3),
        cy + side * Math.cos((i * Math.PI) / 3),
      ];
      doc.polygon(corner(0), corner(1), corner(2), corner(3), corner(4), corner(5));
    }
  }
  doc.stroke();
};

const planks: Hatch = (doc, { x, y, width, height }) => {
  for (let row = 0; row * 5 < height; row += 1) {
    doc.moveTo(x, y + row * 5).lineTo(x + width, y + row * 5);
    for (let at = (row % 3) * 13 + 6; at < width; at += 39)
      doc.moveTo(x + at, y + row * 5).lineTo(x + at, y + row * 5 + 5);
  }
  doc.stroke();
};

const HATCHES: Readonly<Record<HatchKind, Hatch>> = {
  'gel coat': (doc, { x, y, width, height }) => doc.rect(x, y, width, height).fill(),
  mat: dots,
  woven: (doc, box) => {
    slant(doc, box, 6, 1);
    slant(doc, box, 6, -1);
  },
  core: cells,
  putty: speckle,
  board: planks,
  other: (doc, { x, y, width, height }) => {
    for (let at = 4; at < width; at += 8) doc.moveTo(x + at, y).lineTo(x + at, y + height);
    doc.stroke();
  },
};
