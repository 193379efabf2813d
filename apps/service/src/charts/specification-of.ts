import type { ChartView } from '@hull-record/contracts';
import { fromSi, toSi, type UnitCode } from '@hull-record/trade';
import type { HullRow, SpotRow } from './load-hulls.js';

type Specification = ChartView['specification'];

/** What single readings are held to: nothing, one specification, or several among the readings shown. */
export interface Held {
  readonly newest: Specification;
  readonly changed: boolean;
}

/** The limits that the readings were judged by, in a unit; a verdict keeps its own for ever, so they may differ. */
export const specificationOf = (hulls: readonly HullRow[], unit: UnitCode): Held => {
  const spots = hulls.flatMap((hull) => hull.spots);
  const different = new Set(spots.map(({ low, high, limitUnit }) => JSON.stringify([low, high, limitUnit])));
  return { newest: inUnit(spots.at(-1), unit), changed: different.size > 1 };
};

const inUnit = (spot: SpotRow | undefined, unit: UnitCode): Specification => {
  if (!spot?.limitUnit || (spot.low === null && spot.high === null)) return null;
  const { limitUnit } = spot;
  const into = (limit: number | null): number | null =>
    limit === null ? null : limitUnit === unit ? limit : fromSi(toSi(limit, limitUnit), unit);
  return { min: into(spot.low), max: into(spot.high), source: spot.source ?? '' };
};
