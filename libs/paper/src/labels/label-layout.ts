import type { LabelStock } from '@hull-record/trade';
import type { Fonts } from '../fonts.js';
import type { Box, PaperPoint } from '../geometry.js';
import { dataMatrix, QUIET_MODULES, type Matrix } from './data-matrix.js';
import { fitText, type FittedText } from './fit-text.js';
import type { LabelView } from './label-view.js';

/** A label laid out, in points from its own top left corner. */
export interface LabelLayout {
  readonly view: LabelView;
  readonly matrix: Matrix;
  /** Top left of the first module, quiet zone not included. */
  readonly matrixAt: PaperPoint;
  readonly module: number;
  readonly textAt: PaperPoint;
  readonly texts: readonly FittedText[];
}

/** Points to the mm. */
export const MM = 72 / 25.4;

/**
 * Sides of a module, mm. Common practice: a scanner held in the hand reads a quarter of a mm, a phone wants more; above
 * 2 mm nothing is won.
 */
const MODULE_MM = { least: 0.25, good: 0.4, most: 2 } as const;
/** The part of the shorter side of a label that the square code takes when its modules allow. */
const SHARE = 0.55;
/** Between the square code and the words, mm; its quiet zone is there besides. */
const GAP_MM = 1;

/** Lays a label out: the code at the left, or at the top of an upright label, and the words beside it; null: no room. */
export const layOutLabel = (fonts: Fonts, view: LabelView, stock: LabelStock): LabelLayout | null => {
  const inset = stock.insetMm;
  const inner = { width: stock.label.widthMm - 2 * inset, height: stock.label.heightMm - 2 * inset };
  const matrix = dataMatrix(view.path);
  const side = sideOf(matrix, inner);
  if (side === null) return null;
  const upright = stock.label.heightMm > stock.label.widthMm;
  const area = textArea(inner, side, upright);
  const texts = fitText(fonts, view, area.width * MM, area.height * MM);
  if (texts === null) return null;
  const module = (side / (matrix.size + 2 * QUIET_MODULES)) * MM;
  const at = inset * MM + QUIET_MODULES * module;
  const textAt = { x: (inset + area.x) * MM, y: (inset + area.y) * MM };
  return { view, matrix, matrixAt: { x: at, y: at }, module, textAt, texts };
};

interface Inner {
  readonly width: number;
  readonly height: number;
}

/** Side of the square code with its quiet zone, mm; null when its modules would be too small to be read. */
const sideOf = ({ size }: Matrix, { width, height }: Inner): number | null => {
  const modules = size + 2 * QUIET_MODULES;
  const room = Math.min(width, height);
  const wanted = Math.min(Math.max(room * SHARE, modules * MODULE_MM.good), modules * MODULE_MM.most);
  const side = Math.min(wanted, room);
  return side < modules * MODULE_MM.least ? null : side;
};

const textArea = ({ width, height }: Inner, side: number, upright: boolean): Box => {
  const used = side + GAP_MM;
  return upright ? { x: 0, y: used, width, height: height - used } : { x: used, y: 0, width: width - used, height };
};
