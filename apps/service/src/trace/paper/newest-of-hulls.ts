import type { EntityManager } from 'typeorm';
import { newestOf, versions } from '../../platform/papers/newest-of.sql.js';
import { PLACE_TABLES } from '../../platform/places/places.js';

/** SQL: parts that were ever in hulls `$1`, their places, and all that was ever used in these, with what that was made of. */
const WALK = `recursive parts as (select j.part_id as id from fact.joint j where j.hull_id = any($1)),
  places as (${Object.values(PLACE_TABLES)
    .map((table) => `select p.root as id from fact.${table} p where p.part_id in (select id from parts)`)
    .join(' union ')}),
  up(id) as (
    select u.lot_id from fact.used u where u.into_id in (select id from places)
    union select i.input_id from up join fact.lot_input i on i.lot_id = up.id
  )`;

const NEWEST = newestOf(
  [
    ...['hull_number', 'life_fact', 'joint'].map((table) => versions(table, 'x.hull_id = any($1)')),
    versions('part', 'x.id in (select id from parts)'),
    ...Object.values(PLACE_TABLES).map((table) => versions(table, 'x.root in (select id from places)')),
    versions('used', 'x.into_id in (select id from places)'),
    versions('lot', 'x.root in (select id from up)'),
    ...['lot_input', 'lot_state', 'lot_candidate'].map((table) => versions(table, 'x.lot_id in (select id from up)')),
  ],
  WALK,
);

/** When the newest fact was recorded that a trace of hulls rests on. */
export const loadNewestOfHulls = async (tx: EntityManager, hulls: readonly string[]): Promise<Date> => {
  const [row] = await tx.query<[{ at: Date }]>(NEWEST, [hulls]);
  return row.at;
};
