import type { EntityManager } from 'typeorm';
import { standing } from '../facts/standing.js';
import { standingPlaces } from '../places/places.js';

/** SQL: the places of parts `$1` that stand. */
export const PLACES_OF_PARTS = standingPlaces('p.part_id = any($1)');

const UP = `
  with recursive up(id) as (
    select u.lot_id from (${PLACES_OF_PARTS}) places join fact.used u on u.into_id = places.place_id and ${standing('u')}
    union
    select i.input_id from up join fact.lot_input i on i.lot_id = up.id and ${standing('i')}
  )
  select id from up`;

/** Every lot in these parts, received or made, however little of it: membership, walked without fractions. */
export const lotsInParts = async (tx: EntityManager, parts: readonly string[]): Promise<readonly string[]> => {
  const rows = await tx.query<{ id: string }[]>(UP, [parts]);
  return rows.map((row) => row.id);
};
