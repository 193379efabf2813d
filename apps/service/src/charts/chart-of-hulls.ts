import type { ChartPoint, ChartSettings, ChartView, FrozenLimits } from '@hull-record/contracts';
import {
  followingOf,
  processChart,
  processFigures,
  readingsCapability,
  TooLittle,
  type ProcessChart,
  type ProcessFigures,
  type ProcessPoint,
} from '@hull-record/statistics';
import type { UnitCode } from '@hull-record/trade';
import { spotsIn, valuesIn, type HullRow } from './load-hulls.js';
import { watchBy } from './settings.js';
import { specificationOf } from './specification-of.js';

/** The figures of a chart, worked out of its hulls. */
export type Worked = Pick<
  ChartView,
  | 'rules'
  | 'why'
  | 'means'
  | 'movingRange'
  | 'within'
  | 'sumLimit'
  | 'points'
  | 'stable'
  | 'following'
  | 'specification'
  | 'capability'
>;

/** What a chart is worked out of. */
export interface ToChart {
  readonly hulls: readonly HullRow[];
  readonly unit: UnitCode;
  readonly settings: ChartSettings;
  readonly frozen: FrozenLimits | null;
}

/** The charts of hulls, by frozen limits or figures of their own, and how single readings fit what is specified. */
export const chartOfHulls = ({ hulls, unit, settings, frozen }: ToChart): Worked => {
  const spots = spotsIn(hulls, unit);
  const values = valuesIn(hulls, unit);
  const watch = watchBy(settings);
  const figures = frozen?.figures ?? ownFigures(values);
  const chart = typeof figures === 'string' || values.length === 0 ? null : processChart(values, watch, figures);
  const { newest, changed } = specificationOf(hulls, unit);
  const limits = { lower: newest?.min ?? undefined, upper: newest?.max ?? undefined };
  return {
    rules: [...watch.rules],
    why: chart === null ? (typeof figures === 'string' ? figures : 'too few hulls') : null,
    means: chart?.means ?? null,
    movingRange: chart?.movingRange ?? null,
    within: typeof figures === 'string' ? null : figures.within,
    sumLimit: chart?.sumLimit ?? null,
    points: chart === null ? [] : pointsOf(chart, hulls),
    stable: chart?.stable ?? null,
    following: chart === null ? null : followingOf(chart.points.map(({ mean }) => mean)),
    specification: newest,
    capability:
      changed && newest !== null
        ? { says: 'specification changed' }
        : orTooFew(() => readingsCapability(spots, limits)),
  };
};

/** The figures of hulls, or why there are none. */
export const ownFigures = (hulls: readonly (readonly number[])[]): ProcessFigures | NonNullable<ChartView['why']> => {
  if (hulls.length < 2) return 'too few hulls';
  try {
    return processFigures(hulls);
  } catch (error) {
    if (error instanceof TooLittle) return 'no spread';
    throw error;
  }
};

/** Where hulls are all the same, or intervals too few to be told apart, the gauge tells no spread. */
const orTooFew = (work: () => ReturnType<typeof readingsCapability>): ChartView['capability'] => {
  try {
    return work();
  } catch (error) {
    if (error instanceof TooLittle) return { says: 'gauge too coarse', steps: 1 };
    throw error;
  }
};

const pointsOf = ({ points }: ProcessChart, hulls: readonly HullRow[]): ChartPoint[] =>
  points.map((point, i) => {
    const { part, hull, at, spots } = hulls[i] as HullRow;
    return { ...{ hull, part, at: at.toISOString(), readings: spots.length }, ...point, ...cusumOf(point) };
  });

const cusumOf = ({ cusum: { high, low, highFor, lowFor, signal }, fired }: ProcessPoint) => ({
  cusum: { high, low, signal, since: high >= low ? highFor : lowFor },
  fired: [...fired],
});
