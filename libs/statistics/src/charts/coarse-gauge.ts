import { InputInvalid, TooLittle } from '../errors.js';
import { sum } from '../numbers.js';
import { minimize } from '../special/minimize.js';
import { normalUpper } from '../special/normal.js';

/** Readings of a gauge with coarse steps: so many of them between two marks; a side may be open, infinite. */
export interface Between {
  readonly from: number;
  readonly to: number;
  readonly count: number;
}

/** Mean and deviation of what was measured, behind the steps of the gauge. */
export interface CoarseFit {
  readonly mean: number;
  readonly deviation: number;
  readonly logLikelihood: number;
}

/**
 * The normal distribution most likely behind readings that say only between which marks they lie.
 *
 * log likelihood = sum n log(P(to) - P(from)), interval-censored (Lawless 1982). A comb that wets to the 18 mil tooth and
 * not to the 20 mil one reads "18 to 20", and taking 18 for the value shifts the mean and shrinks the spread. Throws
 * TooLittle when readings fall in fewer than three intervals, which cannot tell mean and deviation, or all in two that
 * touch; InputInvalid for an interval that is empty.
 */
export const fitCoarse = (readings: readonly Between[]): CoarseFit => {
  for (const { from, to } of readings)
    if (!(from < to)) throw new InputInvalid('interval', `${from} to ${to}`, 'not empty');
  const filled = readings.filter(({ count }) => count > 0);
  const different = new Set(filled.map(({ from, to }) => `${from} ${to}`)).size;
  if (different < 3) throw new TooLittle('intervals with readings', different, 3);
  const [middle, spread] = startOf(filled);
  const loss = ([m = NaN, log = NaN]: readonly number[]): number =>
    -logLikelihood(filled, middle + spread * m, spread * Math.exp(log));
  const [m = NaN, log = NaN] = minimize(loss, [0, 0]);
  const [mean, deviation] = [middle + spread * m, spread * Math.exp(log)];
  return { mean, deviation, logLikelihood: logLikelihood(filled, mean, deviation) };
};

/** The chance of a normal value between two places, taken from the tail it lies in. */
export const chanceBetween = (from: number, to: number): number =>
  from > 0 ? normalUpper(from) - normalUpper(to) : normalUpper(-to) - normalUpper(-from);

const logLikelihood = (readings: readonly Between[], mean: number, deviation: number): number =>
  sum(
    readings.map(
      ({ from, to, count }) => count * Math.log(chanceBetween((from - mean) / deviation, (to - mean) / deviation)),
    ),
  );

/** Mean and deviation of the middles, an open side taken at its mark. */
const startOf = (readings: readonly Between[]): readonly [number, number] => {
  const middles = readings.map(({ from, to, count }) => ({
    value: Number.isFinite(from) ? (Number.isFinite(to) ? (from + to) / 2 : from) : to,
    count,
  }));
  const n = sum(middles.map(({ count }) => count));
  const middle = sum(middles.map(({ value, count }) => value * count)) / n;
  const square = sum(middles.map(({ value, count }) => count * (value - middle) ** 2)) / n;
  return [middle, Math.sqrt(square) || 1];
};
