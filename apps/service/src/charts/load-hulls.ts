import type { EntityManager } from 'typeorm';
import { fromSi, toSi, type UnitCode } from '@hull-record/trade';
import type { SpotRead } from '@hull-record/statistics';
import { parametersOf, type ChartOf } from './chart-of.js';
import { hullsOf } from './spots.sql.js';

/** So many hulls are on a chart at most, the newest; of more the older ones are left out, and counted. */
export const HULLS_SHOWN = 500;

/** A spot as the record has it: SI, with the limits that it was judged by. */
export interface SpotRow {
  readonly si: number;
  readonly below: number | null;
  readonly unit: UnitCode;
  readonly low: number | null;
  readonly high: number | null;
  readonly limitUnit: UnitCode | null;
  readonly source: string | null;
}

/** A hull, or a part that is in none yet, with its spots. */
export interface HullRow {
  readonly part: string;
  readonly hull: string | null;
  readonly at: Date;
  readonly spots: readonly SpotRow[];
}

/** Hulls in the order they were read, and how many older ones there are. */
export interface LoadedHulls {
  readonly hulls: readonly HullRow[];
  readonly leftOut: number;
}

/** Loads the hulls of a chart, of a period by the days of the plant. */
export const loadHulls = async (
  tx: EntityManager,
  of: ChartOf,
  { from = null, to = null }: { readonly from?: string | null | undefined; readonly to?: string | null | undefined },
): Promise<LoadedHulls> => {
  const rows = await tx.query<(HullRow & { all: number })[]>(hullsOf(of.what), [
    ...[...parametersOf(of), from, to, HULLS_SHOWN],
  ]);
  const hulls = rows.map(({ part, hull, at, spots }) => ({ part, hull, at, spots })).reverse();
  return { hulls, leftOut: (rows[0]?.all ?? 0) - hulls.length };
};

/** Spots of each hull in a unit; the middle stands for an interval between two marks of a gauge. */
export const spotsIn = (hulls: readonly HullRow[], unit: UnitCode): readonly (readonly SpotRead[])[] =>
  hulls.map(({ spots }) =>
    spots.map(({ si, below }) => {
      const from = fromSi(si, unit);
      if (below === null) return { value: from };
      const to = fromSi(below, unit);
      return { value: (from + to) / 2, from, to };
    }),
  );

/** The same as single numbers. */
export const valuesIn = (hulls: readonly HullRow[], unit: UnitCode): readonly (readonly number[])[] =>
  spotsIn(hulls, unit).map((spots) => spots.map(({ value }) => value));

/** A spread of an SI quantity in a unit, without the offset that a temperature has. */
export const spreadIn = (si: number, unit: UnitCode): number => si / factorOf(unit);
/** A spread in a unit in SI. */
export const spreadToSi = (spread: number, unit: UnitCode): number => spread * factorOf(unit);

const factorOf = (unit: UnitCode): number => toSi(1, unit) - toSi(0, unit);
