import { at, deviation } from '../numbers.js';
import type { Between } from './coarse-gauge.js';

/** A reading as a gauge gives it; `value` is its middle where it is an interval from one mark to the next. */
export interface SpotRead {
  readonly value: number;
  readonly from?: number | undefined;
  readonly to?: number | undefined;
}

/** Distinct steps below which a gauge is too coarse to tell a spread by; common practice. */
export const STEPS_NEEDED = 5;

/** A step wider than this part of the deviation is coarse: a tenth of six deviations, from memory; common practice. */
const COARSE = 0.6;

/** How many different readings there are. */
export const stepsOf = (spots: readonly SpotRead[]): number => new Set(spots.map(keyOf)).size;

/** Whether readings tell no more than an interval: the gauge says so, or its step is wide beside their spread. */
export const isCoarse = (spots: readonly SpotRead[]): boolean =>
  spots.some(({ to }) => to !== undefined) || stepOf(spots) > COARSE * deviation(spots.map(({ value }) => value));

/** Readings as intervals with counts; one that is a value reaches half a step to each side. */
export const toIntervals = (spots: readonly SpotRead[], ofLogarithms = false): readonly Between[] => {
  const half = stepOf(spots) / 2;
  const scale = (value: number): number => (ofLogarithms ? Math.log(Math.max(0, value)) : value);
  const counted = new Map<string, Between>();
  for (const spot of spots) {
    const { value, from = value - half, to = value + half } = spot;
    const key = keyOf(spot);
    counted.set(key, { from: scale(from), to: scale(to), count: (counted.get(key)?.count ?? 0) + 1 });
  }
  return [...counted.values()];
};

/** Two readings are the same when they are so to nine digits: converted units leave traces in the last ones. */
const keyOf = ({ value, from, to }: SpotRead): string =>
  [value, from, to].map((x) => x?.toPrecision(9) ?? '').join(' ');

/** The smallest distance between two different readings; 0 of readings that are all the same. */
const stepOf = (spots: readonly SpotRead[]): number => {
  const values = [...new Set(spots.map(({ value }) => value.toPrecision(9)))].map(Number).sort((a, b) => a - b);
  const steps = values.slice(1).map((value, i) => value - at(values, i));
  return steps.length === 0 ? 0 : Math.min(...steps);
};
