import type { EntityManager } from 'typeorm';
import { standing } from '../facts/standing.js';

/** SQL: the layers, joints and repairs of parts `$1` that stand. */
export const PLACES_OF_PARTS = `
  select r.root as id, r.part_id from fact.layer_record r where r.part_id = any($1) and ${standing('r')}
  union all select j.root, j.part_id from fact.joint j where j.part_id = any($1) and ${standing('j')}
  union all select p.root, p.part_id from fact.repair p where p.part_id = any($1) and ${standing('p')}`;

const UP = `
  with recursive up(id) as (
    select u.lot_id from (${PLACES_OF_PARTS}) places join fact.used u on u.into_id = places.id and ${standing('u')}
    union
    select i.input_id from up join fact.lot_input i on i.lot_id = up.id and ${standing('i')}
  )
  select id from up`;

/** Every lot in these parts, received or made, however little of it: membership, walked without fractions. */
export const lotsInParts = async (tx: EntityManager, parts: readonly string[]): Promise<readonly string[]> => {
  const rows = await tx.query<{ id: string }[]>(UP, [parts]);
  return rows.map((row) => row.id);
};
