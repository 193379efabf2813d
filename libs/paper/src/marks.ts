import type { Unit } from './unit.js';

/** Marks of the writing direction, and the sign that keeps two letters from being joined (ZWNJ). */
const OBEYED = /^[\u200e\u200f\u061c\u200c]$/u;

/** A mark that is obeyed rather than printed, as a unit without a glyph; null for any other cluster of a text. */
export const asMark = (cluster: string): readonly Unit[] | null =>
  OBEYED.test(cluster) ? [{ kind: 'text', text: '', font: 0, marksBehind: cluster }] : null;

/** Gives each mark to the unit before it, or to the next where it begins a line or follows a space. */
export const joinMarks = (units: readonly Unit[]): readonly Unit[] => {
  const joined: Unit[] = [];
  let waiting = '';
  for (const unit of units) {
    const last = joined.at(-1);
    const { marksBehind = '' } = unit;
    if (marksBehind === '') {
      const takes = waiting !== '' && shows(unit);
      joined.push(takes ? { ...unit, marksBefore: waiting } : unit);
      if (takes) waiting = '';
    } else if (last !== undefined && shows(last)) {
      joined[joined.length - 1] = behind(last, marksBehind);
    } else {
      waiting += marksBehind;
    }
  }
  const end = joined.findLastIndex(shows);
  return waiting === '' ? joined : joined.map((unit, i) => (i === end ? behind(unit, waiting) : unit));
};

const shows = ({ kind }: Unit): boolean => kind === 'text' || kind === 'code point';

const behind = (unit: Unit, marks: string): Unit => ({ ...unit, marksBehind: (unit.marksBehind ?? '') + marks });
