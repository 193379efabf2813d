import type { EntityManager } from 'typeorm';
import { newestOf, versions } from '../../platform/papers/newest-of.sql.js';

/** SQL: places that were ever of part `$1`, the hulls it was ever in, and lots `$2` with all they were ever made of. */
const WALK = `recursive up(id) as (
    select unnest($2::uuid[])
    union select i.input_id from up join fact.lot_input i on i.lot_id = up.id
  ),
  places as (
    select r.id, r.root from fact.layer_record r where r.part_id = $1
    union all select r.id, r.root from fact.repair r where r.part_id = $1
  ),
  defects as (select d.root from fact.defect d where d.part_id = $1),
  readings as (select g.id, g.root, g.equipment_id from fact.reading g where g.of_id in (select root from places)),
  hulls as (select j.hull_id as id from fact.joint j where j.part_id = $1)`;

const TOUCHED = [
  versions('part', 'x.id = $1'),
  ...['part_schedule', 'part_scrapped', 'layer_record', 'repair', 'defect', 'joint', 'nonconformity'].map((table) =>
    versions(table, 'x.part_id = $1'),
  ),
  ...['used', 'repair_defect'].map((table) =>
    versions(table, `x.${table === 'used' ? 'into_id' : 'repair_id'} in (select root from places)`),
  ),
  'select g.id, x.recorded_at from readings g join fact.reading x on x.id = g.id',
  versions('verdict', 'x.about_id in (select root from places union select root from defects)'),
  versions('photo', 'x.defect_id in (select root from defects)'),
  versions('text_redacted', 'x.of_root in (select root from defects)'),
  versions(
    'photo_redacted',
    'x.photo_id in (select f.root from fact.photo f where f.defect_id in (select root from defects))',
  ),
  versions('signature', 'x.layer_record_id in (select id from places)'),
  versions(
    'entry_confirmation',
    `x.unproved_entry_id in (select ue.id from fact.unproved_entry ue join fact.signature s on s.entry_id = ue.entry_id
       where s.layer_record_id in (select id from places))`,
  ),
  ...['acceptance', 're_inspection'].map((table) => versions(table, 'x.repair_id in (select id from places)')),
  versions(
    'disposition',
    `x.of_id in (select root from defects union select root from readings
       union select n.root from fact.nonconformity n where n.part_id = $1)`,
  ),
  versions('equipment_check', 'x.equipment_id in (select equipment_id from readings)'),
  versions('hull_number', 'x.hull_id in (select id from hulls)'),
  versions('lot', 'x.root in (select id from up)'),
  versions('lot_input', 'x.lot_id in (select id from up)'),
];

const NEWEST = newestOf(TOUCHED, WALK);

/**
 * When the newest fact was recorded that a paper of the shop on a part rests on.
 *
 * @param lots those whose suppliers' lots it names; none where it names no lots
 */
export const loadNewestOfPart = async (
  tx: EntityManager,
  partId: string,
  lots: readonly string[] = [],
): Promise<Date> => {
  const [row] = await tx.query<[{ at: Date }]>(NEWEST, [partId, lots]);
  return row.at;
};
