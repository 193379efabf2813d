import { beginsRight } from '../direction.js';
import type { Face, Fonts } from '../fonts.js';
import { breakLines } from '../lines.js';
import type { Unit } from '../unit.js';
import type { LabelView } from './label-view.js';

/** Lines of one text in one size, ready to be drawn from `y` on; points, y down from the top of the area. */
export interface FittedText {
  readonly lines: readonly (readonly Unit[])[];
  readonly face: Face;
  readonly size: number;
  readonly y: number;
}

/** No text on a label is smaller, points. */
export const SMALLEST = 5;
/** Ascent and descent of every face of the house, as part of the size. */
export const LINE_HEIGHT = 1.3;

interface Piece {
  readonly units: readonly Unit[];
  readonly face: Face;
  /** Size in points at scale 1. */
  readonly size: number;
  /** Whether it may end in … where there is no room for all of it. */
  readonly cuttable: boolean;
  /** Width in points of what should stand on one line, set in 1 pt. */
  readonly widest: number;
}

const LARGEST_SCALE = 4;
/** Here all but the code is set in the smallest size, and the code in twice that. */
const SMALLEST_SCALE = 0.55;
/** Scales of the code when the rest is cut short; at the last it is in the smallest size too. */
const CODE_SCALES = [0.55, 0.4, 0.27] as const;
const STEP = 0.96;
const STEPS = Math.floor(Math.log(SMALLEST_SCALE / LARGEST_SCALE) / Math.log(STEP));
/** Between two pieces, points at scale 1. */
const GAP = 1.5;

/**
 * Fits the words of a label into an area of a width and height in points: as large as they go, wrapped at spaces, and
 * nothing under 5 pt. Where 5 pt is too large still, title and details are cut short with …, all alike.
 *
 * @returns null when code, kind and caution do not fit whole beside a line of each of the others
 */
export const fitText = (fonts: Fonts, view: LabelView, width: number, height: number): readonly FittedText[] | null => {
  const pieces = piecesOf(fonts, view);
  const at = (step: number): readonly FittedText[] | null => {
    const scale = LARGEST_SCALE * STEP ** step;
    const set = stack(
      pieces.map((piece) => setPiece(fonts, piece, scale, width)),
      GAP * scale,
    );
    return set.height <= height ? set.texts : null;
  };
  const fitted = firstThatFits(STEPS, at);
  if (fitted !== null) return fitted;
  for (const scale of CODE_SCALES) {
    const smallest = pieces.map((piece) => setPiece(fonts, piece, scale, width));
    const cut = cutToRoom(fonts, smallest, width, height);
    if (cut !== null) return stack(cut, 0).texts;
  }
  return null;
};

/** Halves the steps from 0 to `last` for the first that fits: what fits at one fits at the next, but for a lucky break. */
const firstThatFits = <T>(last: number, at: (step: number) => T | null): T | null => {
  let found = at(last);
  if (found === null) return null;
  let [low, high] = [0, last];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    const here = at(middle);
    if (here === null) low = middle + 1;
    else [found, high] = [here, middle];
  }
  return found;
};

const piecesOf = (fonts: Fonts, { kind, code, title, details, caution }: LabelView): readonly Piece[] => {
  const piece = (text: string, face: Face, size: number, cuttable: boolean): Piece[] => {
    if (text === '') return [];
    const units = fonts.units(text, face);
    const inOneLine = face === 'mono-bold' ? [units] : wordsOf(units);
    const widest = Math.max(...inOneLine.map((word) => fonts.width(word, face, 1)));
    return [{ units, face, size, cuttable, widest }];
  };
  return [
    ...piece(kind, 'text', 6.5, false),
    // Spaces side by side are part of a code; in words they are one.
    ...piece(
      code.replace(/ {2,}/g, (spaces) => '\u00a0'.repeat(spaces.length)),
      'mono-bold',
      18,
      false,
    ),
    ...piece(title, 'text-bold', 7.5, true),
    ...details.flatMap((detail) => piece(detail, 'text', 7, true)),
    ...piece(caution === null ? '' : `Caution: ${caution}`, 'text-bold', 6, false),
  ];
};

const wordsOf = (units: readonly Unit[]): readonly (readonly Unit[])[] => {
  const words: Unit[][] = [[]];
  for (const unit of units) {
    if (unit.opens) words.push([]);
    if (unit.kind === 'text') words.at(-1)?.push(unit);
    else words.push(unit.kind === 'code point' ? [unit] : [], []);
  }
  return words;
};

interface SetPiece {
  readonly piece: Piece;
  readonly size: number;
  readonly lines: readonly (readonly Unit[])[];
}

/** In this part of its own size a code, or the longest word of another piece, still reads better whole than broken. */
const WHOLE = 0.5;

/** A code or a word too long for a line makes its piece smaller before it is broken. */
const setPiece = (fonts: Fonts, piece: Piece, scale: number, width: number): SetPiece => {
  const wanted = piece.size * scale;
  const whole = (width / piece.widest) * 0.999;
  const size = Math.max(SMALLEST, whole >= piece.size * WHOLE ? Math.min(wanted, whole) : wanted * 0.6);
  return { piece, size, lines: breakLines(piece.units, width, (units) => fonts.width(units, piece.face, size)) };
};

const stack = (set: readonly SetPiece[], gap: number): { texts: readonly FittedText[]; height: number } => {
  let y = 0;
  const texts = set.map(({ piece, size, lines }) => {
    const text = { lines, face: piece.face, size, y };
    y += lines.length * size * LINE_HEIGHT + gap;
    return text;
  });
  return { texts, height: y - gap };
};

/** Gives every cuttable piece a line in turn, of the smallest size, until a height in points is used up. */
const cutToRoom = (
  fonts: Fonts,
  set: readonly SetPiece[],
  width: number,
  height: number,
): readonly SetPiece[] | null => {
  const wanted = set.map(({ lines }) => lines.length);
  const given = set.map(({ piece, lines }) => (piece.cuttable ? 1 : lines.length));
  const used = set.reduce((sum, { size }, i) => sum + size * (given[i] ?? 0), 0) * LINE_HEIGHT;
  let left = Math.floor((height - used) / (SMALLEST * LINE_HEIGHT));
  if (left < 0) return null;
  for (let lines = 2; left > 0 && given.some((own, i) => own < (wanted[i] ?? 0)); lines += 1) {
    for (const [i, own] of given.entries()) {
      if (left === 0 || own >= (wanted[i] ?? 0) || own >= lines) continue;
      given[i] = own + 1;
      left -= 1;
    }
  }
  return set.map((each, i) => ({ ...each, lines: shorten(fonts, each, given[i] ?? 1, width) }));
};

const shorten = (fonts: Fonts, { piece, size, lines }: SetPiece, count: number, width: number): SetPiece['lines'] => {
  if (lines.length <= count) return lines;
  let last = lines[count - 1] ?? [];
  const toTheLeft = beginsRight(piece.units);
  const more = fonts.units('…', piece.face).map((unit) => (toTheLeft ? { ...unit, level: 1 } : unit));
  while (last.length > 0 && fonts.width([...last, ...more], piece.face, size) > width) last = last.slice(0, -1);
  return [...lines.slice(0, count - 1), [...last, ...more]];
};
