import type { EntityManager } from 'typeorm';
import type { Climate, ScheduleLayer } from '@hull-record/contracts';
import type { Place, Skin } from '@hull-record/trade';
import { isSuspect } from '../equipment/suspect.sql.js';
import { identityOf, isUnproved } from '../facts/unproved.js';
import { standing } from '../facts/standing.js';
import { expiryAt } from '../store/holds.sql.js';
import { layersOf, scheduleOf } from '../layers/layers-of-part.sql.js';
import { scheduleLayerJson } from '../layers/schedule-layer.sql.js';

/** Anything later than every fact: what stands now. */
export const NOW = 'infinity';

export interface PartRow {
  readonly id: string;
  readonly number: string;
  readonly kind: string;
  readonly model: string;
  readonly model_name: string;
  readonly mold: string;
  readonly version: number;
  readonly skin: Skin | null;
  readonly hull_id: string | null;
  readonly hull: string | null;
  readonly joint: string | null;
  readonly joined_at: Date | null;
  readonly joined_by: string[];
  readonly layers: (ScheduleLayer & { id: string })[];
}

const LAYERS = `
  select json_agg(${scheduleLayerJson('y')} order by y.position)
  from ${layersOf('p', '$2')} y`;

const PARTS = `
  select p.id, p.number, p.kind, m.code as model, m.name as model_name, o.code as mold, s.version, m.skins -> p.kind as skin,
    j.hull_id, (select n.as_printed from fact.hull_number n where n.hull_id = j.hull_id and n.kind = 'hull number') as hull,
    j.root as joint, j.happened_at as joined_at,
    array(select w.badge from fact.person w where w.id = any(j.makers) order by w.badge) as joined_by, (${LAYERS}) as layers
  from fact.part p
  join fact.model m on m.id = p.model_id
  join fact.mold o on o.id = p.mold_id
  join fact.schedule s on s.id = ${scheduleOf('p', '$2')}
  left join fact.joint j on j.part_id = p.id and ${standing('j', '$2')}
  where p.id = any($1) and p.recorded_at <= $2 order by j.happened_at nulls last, p.number`;

/** Parts with what they were to be made of. */
export const loadParts = (tx: EntityManager, parts: readonly string[], asOf: string): Promise<PartRow[]> =>
  tx.query(PARTS, [parts, asOf]);

export interface LayerRow {
  readonly id: string;
  readonly root: string;
  readonly part_id: string;
  readonly schedule_layer_id: string;
  readonly started_at: Date;
  readonly ended_at: Date;
  readonly recorded_at: Date;
  readonly done_by: string[];
  readonly entered_by: string;
  readonly climate: Climate | null;
  readonly area: string | null;
  readonly surface_prepared: string | null;
  readonly note: string | null;
  readonly signed_by: string | null;
  readonly signed_at: Date | null;
  readonly signature_identity: string | null;
}

const LAYER_RECORDS = `
  select r.id, r.root, r.part_id, r.schedule_layer_id, r.started_at, r.ended_at, r.recorded_at,
    array(select w.badge from fact.person w where w.id = any(r.makers) order by w.badge) as done_by,
    e.badge as entered_by, r.climate_entered as climate, r.area, r.surface_prepared, r.note,
    sp.badge as signed_by, s.happened_at as signed_at, ${identityOf('s.entry_id', 'sj.identity', '$2')} as signature_identity
  from fact.layer_record r
  join fact.journal g on g.id = r.entry_id join fact.person e on e.id = g.person_id
  left join lateral (select s.* from fact.signature s where s.layer_record_id = r.id and ${standing('s', '$2')}
    order by ${isUnproved('s.entry_id', '$2')}, s.recorded_at desc, s.id limit 1) s on true
  left join fact.person sp on sp.id = s.signed_by
  left join fact.journal sj on sj.id = s.entry_id
  where r.part_id = any($1) and ${standing('r', '$2')} order by r.started_at, r.root`;

/** Layers of parts as they were made, with the signature of each hold point. */
export const loadLayerRecords = (tx: EntityManager, parts: readonly string[], asOf: string): Promise<LayerRow[]> =>
  tx.query(LAYER_RECORDS, [parts, asOf]);

export interface UsedRow {
  readonly id: string;
  readonly root: string;
  readonly into_id: string;
  readonly lot_id: string;
  readonly lot: string;
  readonly material: string | null;
  readonly tank: string | null;
  readonly gun: string | null;
  readonly container: string | null;
  /** Last day of use of the lot, as known when it was used. */
  readonly last_day: string | null;
  readonly quantity: string;
  readonly unit: string;
  readonly basis: string;
  readonly kg: number;
  readonly happened_at: Date;
}

const USED = `
  select u.id, u.root, u.into_id, u.lot_id, l.code as lot, m.name as material, t.code as tank,
    e.code as gun, k.label as container, ${expiryAt('l', 'u.happened_at', '$2')}::text as last_day, u.quantity::text, u.unit, u.basis, u.kg, u.happened_at
  from fact.used u
  join fact.lot l on l.root = u.lot_id and ${standing('l', '$2')}
  left join fact.tank lt on lt.id = l.tank_id
  left join fact.material m on m.root = coalesce(l.material_id, lt.material_id) and ${standing('m', '$2')}
  left join fact.tank t on t.id = u.tank_id
  left join fact.equipment e on e.id = u.gun_id
  left join fact.container k on k.root = u.container_id and ${standing('k', '$2')}
  where u.into_id = any($1) and ${standing('u', '$2')} order by u.happened_at, l.code, u.root`;

/** What was used in layers, joints and repairs. */
export const loadUsed = (tx: EntityManager, places: readonly string[], asOf: string): Promise<UsedRow[]> =>
  tx.query(USED, [places, asOf]);

export interface ReadingRow {
  readonly id: string;
  readonly root: string;
  readonly of_id: string;
  readonly what: string;
  readonly spot: number;
  readonly value: string;
  readonly below: string | null;
  readonly unit: string;
  readonly si_value: number;
  readonly place: Place | null;
  readonly equipment: string | null;
  readonly verdict: string;
  readonly crosses_limit: boolean;
  readonly rule: {
    readonly limits: { readonly min?: number; readonly max?: number; readonly unit: string } | null;
    readonly text: string;
  };
  readonly by: string;
  readonly happened_at: Date;
  readonly concession: string | null;
  readonly suspect: boolean;
}

const READINGS = `
  select g.id, g.root, g.of_id, g.what, g.spot, g.value::text, g.below::text, g.unit, g.si_value, g.place, q.code as equipment, g.verdict,
    g.crosses_limit, g.rule, w.badge as by, g.happened_at,
    (select o.concession from fact.disposition o where o.of_id = g.root and ${standing('o', '$2')} order by o.recorded_at desc limit 1) as concession,
    ${isSuspect('g.equipment_id', 'g.happened_at', '$2')} as suspect
  from fact.reading g
  join fact.journal e on e.id = g.entry_id join fact.person w on w.id = e.person_id
  left join fact.equipment q on q.id = g.equipment_id
  where g.of_id = any($1) and ${standing('g', '$2')} order by g.what, g.spot, g.root`;

/** Readings of layers and repairs. */
export const loadReadings = (tx: EntityManager, of: readonly string[], asOf: string): Promise<ReadingRow[]> =>
  tx.query(READINGS, [of, asOf]);
