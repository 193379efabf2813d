import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { LEAST_GROUP, type DefectCounts, type DefectCountsQuery } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';

/** Hulls that were made, or begun to be: with a layer on record, begun from one day to another by the clock of the plant. */
const MADE = `made as (
  select h.id from fact.hull h join fact.plant o on o.id = h.plant_id
  where ${standing('h')}
    and ($1::date is null or (h.happened_at at time zone o.time_zone)::date >= $1)
    and ($2::date is null or (h.happened_at at time zone o.time_zone)::date <= $2)
    and exists (select from fact.joint j join fact.layer_record r on r.part_id = j.part_id and ${standing('r')}
      where j.hull_id = h.id and ${standing('j')})),
parts as (
  select m.id as hull, p.id as part, p.mold_id from made m join fact.joint j on j.hull_id = m.id and ${standing('j')}
  join fact.part p on p.id = j.part_id),
found as (
  select parts.hull, parts.part, parts.mold_id, d.root, d.kind, d.zone, d.schedule_layer_id from parts
  join fact.defect d on d.part_id = parts.part and ${standing('d')})`;

/** The materials in the layers of parts; what is left below the floor of composition is nobody's. */
const HELD = `held as (
  select distinct parts.hull, parts.part, r.schedule_layer_id, l.material_id
  from parts join derived.place_source s on s.part_id = parts.part
  join fact.lot l on l.root = s.source_id and ${standing('l')}
  left join fact.layer_record r on r.root = s.place_id and ${standing('r')})`;

const OF_ALL = (name: string): string => `
  select ${name} as name, count(*)::int as defects, (select count(*)::int from made) as hulls from found group by 1`;

const BY: Readonly<Record<DefectCountsQuery['by'], { readonly from: string; readonly select: string }>> = {
  kind: { from: MADE, select: OF_ALL('found.kind') },
  zone: { from: MADE, select: OF_ALL('found.zone') },
  mold: {
    from: MADE,
    select: `
      select d.code as name, (select count(*)::int from found where found.mold_id = d.root) as defects, count(distinct parts.hull)::int as hulls
      from parts join fact.mold d on d.root = parts.mold_id and ${standing('d')} group by d.code, d.root`,
  },
  // A defect whose layer is not known is counted with every material of its part.
  material: {
    from: `${MADE}, ${HELD}`,
    select: `
      select m.code || ', ' || m.name as name,
        (select count(distinct found.root)::int from found join held of_it on of_it.part = found.part and of_it.material_id = m.root
           and (found.schedule_layer_id is null or of_it.schedule_layer_id = found.schedule_layer_id)) as defects,
        count(distinct held.hull)::int as hulls
      from held join fact.material m on m.root = held.material_id and ${standing('m')} group by m.code, m.name, m.root`,
  },
};

/** Defects per hull made, in groups that are large enough to be shown; the most per hull first. */
@Injectable()
export class CountDefects {
  constructor(private readonly db: DataSource) {}

  async run({ by, from, to }: DefectCountsQuery): Promise<DefectCounts> {
    const { from: tables, select } = BY[by];
    const days = [from ?? null, to ?? null];
    type Row = { name: string; defects: number; hulls: number };
    const groups = await this.db.query<Row[]>(`with ${tables} ${select}`, days);
    const [made] = await this.db.query<{ hulls: number }[]>(
      `with ${MADE} select count(*)::int as hulls from made`,
      days,
    );
    const shown = groups.filter(({ hulls }) => hulls >= LEAST_GROUP);
    return {
      by,
      hullsMade: made?.hulls ?? 0,
      groups: shown.map((group) => ({ ...group, perHull: group.defects / group.hulls })).sort(mostFirst),
      notShown: groups.length - shown.length,
    };
  }
}

interface Counted {
  readonly name: string;
  readonly perHull: number;
}

const mostFirst = (a: Counted, b: Counted): number => b.perHull - a.perHull || a.name.localeCompare(b.name, 'en');
