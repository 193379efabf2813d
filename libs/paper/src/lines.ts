import type { Unit } from './text-safe.js';

/** The width in points of units set side by side. */
export type Measure = (units: readonly Unit[]) => number;

interface Word {
  readonly units: readonly Unit[];
  readonly after: 'line end' | 'space' | 'nothing' | 'start';
}

const SPACE: Unit = { kind: 'space', text: ' ', font: 0 };

/**
 * Breaks units into lines no wider than `width` points: at spaces, else inside a word that is wider than a line.
 *
 * Runs of spaces become one. A line may also break before and after a code point in words. There is always at least
 * one line, and every line holds at least one unit, however narrow the column, unless the text has an empty line.
 */
export const breakLines = (units: readonly Unit[], width: number, measure: Measure): readonly (readonly Unit[])[] => {
  const lines: Unit[][] = [];
  let line: Unit[] = [];
  for (const word of wordsOf(units)) {
    if (word.after === 'line end') {
      lines.push(line);
      line = [];
    }
    const joined = [...line, ...(word.after === 'space' && line.length > 0 ? [SPACE] : []), ...word.units];
    if (measure(joined) <= width) {
      line = joined;
      continue;
    }
    if (line.length > 0) lines.push(line);
    const pieces = splitWord(word.units, width, measure);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1) ?? [];
  }
  return [...lines, line];
};

const wordsOf = (units: readonly Unit[]): readonly Word[] => {
  const words: { units: Unit[]; after: Word['after'] }[] = [{ units: [], after: 'start' }];
  let before: Unit['kind'] = 'text';
  for (const unit of units) {
    if (unit.kind === 'line end') words.push({ units: [], after: 'line end' });
    else if (unit.kind === 'space') {
      if (before !== 'space' && before !== 'line end') words.push({ units: [], after: 'space' });
    } else {
      const apart = unit.kind === 'code point' || before === 'code point';
      if (apart && (words.at(-1)?.units.length ?? 0) > 0) words.push({ units: [], after: 'nothing' });
      words.at(-1)?.units.push(unit);
    }
    before = unit.kind;
  }
  return words.filter(({ units: own, after }) => own.length > 0 || after === 'line end');
};

const splitWord = (units: readonly Unit[], width: number, measure: Measure): Unit[][] => {
  const pieces: Unit[][] = [[]];
  let used = 0;
  for (const unit of units) {
    const piece = pieces.at(-1);
    const before = piece?.at(-1);
    // Not the unit's own width: kerning with the one before may widen it.
    const own = before === undefined ? measure([unit]) : measure([before, unit]) - measure([before]);
    if (piece !== undefined && (used + own <= width || piece.length === 0)) {
      piece.push(unit);
      used += own;
      continue;
    }
    pieces.push([unit]);
    used = measure([unit]);
  }
  return pieces;
};
