import type { Limits, ReadingView } from '@hull-record/contracts';

/** One reading in a plot, in the unit of its limits; a gauge interval has two ends. */
export interface PlotPoint {
  readonly spot: number;
  readonly low: number;
  readonly high: number;
  readonly verdict: string;
}

/** The readings of one kind in one unit, ready to be drawn. */
export interface Plot {
  readonly unit: string;
  readonly min: number | undefined;
  readonly max: number | undefined;
  readonly points: readonly PlotPoint[];
  /** The ends of the axis, with some room beyond what is read and allowed. */
  readonly from: number;
  readonly to: number;
}

/** Readings of one kind as a plot; undefined when their limits are in another unit than they were read in. */
export const plotOf = (readings: readonly ReadingView[]): Plot | undefined => {
  const [first] = readings;
  if (first === undefined) return undefined;
  const limits = first.rule.limits as Limits | null;
  if (limits !== null && limits.unit !== first.unit) return undefined;
  const points = readings.map(({ spot, value, below, verdict }) => ({
    ...{ spot, verdict, low: Number(value), high: Number(below ?? value) },
  }));
  const { min, max } = limits ?? {};
  const all = [...points.flatMap(({ low, high }) => [low, high]), ...[min, max].flatMap((limit) => limit ?? [])];
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const room = most === least ? Math.max(1, Math.abs(most) * 0.1) : (most - least) * 0.2;
  return { unit: first.unit, min, max, points, from: least - room, to: most + room };
};
