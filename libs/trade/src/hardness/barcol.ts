import { isBelow } from '../numbers.js';

/** What makes a set of Barcol readings acceptable; of the material or the plant. */
export interface BarcolRule {
  /** The resin maker's minimum for the cured resin. */
  readonly minimum: number;
  /** Part of the minimum that is enough, such as 0.9. */
  readonly fraction: number;
  readonly source: string;
}

/**
 * 90 % of the resin maker's minimum: wording of ASTM D3299, D4097, ASME RTP-1 and others, from memory. A builder may
 * agree it; no boat rule that asks exactly 90 % is known.
 */
export const NINETY_PERCENT = {
  fraction: 0.9,
  source: '90 % rule (from memory, confirm against the standard)',
} as const;

export interface BarcolReadings {
  readonly values: readonly number[];
  /** Gel coat and laminate are different populations and never pooled. */
  readonly side: 'gel coat' | 'laminate';
  readonly temperatureC?: number | undefined;
  /** Thickness of what is read, mm. */
  readonly thicknessMm?: number | undefined;
}

export interface BarcolVerdict {
  readonly verdict: 'hard enough' | 'too soft' | 'cannot be judged';
  /** Mean of all readings. */
  readonly mean: number | null;
  /** Mean without the one highest and the one lowest: what is judged. */
  readonly trimmedMean: number | null;
  /** Readings in the trimmed mean. */
  readonly counted: number;
  readonly limit: number;
  readonly warnings: readonly string[];
  readonly source: string;
}

/** Fewer are warned about: at least 10 tests (GB/T 3854-2017, 7.2.5; a resin maker's guide says 10 to 12). */
export const BARCOL_READINGS = 10;

/** Readings are taken at about 25 C (resin maker's fabricating guide); further off than this is flagged (common practice). */
const ABOUT_C = { middle: 25, within: 3 } as const;

/** A specimen is at least so thick: 1/16 in (laboratory page on ASTM D2583). */
const LEAST_MM = 1.5;

/**
 * Judges Barcol readings: drop the highest and the lowest, average the rest, compare unrounded with the limit.
 *
 * Practice of a resin maker's fabricating guide (p. 34). The impressor reads 0 to 100; what is outside, or all zero, is
 * not plausible and cannot be judged; nor can fewer than three, of which nothing is left to average.
 */
export const judgeBarcol = (readings: BarcolReadings, rule: BarcolRule): BarcolVerdict => {
  const { values, side, temperatureC, thicknessMm } = readings;
  const limit = rule.minimum * rule.fraction;
  const nothing = { mean: null, trimmedMean: null, counted: 0, limit, source: rule.source };
  const why = whyNot(values, limit);
  if (why !== undefined) return { verdict: 'cannot be judged', ...nothing, warnings: [why] };
  const trimmed = [...values].sort((a, b) => a - b).slice(1, -1);
  const trimmedMean = meanOf(trimmed);
  return {
    verdict: isBelow(trimmedMean, limit) ? 'too soft' : 'hard enough',
    mean: meanOf(values),
    trimmedMean,
    counted: trimmed.length,
    limit,
    warnings: [...fewWarning(values, side), ...temperatureWarning(temperatureC), ...thinWarning(thicknessMm)],
    source: rule.source,
  };
};

const meanOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

const whyNot = (values: readonly number[], limit: number): string | undefined => {
  if (!(limit > 0 && limit <= 100)) return 'The minimum hardness is missing or not between 0 and 100.';
  if (!values.every((value) => value >= 0 && value <= 100)) return 'A Barcol reading lies between 0 and 100.';
  if (values.length < 3)
    return `${values.length} readings: the highest and lowest are dropped, so at least 3 are needed.`;
  return values.every((value) => value === 0)
    ? 'All readings are zero: the impressor or the surface is wrong.'
    : undefined;
};

const fewWarning = (values: readonly number[], side: BarcolReadings['side']): string[] =>
  values.length < BARCOL_READINGS ? [`${values.length} readings on the ${side}: fewer than ${BARCOL_READINGS}.`] : [];

const temperatureWarning = (temperatureC: number | undefined): string[] => {
  if (temperatureC === undefined) return [];
  const near = Math.abs(temperatureC - ABOUT_C.middle) <= ABOUT_C.within;
  return near ? [] : [`Taken at ${temperatureC} C, not at about ${ABOUT_C.middle} C.`];
};

const thinWarning = (thicknessMm: number | undefined): string[] =>
  thicknessMm !== undefined && thicknessMm < LEAST_MM ? [`${thicknessMm} mm thick: less than ${LEAST_MM} mm.`] : [];
