import type { ChartPoint, ChartView } from '@hull-record/contracts';

/** The charts that are drawn of a process, in the order they are read. */
export const DRAWN = ['means', 'range', 'within', 'weighted', 'sums'] as const;
export type Drawn = (typeof DRAWN)[number];

/** A control limit at one hull: what the process does, never what is specified. */
export interface Limit {
  readonly centre: number;
  readonly lower: number | null;
  readonly upper: number | null;
}

/** One hull of a chart; `value` is null where it has none there, `second` is the low sum. */
export interface Spot {
  readonly value: number | null;
  readonly second?: number;
  readonly limit: Limit | null;
  readonly marked: boolean;
}

/** The hulls of one chart of a process. */
export const seriesOf = (drawn: Drawn, chart: ChartView): readonly Spot[] =>
  chart.points.map((point) => SPOTS[drawn](point, chart));

const SPOTS: Readonly<Record<Drawn, (point: ChartPoint, chart: ChartView) => Spot>> = {
  means: ({ mean, fired }, { means }) => ({ value: mean, limit: means, marked: fired.length > 0 }),
  range: ({ movingRange, rangeOut }, chart) => ({ value: movingRange, limit: chart.movingRange, marked: rangeOut }),
  within: ({ within, spreadOut }) => ({ value: within?.deviation ?? null, limit: within, marked: spreadOut }),
  weighted: ({ ewma }, { means }) => ({
    value: ewma.value,
    limit: { centre: means?.centre ?? ewma.value, lower: ewma.lower, upper: ewma.upper },
    marked: ewma.signal,
  }),
  sums: ({ cusum }, { sumLimit }) => ({
    value: cusum.high,
    second: -cusum.low,
    limit: sumLimit === null ? null : { centre: 0, lower: -sumLimit, upper: sumLimit },
    marked: cusum.signal,
  }),
};
