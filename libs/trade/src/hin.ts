import { SERIAL_ALPHABET } from './hin-serial.js';
import { readTail, type HinFormat, type HinProblem } from './hin-tail.js';
import { warningsOf } from './hin-warnings.js';
import { stripPunctuation } from './punctuation.js';

/**
 * A hull identification number that could be read.
 *
 * `hin` is the stored form: 12 characters, or 14 with the country of an ISO 10087 number. `display` is for people:
 * with a hyphen after the country, and with `US-` when it was entered so (33 CFR 181.27 lets it stand before the HIN).
 * `buildMonth` is 1 to 12; build year and month are those of certification where a certification date is required,
 * otherwise of manufacture. Warnings are doubts; they never make a number invalid.
 */
export interface ValidHin {
  readonly valid: true;
  readonly hin: string;
  readonly display: string;
  readonly format: HinFormat;
  readonly country?: string;
  readonly mic: string;
  readonly serial: string;
  readonly buildYear: number;
  readonly buildMonth: number;
  readonly modelYear?: number;
  readonly warnings: readonly string[];
}

/** What was read from a text that should be a hull identification number. */
export type HinReading = ValidHin | { readonly valid: false; readonly problems: readonly HinProblem[] };

/**
 * Reads a hull identification number in any of its forms.
 *
 * Forms: 33 CFR 181.25 (in force), the straight-year and model-year forms of 1 Nov 1972 to 31 Jul 1984, and ISO 10087
 * with a country code in front. Spaces, hyphens and slashes in the input are ignored; `isStoredForm` tells whether
 * there were any. `US` in front of twelve characters that read well is the display prefix, not a country.
 * There is no check digit, so a mistyped number may read well.
 */
export const decodeHin = (text: string): HinReading => {
  const glyphs = stripPunctuation(text);
  if (glyphs.length === 12) return readBody(glyphs, undefined);
  if (glyphs.length === 14 && /^[A-Z]{2}/.test(glyphs)) return readBody(glyphs.slice(2), glyphs.slice(0, 2));
  const message = `A HIN has 12 characters, or 14 with a two-letter country in front; this has ${glyphs.length}.`;
  return { valid: false, problems: [{ message }] };
};

/** Whether a text is a number exactly as it is stored: capitals, "uninterrupted by slashes, hyphens, or spaces". */
export const isStoredForm = (text: string): boolean => {
  const reading = decodeHin(text);
  return reading.valid && reading.hin === text;
};

/** Uniqueness under 33 CFR 181.23(c): no two boats carry the same whole number. */
export const usKey = (reading: ValidHin): string => reading.hin;

/**
 * Uniqueness under Reg. (EU) 2017/1 Art. 3(1)(c): a maker uses a serial only once, whatever the date and model year.
 *
 * A number without a country was assigned under the US rule, so its maker counts as established there.
 */
export const euKey = ({ country = 'US', mic, serial }: ValidHin): string => `${country}-${mic}-${serial}`;

const readBody = (body: string, prefix: string | undefined): HinReading => {
  const country = prefix === 'US' ? undefined : prefix;
  const date = readTail(body.slice(8));
  const problems = [...headProblems(body), ...(isProblems(date) ? date : [])];
  if (isProblems(date) || problems.length > 0) return { valid: false, problems };
  if (country !== undefined && date.format !== 'current') {
    const message = 'A number with a country in front has a month letter A to L here (ISO 10087).';
    return { valid: false, problems: [{ position: 9, message }] };
  }
  const fields = { ...(country === undefined ? {} : { country }), mic: body.slice(0, 3), serial: body.slice(3, 8) };
  const hin = `${country ?? ''}${body}`;
  const display = prefix === undefined ? body : `${prefix}-${body}`;
  const read = { valid: true as const, hin, display, ...fields, ...date };
  return { ...read, warnings: warningsOf(read) };
};

const isProblems = (value: object): value is readonly HinProblem[] => Array.isArray(value);

/** Problems in the manufacturer code (1 to 3) and the serial (4 to 8). */
const headProblems = (body: string): readonly HinProblem[] =>
  [...body.slice(0, 8)].flatMap((glyph, index) => {
    const position = index + 1;
    if (position <= 3 && !/^[A-Z0-9]$/.test(glyph)) {
      return [{ position, message: `"${glyph}" cannot stand in a manufacturer code.` }];
    }
    if (position <= 3 || SERIAL_ALPHABET.includes(glyph)) return [];
    const banned = 'A serial has digits and letters except I, O and Q (33 CFR 181.25(b))';
    return [{ position, message: `${banned}; position ${position} is "${glyph}".` }];
  });
