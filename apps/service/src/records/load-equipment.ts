import type { EntityManager } from 'typeorm';
import { standing } from '../platform/facts/standing.js';

/** Equipment that something of a hull was read or sprayed with, with the last check before that and the first after. */
export interface EquipmentRow {
  readonly code: string;
  readonly kind: string;
  readonly description: string;
  readonly last_used: Date;
  readonly checked_at: Date | null;
  readonly checked_good: boolean | null;
  readonly checked_what: string | null;
  readonly next_at: Date | null;
  readonly next_good: boolean | null;
}

const EQUIPMENT = `
  with used as (
    select g.equipment_id as id, g.happened_at as at from fact.reading g
      where g.of_id = any($1) and g.equipment_id is not null and ${standing('g', '$2')}
    union all
    select u.gun_id, u.happened_at from fact.used u
      where u.into_id = any($1) and u.gun_id is not null and ${standing('u', '$2')})
  select e.code, e.kind, e.description, w.last_used, before.happened_at as checked_at, before.good as checked_good,
    before.what as checked_what, after.happened_at as next_at, after.good as next_good
  from (select id, max(at) as last_used from used group by id) w
  join fact.equipment e on e.id = w.id
  left join lateral (select k.* from fact.equipment_check k where k.equipment_id = e.id and k.happened_at <= w.last_used
    and ${standing('k', '$2')} order by k.happened_at desc, k.id limit 1) before on true
  left join lateral (select k.* from fact.equipment_check k where k.equipment_id = e.id and k.happened_at > w.last_used
    and ${standing('k', '$2')} order by k.happened_at, k.id limit 1) after on true
  order by e.code`;

/** Equipment used on places of a hull, as recorded by an instant. */
export const loadEquipment = (tx: EntityManager, places: readonly string[], asOf: string): Promise<EquipmentRow[]> =>
  tx.query(EQUIPMENT, [places, asOf]);
