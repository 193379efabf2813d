import type { EntityManager } from 'typeorm';
import type { OutsideRepair, REPAIR_PHOTOS, TouchedSpots, RepairGeometry } from '@hull-record/contracts';
import type { Place } from '@hull-record/trade';
import { standing } from '../facts/standing.js';
import { identityOf } from '../facts/unproved.js';
import { defectMark, repairMark, touchUpMark } from '../marks/marks.js';
import { asksOf } from '../release/asks.sql.js';
import { goOnOf } from '../release/go-on.sql.js';
import { shownOf, redactedOn } from '../photos/shown-of.sql.js';
import { textOf } from '../texts/text-of.sql.js';
import { isConceded, isRepaired } from '../release/open.js';

export type DefectState = 'open' | 'repair to be accepted' | 'repaired' | 'concession' | 'scrapped';

/** `at` is an ISO 8601 instant, `redactedOn` a day or null. */
interface PhotoOfDefect {
  readonly id: string;
  readonly originalSha256: string;
  readonly shownSha256: string;
  readonly redactedOn: string | null;
  readonly at: string;
  readonly by: string;
}

export interface DefectRow {
  readonly id: string;
  readonly mark: string;
  readonly part_id: string;
  readonly part: string;
  readonly layer: string | null;
  readonly kind: string;
  readonly place: Place;
  readonly percent_of_length: number | null;
  readonly zone: string;
  readonly length_mm: number | null;
  readonly width_mm: number | null;
  readonly depth_mm: number | null;
  readonly grade: string | null;
  readonly counted: number | null;
  readonly counted_area_m2: number | null;
  readonly note: string | null;
  /** In the order in which they were added. */
  readonly photos: PhotoOfDefect[];
  readonly state: DefectState;
  readonly disposition: string | null;
  readonly concession: string | null;
  readonly repairs: string[];
  readonly asks: string[];
  readonly bucket_or_gun: string | null;
  readonly happened_at: Date;
  readonly by: string;
}

const DEFECTS = `
  select d.root as id, ${defectMark('d')} as mark, d.part_id, p.number as part, y.code as layer, d.kind, d.place, d.percent_of_length, d.zone,
    d.length_mm, d.width_mm, d.depth_mm, d.grade, d.counted, d.counted_area_m2, ${textOf('d', 'note')} as note,
    coalesce((select json_agg(json_build_object('id', f.id, 'originalSha256', f.original_sha256, 'shownSha256', ${shownOf('f')}, 'redactedOn', ${redactedOn('f')},
        'at', f.happened_at, 'by', fw.badge) order by f.recorded_at, f.id)
      from fact.photo f join fact.journal fe on fe.id = f.entry_id join fact.person fw on fw.id = fe.person_id where f.defect_id = d.root and ${standing('f', '$3')}), '[]') as photos,
    case
      when ${isConceded('d', '$3')} then 'concession'
      when o.disposition = 'scrap' then 'scrapped'
      when ${isRepaired('d', '$3')} then 'repaired'
      when exists (select from fact.repair_defect x join fact.repair r on r.root = x.repair_id and ${standing('r', '$3')}
        where x.defect_id = d.root and ${standing('x', '$3')}
          and not exists (select from fact.acceptance a where a.repair_id = r.id and ${standing('a', '$3')})) then 'repair to be accepted'
      else 'open' end as state,
    o.disposition, o.concession,
    array(select ${repairMark('r')} from fact.repair_defect x join fact.repair r on r.root = x.repair_id and ${standing('r', '$3')}
      where x.defect_id = d.root and ${standing('x', '$3')} order by r.number) as repairs,
    ${asksOf('d')} as asks,
    (select concat_ws(', ', l.code, g.code, k.note) from fact.ask_answer k left join fact.lot l on l.id = k.lot_id left join fact.equipment g on g.id = k.gun_id
      where k.defect_id = d.root and ${standing('k', '$3')} order by k.recorded_at desc, k.id limit 1) as bucket_or_gun,
    d.happened_at, w.badge as by
  from fact.defect d
  join fact.part p on p.id = d.part_id
  join fact.journal e on e.id = d.entry_id join fact.person w on w.id = e.person_id
  left join fact.schedule_layer y on y.id = d.schedule_layer_id
  left join lateral (select * from fact.disposition o where o.of_id = d.root and ${standing('o', '$3')} order by o.recorded_at desc limit 1) o on true
  where (d.part_id = any($1) or d.root = any($2)) and ${standing('d', '$3')} order by d.part_id, d.number`;

/** Defects of parts, or some by their roots, with what became of each. */
export const loadDefects = (
  tx: EntityManager,
  of: { parts?: readonly string[]; roots?: readonly string[] },
  asOf: string,
): Promise<DefectRow[]> => tx.query(DEFECTS, [of.parts ?? [], of.roots ?? [], asOf]);

/** `redactedOn` is a day or null. */
interface PhotoOfRepair {
  readonly id: string;
  readonly shows: (typeof REPAIR_PHOTOS)[number];
  readonly originalSha256: string;
  readonly redactedOn: string | null;
}

