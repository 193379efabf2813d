import type { EntityManager } from 'typeorm';
import { CANDIDATES } from '../lots/candidates.sql.js';
import { PLACE_TABLES } from '../places/places.js';
import { newestOf, versions } from './newest-of.sql.js';

/**
 * SQL: `down`, the lot `$1`, all that was ever made of it or may be; `places` that any of these was ever put into; `up`,
 * all that what is in those places was ever made of: a share rests on that too.
 */
const WALK = `recursive down(id) as (
    select $1::uuid
    union
    select e.id from down cross join lateral (
      select i.lot_id as id from fact.lot_input i where i.input_id = down.id
      union all select c.lot_id from (${CANDIDATES}) c where c.candidate_id = down.id) e
  ),
  places as (select distinct u.into_id as id from fact.used u where u.lot_id in (select id from down)),
  up(id) as (
    select id from down
    union select u.lot_id from fact.used u where u.into_id in (select id from places)
    union select i.input_id from up join fact.lot_input i on i.lot_id = up.id
  ),
  parts as (${Object.values(PLACE_TABLES)
    .map((table) => `select p.part_id as id from fact.${table} p where p.root in (select id from places)`)
    .join(' union ')}),
  hulls as (select j.hull_id as id from fact.joint j where j.part_id in (select id from parts))`;

const OF_LOT = ['lot_state', 'hold', 'lot_retest', 'lot_count', 'lot_loss', 'container'].map((table) =>
  versions(table, 'x.lot_id = $1'),
);

const TOUCHED = [
  ...OF_LOT,
  versions('hold_lift', 'x.hold_id in (select h.root from fact.hold h where h.lot_id = $1)'),
  versions('container_fact', 'x.container_id in (select c.root from fact.container c where c.lot_id = $1)'),
  versions('reading', 'x.of_id = $1'),
  versions('verdict', 'x.about_id = $1'),
  versions('nonconformity', 'x.about_id = $1'),
  versions(
    'disposition',
    `x.of_id in (select g.root from fact.reading g where g.of_id = $1 union select n.root from fact.nonconformity n where n.about_id = $1)`,
  ),
  versions('equipment_check', 'x.equipment_id in (select g.equipment_id from fact.reading g where g.of_id = $1)'),
  versions('lot', 'x.root in (select id from up)'),
  versions('lot', 'x.tank_id = (select l.tank_id from fact.lot l where l.id = $1)'),
  versions('lot_input', 'x.lot_id in (select id from up) or x.input_id = $1'),
  versions('lot_candidate', 'x.lot_id in (select id from down)'),
  versions('used', 'x.into_id in (select id from places) or x.lot_id = $1'),
  ...Object.values(PLACE_TABLES).map((table) => versions(table, 'x.root in (select id from places)')),
  versions('joint', 'x.part_id in (select id from parts)'),
  versions('part', 'x.id in (select id from parts)'),
  versions('hull_number', 'x.hull_id in (select id from hulls)'),
  versions('life_fact', 'x.hull_id in (select id from hulls)'),
];

const NEWEST = newestOf(TOUCHED, WALK);

/** When the newest fact was recorded that the report of a lot rests on. */
export const loadNewestOfLot = async (tx: EntityManager, lotId: string): Promise<Date> => {
  const [row] = await tx.query<[{ at: Date }]>(NEWEST, [lotId]);
  return row.at;
};
