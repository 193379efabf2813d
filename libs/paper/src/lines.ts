import type { Unit } from './unit.js';

/** The width in points of units set side by side. */
export type Measure = (units: readonly Unit[]) => number;

interface Word {
  readonly units: readonly Unit[];
  /** What stands before it. Nothing stands before a code point in words, nor where a line may open inside a word. */
  readonly after: 'line end' | Unit | 'nothing' | 'opening' | 'start';
}

/**
 * Breaks units into lines no wider than `width` points: at spaces, else inside a word that is wider than a line.
 *
 * Runs of spaces become one. A line may also break before and after a code point in words, and before a unit that opens
 * a line, and never between a figure and its percent sign. There is always at least one line, and every line holds at least one unit, however narrow the column, unless the text has an empty line.
 */
export const breakLines = (units: readonly Unit[], width: number, measure: Measure): readonly (readonly Unit[])[] => {
  const lines: Unit[][] = [];
  let line: Unit[] = [];
  let used = 0;
  for (const word of wordsOf(units)) {
    if (word.after === 'line end') {
      lines.push(line);
      line = [];
    }
    const joined = [...line, ...(typeof word.after === 'object' && line.length > 0 ? [word.after] : []), ...word.units];
    // Beside writing without spaces there is no kerning, and measuring it all again for each letter would be slow.
    const wanted = word.after === 'opening' && line.length > 0 ? used + measure(word.units) : measure(joined);
    if (wanted <= width) {
      [line, used] = [joined, wanted];
      continue;
    }
    if (line.length > 0) lines.push(line);
    const pieces = splitWord(word.units, width, measure);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1) ?? [];
    used = measure(line);
  }
  return [...lines, line];
};

const wordsOf = (units: readonly Unit[]): readonly Word[] => {
  const words: { units: Unit[]; after: Word['after'] }[] = [{ units: [], after: 'start' }];
  let before: Unit['kind'] = 'text';
  for (const unit of units) {
    if (unit.kind === 'line end') words.push({ units: [], after: 'line end' });
    else if (unit.kind === 'space') {
      if (before !== 'space' && before !== 'line end') words.push({ units: [], after: unit });
    } else {
      const sign = unit.text === '%' && before === 'space' ? joinPercent(words) : undefined;
      const apart = unit.kind === 'code point' || before === 'code point';
      const begun = (words.at(-1)?.units.length ?? 0) > 0;
      if (sign !== undefined) words.at(-1)?.units.push(sign);
      else if (begun && apart) words.push({ units: [], after: 'nothing' });
      else if (begun && unit.opens) words.push({ units: [], after: 'opening' });
      words.at(-1)?.units.push(unit);
    }
    before = unit.kind;
  }
  return words.filter(({ units: own, after }) => own.length > 0 || after === 'line end');
};

/** Takes the room for a percent sign back to its figure, which it is never parted from; tells the space between them. */
const joinPercent = (words: { readonly units: readonly Unit[]; readonly after: Word['after'] }[]): Unit | undefined => {
  const [figure, empty] = words.slice(-2);
  if (empty?.units.length !== 0 || typeof empty.after !== 'object') return undefined;
  if (!/^\d$/.test(figure?.units.at(-1)?.text ?? '')) return undefined;
  words.pop();
  return empty.after;
};

/** Letters further back in a word have no part in the shape of the last. */
const REACH = 8;

const splitWord = (units: readonly Unit[], width: number, measure: Measure): Unit[][] => {
  const pieces: Unit[][] = [[]];
  let used = 0;
  for (const unit of units) {
    const piece = pieces.at(-1);
    // Not the unit's own width: kerning with the one before may widen it, and joined letters change their neighbours.
    const context = piece?.slice(unit.level === undefined ? -1 : -REACH) ?? [];
    const own = measure([...context, unit]) - (context.length === 0 ? 0 : measure(context));
    if (piece !== undefined && (used + own <= width || piece.length === 0)) {
      piece.push(unit);
      used += own;
      continue;
    }
    const begins = unit.kind === 'space' ? [] : [unit];
    pieces.push(begins);
    used = measure(begins);
  }
  return pieces;
};
