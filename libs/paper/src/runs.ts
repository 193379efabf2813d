import { hasRightToLeft, isMirrored } from './direction.js';
import type { Unit } from './unit.js';

/** Neighbours drawn as one string of one font, in the order of writing. */
export interface Run {
  text: string;
  /** Marks without a glyph that stand before it, and behind or in it. */
  readonly marksBefore: string;
  marksBehind: string;
  readonly font: number;
  readonly level: number;
  /** Drawn facing the other way. */
  readonly mirrored: boolean;
}

/** Tells the font of a unit, given the run before it, and which fonts are of scripts written from right to left. */
export interface RunFonts {
  readonly fontOf: (unit: Unit, last: Readonly<Run> | undefined) => number;
  readonly isRightToLeft: (font: number) => boolean;
}

/** Sets neighbours of one font and level as one run, so that kerning, joined letters and text search work. */
export const runsOf = (units: readonly Unit[], fonts: RunFonts): readonly Readonly<Run>[] => {
  const runs: Run[] = [];
  for (const unit of units) {
    const last = runs.at(-1);
    const { text, level = 0, marksBefore = '', marksBehind = '' } = unit;
    const font = fonts.fontOf(unit, last);
    if (last?.font === font && last.level === level && marksBefore === '' && joins(last, fonts)) {
      last.text += text;
      last.marksBehind += marksBehind;
    } else {
      const mirrored = level % 2 === 1 && unit.kind === 'text' && isMirrored(text);
      runs.push({ text, marksBefore, marksBehind, font, level, mirrored });
    }
  }
  return runs;
};

/**
 * The font reader turns a run round by its first letter, whatever its level: so a run to the right holds nothing but one
 * word, and digits of such a font stand alone.
 */
const joins = ({ text, marksBehind, font, level }: Run, { isRightToLeft }: RunFonts): boolean =>
  level % 2 === 0
    ? marksBehind === '' && !isRightToLeft(font)
    : isRightToLeft(font) && hasRightToLeft(text) && !marksBehind.includes(NEVER_JOINED);

const NEVER_JOINED = '\u200c';

/** Where each run of a line begins, given their widths: UAX #9, rule L2. Any unit of length, from the left end on. */
export const placeRuns = (runs: readonly Readonly<Run>[], widths: readonly number[]): readonly number[] => {
  const order = runs.map((_, i) => i);
  const highest = Math.max(0, ...runs.map(({ level }) => level));
  for (let level = highest; level > 0; level -= 1) turnStretches(order, (i) => (runs[i]?.level ?? 0) >= level);
  const places = new Array<number>(runs.length).fill(0);
  let x = 0;
  for (const i of order) {
    places[i] = x;
    x += widths[i] ?? 0;
  }
  return places;
};

const turnStretches = (order: number[], chosen: (i: number) => boolean): void => {
  let from = 0;
  while (from < order.length) {
    let to = from;
    while (to < order.length && chosen(order[to] ?? 0)) to += 1;
    order.splice(from, to - from, ...order.slice(from, to).reverse());
    from = to + 1;
  }
};
