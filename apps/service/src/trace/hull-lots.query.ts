import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { readAsOne } from '../platform/database/read-as-one.js';
import type { HullLots as Answer, LotInHull } from '@hull-record/contracts';
import { weakestBasis, type Basis } from '@hull-record/trade';
import { standing } from '../platform/facts/standing.js';
import { recomputingParts } from '../platform/recompute/recomputing.js';
import { findHull } from '../platform/lookups/find-hull.js';
import { describeLots, type DescribedLot } from './describe-lots.js';
import { Paths } from './paths.js';
import { possiblyAnyOf } from './possibly-any-of.js';
import { sourcesInPlaces, type SourceInPlace } from './sources-in-places.js';

/** Which received lots are in a hull, how much of each, and by which way they came. */
@Injectable()
export class HullLots {
  constructor(private readonly db: DataSource) {}

  run(number: string): Promise<Answer> {
    return readAsOne(this.db, (tx) => this.read(tx, number));
  }

  private async read(tx: EntityManager, number: string): Promise<Answer> {
    const hullId = await findHull(tx, number);
    const parts = await tx.query<{ part_id: string }[]>(
      `select j.part_id from fact.joint j where j.hull_id = $1 and ${standing('j')}`,
      [hullId],
    );
    const found = await sourcesInPlaces(tx, { parts: parts.map((row) => row.part_id) });
    const paths = await Paths.of(tx, [...new Set(found.flatMap((row) => row.used))]);
    const described = await describeLots(tx, [...new Set(found.map((row) => row.source_id))]);
    const possibly = await possiblyAnyOf(tx, [...described.keys()]);
    const lots = [...groupBySource(found).values()].map((rows) => ({
      ...toLot(rows, described, paths),
      possiblyAnyOf: possibly.get((rows[0] as SourceInPlace).source_id) ?? null,
    }));
    return {
      hull: number,
      lots: lots.sort(byRoleThenLot),
      assumes: 'Assumes well-mixed tanks. Lots under 1e-9 of what they went into are left out.',
      recomputing: await recomputingParts(
        tx,
        parts.map((row) => row.part_id),
      ),
    };
  }
}

const groupBySource = (rows: readonly SourceInPlace[]): Map<string, SourceInPlace[]> => {
  const groups = new Map<string, SourceInPlace[]>();
  for (const row of rows) {
    const key = `${row.source_id}/${row.role}`;
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return groups;
};

const toLot = (
  rows: readonly SourceInPlace[],
  described: ReadonlyMap<string, DescribedLot>,
  paths: Paths,
): Omit<LotInHull, 'possiblyAnyOf'> => {
  const [first] = rows as [SourceInPlace, ...SourceInPlace[]];
  const lot = described.get(first.source_id);
  return {
    lot: lot?.lot ?? first.source_id,
    lotId: first.source_id,
    supplier: lot?.supplier ?? null,
    supplierLot: lot?.supplierLot ?? null,
    material: lot?.material ?? null,
    role: first.role,
    state: lot?.state ?? null,
    kg: rows.reduce((sum, row) => sum + row.kg, 0),
    basis: weakestBasis(rows.map((row) => row.basis as Basis)),
    largestLayerShare: Math.max(...rows.map((row) => row.share)),
    places: rows.map((row) => ({
      part: row.part,
      place: row.label,
      kind: row.into_kind,
      kg: row.kg,
      share: row.share,
      paths: paths.from(row.used, row.source_id),
    })),
  };
};

const byRoleThenLot = (a: LotInHull, b: LotInHull): number => {
  const [x, y] = [`${a.role}/${a.lot}`, `${b.role}/${b.lot}`];
  return x < y ? -1 : x > y ? 1 : 0;
};
