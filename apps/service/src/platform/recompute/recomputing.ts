import type { EntityManager } from 'typeorm';
import type { Recomputing } from '@hull-record/contracts';
import { standing } from '../facts/standing.js';

/** SQL: a place of one of the parts `$1` is out of date. */
const IN_PARTS = `exists (select from work.stale_place s where s.recomputation_id = r.id and not s.done and s.part_id = any($1::uuid[]))`;

/** SQL: something that is made of the lot `$1`, holds some of it, or was thought to, is out of date. */
const DOWNSTREAM = `(
  exists (select from work.stale_lot s where s.recomputation_id = r.id and not s.done and s.lot_id in (select id from down))
  or exists (select from work.stale_place s where s.recomputation_id = r.id and not s.done and (
    exists (select from derived.place_source was where was.place_id = s.place_id and was.source_id = $1)
    or exists (select from fact.used u where u.into_id = s.place_id and u.lot_id in (select id from down) and ${standing('u')}))))`;

const DOWN = `
  with recursive down(id) as (
    select $1::uuid
    union
    select i.lot_id from down join fact.lot_input i on i.input_id = down.id and ${standing('i')}
  )`;

/** SQL: the lot `$1` itself is out of date. */
const OF_LOT = `exists (select from work.stale_lot s where s.recomputation_id = r.id and not s.done and s.lot_id = $1)`;

interface Found {
  readonly id: string;
  readonly since: string;
}

const SAYS =
  'Being recomputed after a correction: figures may change. GET /api/recomputations shows how far it is; ask again then.';

const ask = async (
  tx: EntityManager,
  condition: string,
  given: readonly unknown[],
  walk = '',
): Promise<Recomputing | null> => {
  const running: unknown[] = await tx.query('select from work.recomputation where finished_at is null limit 1');
  if (running.length === 0) return null;
  const found = await tx.query<Found[]>(
    `${walk} select r.id, to_char(r.asked_at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') as since
     from work.recomputation r where r.finished_at is null and ${condition} order by r.asked_at, r.id`,
    [...given],
  );
  const [first] = found;
  return first ? { since: first.since, recomputations: found.map(({ id }) => id), says: SAYS } : null;
};

/** Whether what is known of these parts is being worked out anew. */
export const recomputingParts = (tx: EntityManager, parts: readonly string[]): Promise<Recomputing | null> =>
  ask(tx, IN_PARTS, [parts]);

/** Whether where a lot went is being worked out anew. */
export const recomputingDownstream = (tx: EntityManager, lot: string): Promise<Recomputing | null> =>
  ask(tx, DOWNSTREAM, [lot], DOWN);

/** Whether what a lot is made of is being worked out anew. */
export const recomputingLot = (tx: EntityManager, lot: string): Promise<Recomputing | null> => ask(tx, OF_LOT, [lot]);

/** Whether anything at all is being worked out anew. */
export const recomputingAny = (tx: EntityManager): Promise<Recomputing | null> => ask(tx, 'true', []);
