import { InputInvalid } from '../errors.js';
import { requireCount } from '../numbers.js';
import type { Plan } from './acceptance.js';

const LETTERS = [...'ABCDEFGHJKLMNPQR'];
const SAMPLES = [2, 3, 5, 8, 13, 20, 32, 50, 80, 125, 200, 315, 500, 800, 1250, 2000];
/** Largest lot of each row of the table of letters; a drum is one unit however much it weighs. */
const LOTS = [8, 15, 25, 50, 90, 150, 280, 500, 1200, 3200, 10_000, 35_000, 150_000, 500_000, Infinity];
/** Levels I and III from memory, seen at two sources for lots of 501 to 1200. */
const LEVELS = { I: [...'AABCCDEFGHJKLMN'], II: [...'ABCDEFGHJKLMNPQ'], III: [...'BCDEFGHJKLMNPQR'] };
const LIMITS = [0.01, 0.015, 0.025, 0.04, 0.065, 0.1, 0.15, 0.25, 0.4, 0.65, 1, 1.5, 2.5, 4, 6.5, 10];

export type InspectionLevel = keyof typeof LEVELS;

/** The letter for a lot of so many units and its sample size (ISO 2859-1 table 1, MIL-STD-105E table I). */
export const codeLetter = (lot: number, level: InspectionLevel): { readonly letter: string; readonly n: number } => {
  requireCount('lot', lot, 2);
  const letter = LEVELS[level][LOTS.findIndex((most) => lot <= most)] as string;
  return { letter, n: SAMPLES[LETTERS.indexOf(letter)] as number };
};

/** Acceptance numbers down the diagonals of table II-A, from letter + limit = 14 on; arrows at 15 and 16. */
const DIAGONALS: readonly (number | 'up' | 'down')[] = [0, 'up', 'down', 1, 2, 3, 5, 7, 10, 14, 21];
const FIRST = 14;

/**
 * The plan of single sampling, normal inspection, for a letter and an acceptance quality limit in per cent.
 *
 * ISO 2859-1 table 2-A, MIL-STD-105E table II-A: numbers are alike where letter and limit move against each other. At an
 * arrow the plan of the next letter holds with its own sample size. A limit is no promise for one lot, and the rules of
 * switching belong to the scheme. Throws InputInvalid for an unknown letter or limit, or beyond the table.
 */
export const normalPlan = (letter: string, limitPercent: number): Plan => {
  const [row, column] = [LETTERS.indexOf(letter), LIMITS.indexOf(limitPercent)];
  if (row < 0) throw new InputInvalid('letter', letter, `one of ${LETTERS.join(' ')}`);
  if (column < 0) throw new InputInvalid('limit', limitPercent, `one of ${LIMITS.join(' ')}`);
  for (let i = row; i >= 0 && i < LETTERS.length;) {
    const place = i + column - FIRST;
    const found = place < 0 ? 'down' : (DIAGONALS[place] ?? 'up');
    if (typeof found === 'number') return { n: SAMPLES[i] as number, accept: found };
    i += found === 'up' ? -1 : 1;
  }
  throw new InputInvalid('limit', limitPercent, `one that the table has a plan for at ${letter}`);
};
