import type { Fact, WrittenRow } from '../facts/fact.js';
import { standingPlaces } from '../places/places.js';

const FOLLOW_LOTS = `
  insert into work.stale_lot (recomputation_id, lot_id, tank, done)
  select distinct s.recomputation_id, made.lot_id, made.tank, false
  from unnest($1::uuid[], $2::uuid[], $3::boolean[]) made(lot_id, input_id, tank)
  join work.stale_lot s on s.lot_id = made.input_id and not s.done
  on conflict do nothing`;

const FOLLOW_PLACES = `
  insert into work.stale_place (recomputation_id, place_id, part_id, done)
  select distinct s.recomputation_id, place.place_id, place.part_id, false
  from unnest($1::uuid[], $2::uuid[]) used(place_id, lot_id)
  join work.stale_lot s on s.lot_id = used.lot_id and not s.done
  join (${standingPlaces('p.root = any($1)')}) place on place.place_id = used.place_id
  on conflict do nothing`;

/**
 * Marks what is made of a lot whose composition is out of date, or uses one: it is worked out anew after that lot.
 *
 * The job composes lots alone in the plant, so that a fact sees a lot either before, marked, or after, composed.
 */
export const followStale = async (fact: Fact): Promise<void> => {
  const made = fact.wrote('lot_input');
  const used = fact.wrote('used');
  if (made.length + used.length === 0 || !(await anyWaits(fact))) return;
  const tanks = new Set(fact.wrote('lot').flatMap((row) => (row.values['origin'] === 'tank' ? [row.id] : [])));
  const of = (rows: readonly WrittenRow[], column: string): unknown[] => rows.map(({ values }) => values[column]);
  const isTank = made.map(({ values }) => tanks.has(String(values['lot_id'])));
  await fact.tx.query(FOLLOW_LOTS, [of(made, 'lot_id'), of(made, 'input_id'), isTank]);
  await fact.tx.query(FOLLOW_PLACES, [of(used, 'into_id'), of(used, 'lot_id')]);
};

const anyWaits = async ({ tx, author }: Fact): Promise<boolean> => {
  const found: unknown[] = await tx.query(
    'select from work.recomputation where plant_id = $1 and finished_at is null limit 1',
    [author.plantId],
  );
  return found.length > 0;
};
