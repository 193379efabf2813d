import { isBelow } from './numbers.js';
import { dimensionOf, toSi, type UnitCode } from './units.js';

/** What a value must lie between, both ends included; an end left out does not limit. */
export interface Limits {
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  readonly unit: UnitCode;
}

/** One reading: a value, or the interval [low, high) a stepped gauge bounds, recorded as its low end. */
export interface Spot {
  readonly low: number;
  readonly high?: number | undefined;
  readonly unit: UnitCode;
}

/**
 * How a reading stands against its limits.
 *
 * `side` says which limit an outside value broke. `crossesLimit` is true when part of the interval is inside a limit
 * and part is outside, so that the gauge cannot tell. `note` says why nothing could be judged.
 */
export interface Verdict {
  readonly verdict: 'inside' | 'outside' | 'cannot be judged';
  readonly side?: 'low' | 'high';
  readonly crossesLimit: boolean;
  readonly note?: string;
}

/**
 * Judges one spot on its recorded value, never rounded, limits included.
 *
 * The recorded value of an interval is its low end (practice: read the highest wetted step). Values and limits in one
 * unit are compared as they stand; in two units of one dimension they are compared in SI and count as equal within a
 * relative 1e-12, so that 16 mil meets a limit of 406.4 um. Another dimension, a value or limit that is no finite
 * number, or limits that leave nothing inside cannot be judged.
 */
export const judgeSpot = (value: Spot, limits: Limits): Verdict => {
  const note = whyNot(value, limits);
  if (note !== undefined) return { verdict: 'cannot be judged', crossesLimit: false, note };
  const { below, low, high, min, max } = onOneScale(value, limits);
  if (below(low, min)) return { verdict: 'outside', side: 'low', crossesLimit: below(min, high) };
  if (below(max, low)) return { verdict: 'outside', side: 'high', crossesLimit: false };
  // The high end itself is not in the interval, yet values just under it are: they pass a max that lies below it.
  return { verdict: 'inside', crossesLimit: below(max, high) };
};

/** Judges each spot by itself, in order. A mean inside the limits excuses no spot that is outside. */
export const judgeSpots = (values: readonly Spot[], limits: Limits): readonly Verdict[] =>
  values.map((value) => judgeSpot(value, limits));

const whyNot = ({ low, high, unit }: Spot, limits: Limits): string | undefined => {
  const { min, max } = limits;
  if (dimensionOf(unit) !== dimensionOf(limits.unit)) {
    return `A reading in ${unit} cannot be held to limits in ${limits.unit}.`;
  }
  if (![low, high ?? low].every(Number.isFinite)) return 'The reading is not a finite number.';
  if (high !== undefined && high <= low)
    return 'The interval of the reading is empty: its high end is not above its low end.';
  if (min === undefined && max === undefined) return 'No limit is set.';
  if (![min ?? 0, max ?? 0].every(Number.isFinite)) return 'A limit is not a finite number.';
  if (min !== undefined && max !== undefined && min > max) return 'The limits contradict each other: min is above max.';
  return undefined;
};

const onOneScale = ({ low, high = low, unit }: Spot, limits: Limits) => {
  const same = unit === limits.unit;
  const scale = (x: number, from: UnitCode): number => (same ? x : toSi(x, from));
  return {
    below: (a: number, b: number): boolean => (same ? a < b : isBelow(a, b)),
    low: scale(low, unit),
    high: scale(high, unit),
    min: limits.min === undefined ? -Infinity : scale(limits.min, limits.unit),
    max: limits.max === undefined ? Infinity : scale(limits.max, limits.unit),
  };
};