export interface RepairRow {
  readonly id: string;
  readonly mark: string;
  readonly part_id: string;
  readonly defects: string[];
  readonly procedure: string;
  readonly taper_ratio: number | null;
  readonly grind_out_mm: { lengthMm: number; widthMm: number; depthMm: number } | null;
  readonly geometry: RepairGeometry | null;
  readonly plies: string[];
  readonly done_by: string[];
  readonly accepted: boolean | null;
  readonly accepted_by: string | null;
  readonly accepted_at: Date | null;
  readonly acceptance_note: string | null;
  readonly acceptance_identity: string | null;
  readonly outside: OutsideRepair | null;
  /** Of an outside repair: the dealer who reported it, by id, by code, and as papers name one. */
  readonly dealer_id: string | null;
  readonly reported_by: string | null;
  readonly reporter: string | null;
  readonly note: string | null;
  /** In the order in which they were added. */
  readonly photos: PhotoOfRepair[];
  readonly re_inspections: { passed: boolean; by: string; at: string; note: string | null }[];
  readonly happened_at: Date;
}

const REPAIRS = `
  select r.root as id, ${repairMark('r')} as mark, r.part_id,
    array(select ${defectMark('d')} from fact.repair_defect x join fact.defect d on d.root = x.defect_id and ${standing('d', '$2')}
      where x.repair_id = r.root and ${standing('x', '$2')} order by d.number) as defects,
    r.procedure, r.taper_ratio, r.grind_out_mm, r.geometry, r.plies, r.outside,
    r.dealer_id, b.code as reported_by, b.name || ' (' || b.code || ')' as reporter, ${textOf('r', 'note')} as note,
    coalesce((select json_agg(json_build_object('id', f.id, 'shows', f.shows, 'originalSha256', f.original_sha256, 'redactedOn', ${redactedOn('f')})
        order by f.recorded_at, f.id)
      from fact.repair_photo f where f.repair_id = r.root and ${standing('f', '$2')}), '[]') as photos,
    coalesce((select json_agg(json_build_object('passed', ri.passed, 'by', iw.badge, 'at', ri.happened_at, 'note', ri.note) order by ri.happened_at, ri.id)
      from fact.re_inspection ri join fact.person iw on iw.id = ri.inspected_by where ri.repair_id = r.id and ${standing('ri', '$2')}), '[]') as re_inspections,
    array(select w.badge from fact.person w where r.outside is null and w.id = any(r.makers) order by w.badge) as done_by,
    a.accepted, aw.badge as accepted_by, a.happened_at as accepted_at, a.note as acceptance_note, ${identityOf('a.entry_id', 'ae.identity', '$2')} as acceptance_identity, r.happened_at
  from fact.repair r
  left join fact.dealer b on b.id = r.dealer_id
  left join fact.acceptance a on a.repair_id = r.id and ${standing('a', '$2')}
  left join fact.person aw on aw.id = a.accepted_by
  left join fact.journal ae on ae.id = a.entry_id
  where r.part_id = any($1) and ${standing('r', '$2')} order by r.part_id, r.number`;

/** Repairs of parts, with the acceptance of each. */
export const loadRepairs = (tx: EntityManager, parts: readonly string[], asOf: string): Promise<RepairRow[]> =>
  tx.query(REPAIRS, [parts, asOf]);

export interface NonconformityRow {
  readonly id: string;
  readonly part_id: string | null;
  readonly rule: string;
  readonly detail: string;
  readonly happened_at: Date;
  readonly disposition: string | null;
  readonly concession: string | null;
  readonly go_on: { by: string; reason: string; at: string } | null;
}

const NONCONFORMITIES = `
  select c.root as id, c.part_id, c.rule, c.detail, c.happened_at, o.disposition, o.concession, ${goOnOf('c')} as go_on
  from fact.nonconformity c
  left join lateral (select * from fact.disposition o where o.of_id = c.root and ${standing('o', '$2')} order by o.recorded_at desc limit 1) o on true
  where c.part_id = any($1) and ${standing('c', '$2')} order by c.happened_at, c.rule, c.detail, c.root`;

/** Nonconformities of parts, with what was decided about each. */
export const loadNonconformities = (
  tx: EntityManager,
  parts: readonly string[],
  asOf: string,
): Promise<NonconformityRow[]> => tx.query(NONCONFORMITIES, [parts, asOf]);

export interface TouchUpRow {
  readonly id: string;
  readonly mark: string;
  readonly part_id: string;
  readonly spots: TouchedSpots[];
  readonly note: string | null;
  readonly done_by: string[];
  readonly accepted: boolean | null;
  readonly accepted_by: string | null;
  readonly accepted_at: Date | null;
  readonly acceptance_note: string | null;
  readonly acceptance_identity: string | null;
  readonly happened_at: Date;
}

const TOUCH_UPS = `
  select t.root as id, ${touchUpMark('t')} as mark, t.part_id, t.spots, t.note,
    array(select w.badge from fact.person w where w.id = any(t.makers) order by w.badge) as done_by,
    a.accepted, aw.badge as accepted_by, a.happened_at as accepted_at, a.note as acceptance_note, ${identityOf('a.entry_id', 'ae.identity', '$2')} as acceptance_identity, t.happened_at
  from fact.touch_up t
  left join fact.touch_up_acceptance a on a.touch_up_id = t.id and ${standing('a', '$2')}
  left join fact.person aw on aw.id = a.accepted_by
  left join fact.journal ae on ae.id = a.entry_id
  where t.part_id = any($1) and ${standing('t', '$2')} order by t.part_id, t.number`;

/** Touch-ups of parts, with the acceptance of each entry. */
export const loadTouchUps = (tx: EntityManager, parts: readonly string[], asOf: string): Promise<TouchUpRow[]> =>
  tx.query(TOUCH_UPS, [parts, asOf]);
