import { buildYearOf, fullYear } from './hin-years.js';

/**
 * The three layouts of positions 9 to 12.
 *
 * They cannot collide: position 9 is A to L (current), M (model-year) or a digit (straight-year).
 */
export type HinFormat = 'current' | 'straight-year' | 'model-year';

/** Something that keeps a text from being a HIN; positions count 1 to 12 as in 33 CFR 181.25, without the country. */
export interface HinProblem {
  readonly position?: number;
  readonly message: string;
}

/** What positions 9 to 12 say. */
export interface HinDate {
  readonly format: HinFormat;
  readonly buildYear: number;
  readonly buildMonth: number;
  readonly modelYear?: number;
}

/** Month letters of the current format: A is January (33 CFR 181.25(c)). I is legal here: it is September. */
export const MONTH_LETTERS = 'ABCDEFGHIJKL';

const isDigit = (glyph: string): boolean => /^[0-9]$/.test(glyph);

/** Reads positions 9 to 12: the date, or every problem in them. */
export const readTail = (tail: string): HinDate | readonly HinProblem[] => {
  const first = tail.charAt(0);
  if (isDigit(first)) return readStraightYear(tail);
  if (first === 'M') return readModelYear(tail);
  if (MONTH_LETTERS.includes(first)) return readCurrent(tail);
  return [{ position: 9, message: `"${first}" is no month: A is January to L December (33 CFR 181.25(c)).` }];
};

/** Month letter, last digit of the year, two digits of model year (33 CFR 181.25(c) and (d)). */
const readCurrent = (tail: string): HinDate | readonly HinProblem[] => {
  const problems = notDigits(tail, [10, 11, 12]);
  if (problems.length > 0) return problems;
  const modelYear = fullYear(Number(tail.slice(2)));
  const buildYear = buildYearOf(Number(tail.charAt(1)), modelYear);
  return { format: 'current', buildYear, buildMonth: MONTH_LETTERS.indexOf(tail.charAt(0)) + 1, modelYear };
};

/** Two digits of month, two of year: numbers before 1 August 1984 (format chart). */
const readStraightYear = (tail: string): HinDate | readonly HinProblem[] => {
  const problems = notDigits(tail, [10, 11, 12]);
  if (problems.length > 0) return problems;
  const buildMonth = Number(tail.slice(0, 2));
  if (buildMonth < 1 || buildMonth > 12) {
    const hint = tail.startsWith('1') ? ' Position 9: I or 1?' : '';
    return [{ position: 9, message: `Month ${tail.slice(0, 2)} does not exist.${hint}` }];
  }
  return { format: 'straight-year', buildYear: fullYear(Number(tail.slice(2))), buildMonth };
};

/**
 * M, two digits of model year, month letter with A for August: numbers before 1 August 1984 (format chart).
 *
 * The model year starts in August, so letters A to E lie in the calendar year before it.
 */
const readModelYear = (tail: string): HinDate | readonly HinProblem[] => {
  const letter = MONTH_LETTERS.indexOf(tail.charAt(3));
  const problems = [...notDigits(tail, [10, 11])];
  if (letter < 0) {
    const hint = tail.endsWith('8') ? ' 8 or B?' : '';
    const message = `"M" in position 9 is no month; the old form with M ends in a month letter A to L.${hint}`;
    problems.push({ position: 12, message });
  }
  if (problems.length > 0) return problems;
  const modelYear = fullYear(Number(tail.slice(1, 3)));
  return {
    format: 'model-year',
    buildYear: letter < 5 ? modelYear - 1 : modelYear,
    buildMonth: ((letter + 7) % 12) + 1,
    modelYear,
  };
};

const notDigits = (tail: string, positions: readonly number[]): readonly HinProblem[] =>
  positions
    .filter((position) => !isDigit(tail.charAt(position - 9)))
    .map((position) => {
      const glyph = tail.charAt(position - 9);
      const hint = position === 12 && glyph === 'B' ? ' 8 or B?' : '';
      return { position, message: `Position ${position} must be a digit, not "${glyph}".${hint}` };
    });
