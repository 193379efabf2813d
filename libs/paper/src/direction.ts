import bidiFactory, { type Bidi } from 'bidi-js';
import type { Unit } from './unit.js';

/** Its types tell of a module with a default; what Node gives is the function itself. */
const bidi = (bidiFactory as unknown as () => Bidi)();

const RIGHT_TO_LEFT = /[\p{Script=Hebrew}\p{Script=Arabic}]/u;

/** Whether a text has a letter that is written from right to left and that the papers have a font for. */
export const hasRightToLeft = (text: string): boolean => RIGHT_TO_LEFT.test(text);

/** Whether units are a paragraph that begins at the right: none of them is set from left to right at the outermost level. */
export const beginsRight = (units: readonly Unit[]): boolean =>
  units.some((unit) => 'level' in unit) && units.every(({ kind, level = 0 }) => kind === 'line end' || level > 0);

/** Whether a character faces the other way where it runs from right to left, such as a bracket (UAX #9, rule L4). */
export const isMirrored = (text: string): boolean => bidi.getMirroredCharacter(text) !== null;

/**
 * Gives each unit its embedding level by the Unicode Bidirectional Algorithm (UAX #9): even runs from left to right.
 *
 * A paragraph runs from right to left when its first letter does and at least half of its letters (rule HL1 leaves that
 * to us): a sentence of ours about an Arabic name stays one from left to right. Codes and dates in ASCII, and figures
 * with a unit in ASCII behind them, run from left to right whatever stands before them (rule HL3): else 2026-07-19
 * would print as 19-07-2026 behind an Arabic word.
 */
export const withLevels = (units: readonly Unit[]): readonly Unit[] => {
  const shown = units.map(standIn);
  const levels = shown.join('').split('\n').flatMap(levelsOf);
  let at = 0;
  return units.map((unit, i): Unit => {
    const level = levels[at + (unit.marksBefore?.length ?? 0)] ?? 0;
    at += shown[i]?.length ?? 0;
    return level === 0 || unit.kind === 'line end' ? unit : { ...unit, level };
  });
};

/** What the algorithm sees of a unit; a code point in words is an object without a direction. */
const standIn = ({ kind, text, marksBefore = '', marksBehind = '' }: Unit): string =>
  kind === 'line end' ? '\n' : marksBefore + (kind === 'code point' ? '\ufffc' : text) + marksBehind;

/** Levels of a paragraph and of the end of its last line, for each UTF-16 code unit. */
const levelsOf = (paragraph: string): readonly number[] => [
  ...bidi.getEmbeddingLevels(asLetters(paragraph), directionOf(paragraph)).levels,
  0,
];

const directionOf = (paragraph: string): 'ltr' | 'rtl' => {
  const letters = paragraph.match(/\p{L}/gu) ?? [];
  const toTheLeft = letters.filter(hasRightToLeft);
  return hasRightToLeft(letters[0] ?? '') && toTheLeft.length * 2 >= letters.length ? 'rtl' : 'ltr';
};

const QUANTITY = /[-+±−]?\d[\d.,]*\s?(?=[A-Za-z°%µμ″])/gu;
const TOKEN = /(?<!\S)[-+±−]?[A-Za-z0-9](?:[\w./:,+-]*[A-Za-z0-9])?|[A-Za-z0-9](?:[\w./:,+-]*[A-Za-z0-9])?/gu;
/** Beyond a figure alone, which the algorithm orders well. */
const CODE = /[A-Za-z_/:+±−-]/u;

/** Stands Latin letters for codes and quantities, one for one. */
const asLetters = (text: string): string =>
  text
    .replace(QUANTITY, (quantity) => 'a'.repeat(quantity.length))
    .replace(TOKEN, (token) => (CODE.test(token) ? 'a'.repeat(token.length) : token));
