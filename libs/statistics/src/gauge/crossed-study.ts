import { InputInvalid } from '../errors.js';
import { at, mean, sum } from '../numbers.js';
import { fUpper } from '../special/beta.js';

/** Readings of a study: by operator, then trial, then part; every operator measures every part as often. */
export type CrossedReadings = readonly (readonly (readonly number[])[])[];

/** Where the spread of readings comes from, as standard deviations in the unit of the readings. */
export interface GaugeSpread {
  /** The same operator on the same part again. */
  readonly repeatability: number;
  /** Operators, with their interplay with parts. */
  readonly reproducibility: number;
  readonly gauge: number;
  readonly parts: number;
  readonly total: number;
  /** Gauge in per cent of the total: under 10 good, over 30 bad (AIAG, from memory). */
  readonly gaugePercent: number;
  /** Classes the gauge can tell apart: floor of 1.41 parts / gauge. */
  readonly distinct: number;
}

/** Sums of squares of the analysis of variance. */
export interface SquareSums {
  readonly part: number;
  readonly operator: number;
  readonly interaction: number;
  readonly repeatability: number;
}

/** The parts of a spread put together. */
export const spreadOf = (repeatability: number, reproducibility: number, parts: number): GaugeSpread => {
  const gauge = Math.hypot(repeatability, reproducibility);
  const total = Math.hypot(gauge, parts);
  const gaugePercent = (100 * gauge) / total;
  return {
    repeatability,
    reproducibility,
    gauge,
    parts,
    total,
    gaugePercent,
    distinct: Math.floor((1.41 * parts) / gauge),
  };
};

/** Operators, trials and parts of a study. Throws InputInvalid unless there are two of each and all are complete. */
export const sizesOf = (readings: CrossedReadings): { operators: number; trials: number; parts: number } => {
  const [operators, trials, parts] = [readings.length, readings[0]?.length ?? 0, readings[0]?.[0]?.length ?? 0];
  const whole = readings.every((own) => own.length === trials && own.every(({ length }) => length === parts));
  if (!whole || Math.min(operators, trials, parts) < 2)
    throw new InputInvalid('readings', `${operators} x ${trials} x ${parts}`, 'complete, with two or more of each');
  return { operators, trials, parts };
};

/** Interplay of operators and parts with a p above this is taken as repeatability (AIAG, from memory). */
export const POOL_ABOVE = 0.25;

/**
 * The study by analysis of variance, two-way with random effects; negative variances count as 0.
 *
 * A hardness reading marks its spot: it cannot be repeated there, so adjacent spots stand for trials. AIAG Measurement
 * Systems Analysis, crossed study. The range method gives other digits by design.
 */
export const crossedStudy = (
  readings: CrossedReadings,
): GaugeSpread & { readonly squares: SquareSums; readonly pooled: boolean } => {
  const { operators: o, trials: r, parts: p } = sizesOf(readings);
  const squares = squaresOf(readings);
  const [dfInteraction, dfError] = [(o - 1) * (p - 1), o * p * (r - 1)];
  const error = squares.repeatability / dfError;
  const between = squares.interaction / dfInteraction;
  const pooled = fUpper(between / error, dfInteraction, dfError) > POOL_ABOVE;
  const joint = (squares.repeatability + squares.interaction) / (dfError + dfInteraction);
  const [repeat, interplay] = pooled ? [joint, joint] : [error, between];
  const variance = (above: number, below: number, times: number): number => Math.max(0, (above - below) / times);
  const interaction = pooled ? 0 : variance(between, error, r);
  const operator = variance(squares.operator / (o - 1), interplay, p * r);
  const part = variance(squares.part / (p - 1), interplay, o * r);
  return { ...spreadOf(Math.sqrt(repeat), Math.sqrt(operator + interaction), Math.sqrt(part)), squares, pooled };
};

const squaresOf = (readings: CrossedReadings): SquareSums => {
  const { operators: o, trials: r, parts: p } = sizesOf(readings);
  const all = readings.flat(2);
  const middle = mean(all);
  const squared = (values: readonly number[]): number => sum(values.map((value) => (value - middle) ** 2));
  const ofParts = Array.from({ length: p }, (_, i) =>
    mean(readings.flatMap((own) => own.map((trial) => at(trial, i)))),
  );
  const cells = readings.flatMap((own) => ofParts.map((_, i) => mean(own.map((trial) => at(trial, i)))));
  const part = o * r * squared(ofParts);
  const operator = p * r * squared(readings.map((own) => mean(own.flat())));
  const cell = r * squared(cells);
  return { part, operator, interaction: cell - part - operator, repeatability: squared(all) - cell };
};
