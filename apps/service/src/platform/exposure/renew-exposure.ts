import type { DataSource, EntityManager } from 'typeorm';
import { MEMORY } from '../database/memory.sql.js';
import { DAY, INTO_WHAT, ITS_PLACE, PARTS_OF_WHOLE, SHARE } from './share.sql.js';
import { NUMBERS_LOCK } from './numbers-lock.sql.js';
import { NOTHING_PACKED } from './stale.sql.js';
import { bytesOfStep } from './steps.sql.js';

/** Shares below it are not packed: of them nothing is said but by who asks for less. */
export const LEAST_PACKED = 0.01;

/** So many sources in one transaction: a plant of twenty years has thousands, in a hundred thousand places each. */
const SOURCES_AT_ONCE = 50;

/** Marks that are done with when these sources are packed: what is marked from now on is not seen by it, and stays. */
const MARKS = 'select id from derived.stale_exposure where source_id = any($1)';

const NUMBER = `
  insert into derived.part_number (part_id)
  select distinct s.part_id from derived.place_source s
  where s.source_id = any($1) and not exists (select from derived.part_number n where n.part_id = s.part_id)
  on conflict do nothing`;

const REMOVE = 'delete from derived.exposure where source_id = any($1)';

const IN_ORDER = 'order by e.number, e.day, e.share';
const steps = (column: string): string => `string_agg(${bytesOfStep(`e.${column}_step`)}, '' ${IN_ORDER})`;
const step = (column: string): string => `e.${column} - lag(e.${column}, 1, 0) over lot as ${column}_step`;

const PACK = `
  insert into derived.exposure (source_id, role, kind, into_what, parts, days, last_day, shares)
  select e.source_id, e.role, e.kind, e.into_what, ${steps('number')}, ${steps('day')}, max(e.day),
    case when min(e.share) = max(e.share) then ${bytesOfStep('min(e.share)')} else ${steps('share')} end
  from (
    select e.*, ${step('number')}, ${step('day')}, ${step('share')}
    from (
      select s.source_id, s.role, q.kind, ${INTO_WHAT} as into_what, n.number, ${DAY} as day, ${SHARE} as share
      from derived.place_source s ${ITS_PLACE}
      join fact.part q on q.id = s.part_id join derived.part_number n on n.part_id = s.part_id
      where s.source_id = any($1)) e
    where e.share >= ${LEAST_PACKED * PARTS_OF_WHOLE}
    window lot as (partition by e.source_id, e.role, e.kind, e.into_what ${IN_ORDER})) e
  group by 1, 2, 3, 4`;

/** Packs anew what is marked as out of date. Interrupted, it goes on the next time where it was. */
export const renewExposure = async (db: DataSource): Promise<void> => {
  const [nothing] = await db.query<{ packed: boolean }[]>(`select not ${NOTHING_PACKED} as packed`);
  if (nothing?.packed) return packAll(db, await ids(db, 'select distinct source_id as id from derived.stale_exposure'));
  await packAll(
    db,
    await ids(
      db,
      'select l.root as id from fact.lot l where l.id = l.root and exists (select from derived.place_source s where s.source_id = l.root)',
    ),
  );
  await db.query('delete from derived.stale_exposure where source_id is null');
};

const packAll = async (db: DataSource, sources: readonly string[]): Promise<void> => {
  for (let i = 0; i < sources.length; i += SOURCES_AT_ONCE) {
    const some = sources.slice(i, i + SOURCES_AT_ONCE);
    await db.transaction((tx) => packSome(tx, some));
  }
};

/** Read committed: places are read after the marks were, so that a change in between is packed, and packed again. */
const packSome = async (tx: EntityManager, sources: readonly string[]): Promise<void> => {
  await tx.query(NUMBERS_LOCK);
  await tx.query(MEMORY);
  const marks = await ids(tx, MARKS, [sources]);
  await tx.query(NUMBER, [sources]);
  await tx.query(REMOVE, [sources]);
  await tx.query(PACK, [sources]);
  await tx.query('delete from derived.stale_exposure where id = any($1::bigint[])', [marks]);
};

const ids = async (
  db: Pick<EntityManager, 'query'>,
  sql: string,
  parameters: readonly unknown[] = [],
): Promise<string[]> => (await db.query<{ id: string }[]>(sql, [...parameters])).map(({ id }) => id);
