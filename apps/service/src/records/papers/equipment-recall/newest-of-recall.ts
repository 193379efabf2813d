import type { EntityManager } from 'typeorm';
import { PLACE_TABLES } from '../../../platform/places/places.js';
import { newestOf, versions } from '../../../platform/papers/newest-of.sql.js';

/** SQL: what was ever done with equipment `$1`, the places it was done in, and their parts and hulls. */
const WALK = `done as (
    select g.id, g.root, g.of_id as of from fact.reading g where g.equipment_id = $1
    union all select u.id, u.root, u.into_id from fact.used u where u.gun_id = $1
    union all select i.id, i.root, i.lot_id from fact.lot_input i where i.gun_id = $1
  ),
  parts as (select d.of as id from done d ${Object.values(PLACE_TABLES)
    .map((table) => `union select p.part_id from fact.${table} p where p.root in (select d.of from done d)`)
    .join(' ')}),
  hulls as (select j.hull_id as id from fact.joint j where j.part_id in (select id from parts))`;

const TOUCHED = [
  versions('equipment', 'x.root = $1'),
  versions('equipment_check', 'x.equipment_id = $1'),
  ...['reading', 'used', 'lot_input'].map((table) => versions(table, 'x.root in (select root from done)')),
  versions(
    'disposition',
    'x.of_id in (select root from done union select k.root from fact.equipment_check k where k.equipment_id = $1)',
  ),
  ...Object.values(PLACE_TABLES).map((table) => versions(table, 'x.root in (select d.of from done d)')),
  versions('joint', 'x.part_id in (select id from parts)'),
  versions('hull_number', 'x.hull_id in (select id from hulls)'),
];

const NEWEST = newestOf(TOUCHED, WALK);

/** When the newest fact was recorded that the recall list of a piece of equipment rests on. */
export const loadNewestOfRecall = async (tx: EntityManager, equipmentId: string): Promise<Date> => {
  const [row] = await tx.query<[{ at: Date }]>(NEWEST, [equipmentId]);
  return row.at;
};
