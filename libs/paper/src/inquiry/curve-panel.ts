import type { Fonts } from '../fonts.js';
import type { Box } from '../geometry.js';
import { INK, STROKE } from '../ink.js';
import { drawLines, para, setLines } from '../paragraph.js';

/** A step of a curve with its band; null limits are not drawn. */
export interface CurveStep {
  readonly x: number;
  readonly y: number;
  readonly lower: number | null;
  readonly upper: number | null;
}

/** A curve of steps in its frame. */
export interface CurvePanel {
  readonly title: string;
  readonly steps: readonly CurveStep[];
  /** Where the curve starts, at x 0. */
  readonly start: number;
  /** Ends of both axes. */
  readonly most: { readonly x: number; readonly y: number };
  readonly least: { readonly y: number };
  /** Names of places on the axes. */
  readonly xs: readonly (readonly [value: number, name: string])[];
  readonly ys: readonly (readonly [value: number, name: string])[];
}

const LEFT = 40;
const TOP = 17;
const FOOT = 13;

/** Draws a curve with its band in a frame: the curve bold, the limits dashed, grey between them. */
export const drawCurve = (doc: PDFKit.PDFDocument, fonts: Fonts, panel: CurvePanel, box: Box): void => {
  const inner = { x: box.x + LEFT, y: box.y + TOP, width: box.width - LEFT - 12, height: box.height - TOP - FOOT };
  const place = placeIn(panel, inner);
  words(doc, fonts, panel.title, box.x, box.y);
  doc.rect(inner.x, inner.y, inner.width, inner.height).lineWidth(STROKE.hair).stroke(INK.soft);
  for (const [value, name] of panel.ys) {
    const { y } = place(0, value);
    doc
      .moveTo(inner.x, y)
      .lineTo(inner.x + inner.width, y)
      .lineWidth(STROKE.hair)
      .stroke(INK.hair);
    words(doc, fonts, name, box.x, y - 5);
  }
  for (const [value, name] of panel.xs) {
    const { x } = place(value, panel.least.y);
    doc
      .moveTo(x, inner.y + inner.height)
      .lineTo(x, inner.y + inner.height + 2)
      .lineWidth(STROKE.hair)
      .stroke(INK.soft);
    words(doc, fonts, name, x, inner.y + inner.height + 2, true);
  }
  band(doc, panel, place);
  stepped(doc, panel, place, ({ y }) => y);
  doc.lineWidth(STROKE.bold).stroke(INK.ink);
};

type Place = (x: number, y: number) => { readonly x: number; readonly y: number };

const placeIn =
  ({ most, least }: CurvePanel, { x, y, width, height }: Box): Place =>
  (at, value) => ({
    x: x + (Math.min(at, most.x) / most.x) * width,
    y: y + height * (1 - (Math.min(Math.max(value, least.y), most.y) - least.y) / (most.y - least.y)),
  });

const banded = (steps: readonly CurveStep[]): readonly (CurveStep & { lower: number; upper: number })[] =>
  steps.flatMap((step) =>
    step.lower === null || step.upper === null ? [] : [{ ...step, lower: step.lower, upper: step.upper }],
  );

const band = (doc: PDFKit.PDFDocument, panel: CurvePanel, place: Place): void => {
  const steps = banded(panel.steps);
  steps.forEach((step, i) => {
    const next = steps[i + 1];
    if (next === undefined) return;
    const [from, to] = [place(step.x, step.upper), place(next.x, step.lower)];
    doc.rect(from.x, from.y, to.x - from.x, to.y - from.y).fill(INK.pale);
  });
  for (const limit of ['lower', 'upper'] as const) {
    stepped(doc, { ...panel, steps }, place, (step) => step[limit] ?? 0, false);
    doc.dash(2, { space: 1.5 }).lineWidth(STROKE.hair).stroke(INK.soft).undash();
  }
};

/** The path of the steps; nothing where there is none. */
const stepped = (
  doc: PDFKit.PDFDocument,
  { steps, start }: CurvePanel,
  place: Place,
  valueOf: (step: CurveStep) => number,
  fromStart = true,
): void => {
  let before = start;
  const origin = place(0, start);
  if (fromStart) doc.moveTo(origin.x, origin.y);
  steps.forEach((step, i) => {
    const value = valueOf(step);
    const corner = place(step.x, before);
    if (i === 0 && !fromStart) doc.moveTo(corner.x, place(step.x, value).y);
    else doc.lineTo(corner.x, corner.y);
    const down = place(step.x, value);
    doc.lineTo(down.x, down.y);
    before = value;
  });
};

const words = (doc: PDFKit.PDFDocument, fonts: Fonts, name: string, x: number, y: number, centred = false): void => {
  const lines = setLines(fonts, [para(name, 'note')], 230);
  drawLines(doc, fonts, lines, { x: centred ? x - (lines[0]?.width ?? 0) / 2 : x, y, width: 230 });
};
