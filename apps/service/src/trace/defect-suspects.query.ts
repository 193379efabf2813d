import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { readAsOne } from '../platform/database/read-as-one.js';
import type { DefectSuspects as Answer } from '@hull-record/contracts';
import { distanceOnSkin, type Place } from '@hull-record/trade';
import { standing } from '../platform/facts/standing.js';
import { recomputingAny } from '../platform/recompute/recomputing.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { describeLots } from './describe-lots.js';
import { otherHullsWith } from './other-hulls.js';
import { Paths } from './paths.js';
import { possiblyAnyOf } from './possibly-any-of.js';
import { sourcesInPlaces, type SourceInPlace } from './sources-in-places.js';

/** A repair counts as being at the place of a defect when its own defect lies within this, mm. Common practice: a hand's width past a ground edge. */
const NEAR_MM = 300;

interface Defect {
  readonly id: string;
  readonly root: string;
  readonly part_id: string;
  readonly schedule_layer_id: string | null;
  readonly place: Place;
  readonly number: number;
}

/** From one defect: the lots in its layer and place, and the other hulls that hold each. */
@Injectable()
export class DefectSuspects {
  constructor(private readonly db: DataSource) {}

  run(id: string): Promise<Answer> {
    return readAsOne(this.db, (tx) => this.read(tx, id));
  }

  private async read(tx: EntityManager, id: string): Promise<Answer> {
    const defect = await findStanding<Defect>(tx, 'defect', id);
    const about = await describeDefect(tx, defect);
    const layers = await layersAt(tx, defect);
    const repairs = await repairsNear(tx, defect);
    const found = await sourcesInPlaces(tx, { places: [...layers, ...repairs] });
    const paths = await Paths.of(tx, [...new Set(found.flatMap((row) => row.used))]);
    const lots = await lotsOf(tx, found, paths, about.hull_id);
    return {
      defect: `D${defect.number}`,
      hull: about.hull,
      part: about.part,
      layer: about.layer,
      looksAt: looksAt(about.layer, repairs.length),
      // Every hull of the plant is counted among the others.
      recomputing: await recomputingAny(tx),
      lots,
    };
  }
}

const lotsOf = async (
  tx: EntityManager,
  found: readonly SourceInPlace[],
  paths: Paths,
  hullId: string | null,
): Promise<Answer['lots']> => {
  const ids = [...new Set(found.map((row) => row.source_id))];
  const described = await describeLots(tx, ids);
  const possibly = await possiblyAnyOf(tx, ids);
  const others = await otherHullsWith(tx, ids, hullId);
  const lots = ids.map((source) => {
    const rows = found.filter((row) => row.source_id === source);
    const [first] = rows as [SourceInPlace, ...SourceInPlace[]];
    const otherHulls = others.get(source) ?? [];
    const lot = described.get(source);
    return {
      ...{
        lot: lot?.lot ?? source,
        lotId: source,
        supplierLot: lot?.supplierLot ?? null,
        material: lot?.material ?? null,
        role: first.role,
      },
      kg: rows.reduce((sum, row) => sum + row.kg, 0),
      share: Math.max(...rows.map((row) => row.share)),
      places: rows.map((row) => ({ place: row.label, kind: row.into_kind, paths: paths.from(row.used, source) })),
      ...{ otherHulls, otherHullCount: otherHulls.length, possiblyAnyOf: possibly.get(source) ?? null },
    };
  });
  return lots.sort((a, b) => b.share - a.share || (a.lot < b.lot ? -1 : 1));
};

const looksAt = (layer: string | null, repairs: number): string =>
  [
    layer === null ? 'every layer of the part, since the defect names none' : `layer ${layer} of the part`,
    repairs === 0 ? `no repair within ${NEAR_MM} mm` : `${repairs} repair(s) within ${NEAR_MM} mm`,
  ].join(', and ');

interface About {
  readonly hull: string | null;
  readonly hull_id: string | null;
  readonly part: string;
  readonly layer: string | null;
}

const describeDefect = async (tx: EntityManager, defect: Defect): Promise<About> => {
  const [about] = await tx.query<[About]>(
    `select p.number as part, j.hull_id, (select n.as_printed from fact.hull_number n where n.hull_id = j.hull_id and n.kind = 'hull number') as hull,
       (select y.code from fact.schedule_layer y where y.id = $2) as layer
     from fact.part p left join fact.joint j on j.part_id = p.id and ${standing('j')} where p.id = $1`,
    [defect.part_id, defect.schedule_layer_id],
  );
  return about;
};

const layersAt = async (tx: EntityManager, defect: Defect): Promise<readonly string[]> => {
  const rows = await tx.query<{ root: string }[]>(
    `select r.root from fact.layer_record r
     where r.part_id = $1 and ($2::uuid is null or r.schedule_layer_id = $2) and ${standing('r')}`,
    [defect.part_id, defect.schedule_layer_id],
  );
  return rows.map((row) => row.root);
};

/** Repairs of defects near this one; not the repair of this defect itself, which came after it. */
const repairsNear = async (tx: EntityManager, defect: Defect): Promise<readonly string[]> => {
  const rows = await tx.query<{ repair: string; place: Place }[]>(
    `select distinct r.root as repair, d.place::jsonb as place
     from fact.repair_defect x
     join fact.repair r on r.root = x.repair_id and ${standing('r')}
     join fact.defect d on d.root = x.defect_id and d.part_id = $1 and d.root <> $2 and ${standing('d')}
     where ${standing('x')} and not exists (select from fact.repair_defect own where own.repair_id = r.root and own.defect_id = $2)`,
    [defect.part_id, defect.root],
  );
  return [
    ...new Set(rows.filter(({ place }) => distanceOnSkin(place, defect.place) <= NEAR_MM).map((row) => row.repair)),
  ];
};
