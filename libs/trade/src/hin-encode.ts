import { TradeError } from './errors.js';
import { decodeHin } from './hin.js';
import { MONTH_LETTERS, type HinFormat } from './hin-tail.js';

/**
 * The parts a number is made of. A valid reading has them all.
 *
 * `format` is the current one unless said; the old forms are for transcribing old boats. `modelYear` is needed in all
 * but the straight-year form. A country other than US gives the ISO 10087 form.
 */
export interface HinParts {
  readonly mic: string;
  readonly serial: string;
  readonly buildYear: number;
  readonly buildMonth: number;
  readonly modelYear?: number | undefined;
  readonly country?: string | undefined;
  readonly format?: HinFormat | undefined;
}

/** The parts make no number that reads back as the same parts. Data: the parts. */
export class HinNotEncodable extends TradeError {
  readonly code = 'hin-not-encodable';
}

/**
 * Writes a hull identification number in its stored form, without punctuation.
 *
 * Every number it returns is read back by `decodeHin` as the same parts. So it throws HinNotEncodable for a bad code,
 * serial or month, and also for years that one or two digits cannot carry: a model year outside 1972 to 2071, or a
 * build year more than eight years before or one year after the model year.
 */
export const encodeHin = (parts: HinParts): string => {
  const country = parts.country === undefined || parts.country === 'US' ? '' : parts.country;
  const hin = `${country}${parts.mic}${parts.serial}${tailOf(parts)}`;
  const back = decodeHin(hin);
  if (!back.valid) throw new HinNotEncodable(`${hin}: ${back.problems.map((p) => p.message).join(' ')}`, { ...parts });
  const same =
    back.hin === hin &&
    back.mic === parts.mic &&
    back.buildYear === parts.buildYear &&
    back.buildMonth === parts.buildMonth &&
    (back.modelYear === parts.modelYear || back.format === 'straight-year');
  if (same) return hin;
  const read = `build ${back.buildYear}-${back.buildMonth}, model year ${back.modelYear ?? 'not stated'}`;
  throw new HinNotEncodable(`${hin} would be read as ${read}; check the years.`, { ...parts });
};

const tailOf = ({ format = 'current', buildYear, buildMonth, modelYear = NaN }: HinParts): string => {
  switch (format) {
    case 'straight-year':
      return `${String(buildMonth).padStart(2, '0')}${lastTwo(buildYear)}`;
    case 'model-year':
      return `M${lastTwo(modelYear)}${MONTH_LETTERS.charAt((buildMonth + 4) % 12)}`;
    case 'current':
      return `${MONTH_LETTERS.charAt(buildMonth - 1)}${buildYear % 10}${lastTwo(modelYear)}`;
  }
};

const lastTwo = (year: number): string => String(year % 100).padStart(2, '0');
