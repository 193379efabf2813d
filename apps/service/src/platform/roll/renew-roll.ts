import type { DataSource, EntityManager } from 'typeorm';
import { MEMORY } from '../database/memory.sql.js';
import { NUMBERS_LOCK } from '../exposure/numbers-lock.sql.js';
import { BETWEEN, BLOCK_COLUMNS, type BlockColumn, isStaleHull, NOTHING_ROLLED, rollOf } from './roll.sql.js';

/** So many hulls are in a block: few, and a change of one packs few others anew; many, and there are fewer rows to read. */
const HULLS_OF_BLOCK = 512;

/** So many blocks in one transaction. */
const BLOCKS_AT_ONCE = 100;

const PLACE_ALL = `
  insert into derived.hull_place (hull_id)
  select h.id from fact.hull h where not exists (select from derived.hull_place k where k.hull_id = h.id)
  order by h.plant_id, h.happened_at, h.id on conflict do nothing`;

const PLACE_STALE = `
  insert into derived.hull_place (hull_id)
  select h.id from fact.hull h where ${isStaleHull('h.id')} and not exists (select from derived.hull_place k where k.hull_id = h.id)
  order by h.plant_id, h.happened_at, h.id on conflict do nothing`;

const BLOCK = `k.number / ${HULLS_OF_BLOCK}`;
const ALL_BLOCKS = `select distinct ${BLOCK} as block from derived.hull_place k order by 1`;
const STALE_BLOCKS = `select distinct ${BLOCK} as block from derived.hull_place k where ${isStaleHull('k.hull_id')} order by 1`;

/** Hulls of the blocks $1. */
const HULLS = `
  select k.hull_id from unnest($1::int[]) b(block)
  join derived.hull_place k on k.number >= b.block * ${HULLS_OF_BLOCK} and k.number < (b.block + 1) * ${HULLS_OF_BLOCK}`;

/** Marks that are done with when these blocks are rolled: what is marked from now on is not seen by it, and stays. */
const MARKS = `select s.id from derived.stale_hull s where s.hull_id in (${HULLS})`;

/**
 * Every part of a hull in the roll has a number, so that what is packed of it later is found by it. Numbers rise with the
 * hulls: whoever goes through the parts of a lot, which follow each other, then goes through hulls that follow each other.
 */
const NUMBER = `
  insert into derived.part_number (part_id)
  select j.part_id from fact.joint j join derived.hull_place k on k.hull_id = j.hull_id
  where j.hull_id in (${HULLS}) and not exists (select from derived.part_number n where n.part_id = j.part_id)
  group by 1 order by min(k.number), 1
  on conflict do nothing`;

const IN_ORDER = 'order by r.normalised collate "C"';
/** Null where no hull has one: most are never scrapped. */
const listed = (values: string): string =>
  `case when count(${values}) > 0 then array_to_json(array_agg(${values} ${IN_ORDER})) end`;
/** One text is read faster than as many as there are hulls. */
const joined = (column: string): string => `string_agg(r."${column}"::text, '${BETWEEN}' ${IN_ORDER})`;
/** One list is read faster than as many as there are hulls. */
const flat = (column: string): string =>
  `('[' || coalesce(string_agg(nullif(array_to_string(r."${column}", ','), ''), ',' ${IN_ORDER}), '') || ']')::json`;

/** SQL: a column of the hulls of a block. */
const columnOf = (column: BlockColumn): string => {
  if (column === 'partsOf') return listed('cardinality(r.parts)');
  if (column === 'parts') return flat(column);
  if (column === 'normalised') return `nullif(${joined(column)}, ${joined('number')})`;
  return column === 'id' || column === 'number' ? joined(column) : listed(`r."${column}"`);
};

const ROLL = `
  insert into derived.hull_block (plant_id, block, hulls)
  select r.plant_id, ${BLOCK}, json_build_object(${BLOCK_COLUMNS.map((column) => `'${column}', ${columnOf(column)}`).join(', ')})
  from (${rollOf((hull) => `${hull} in (${HULLS})`)}) r join derived.hull_place k on k.hull_id = r.id
  group by 1, 2`;

/** Rolls anew what is marked as out of date. Interrupted, it goes on the next time where it was. */
export const renewRoll = async (db: DataSource): Promise<void> => {
  const [state] = await db.query<{ nothing: boolean }[]>(`select ${NOTHING_ROLLED} as nothing`);
  const all = state?.nothing === true;
  await db.transaction(async (tx) => {
    await tx.query(NUMBERS_LOCK);
    await tx.query(all ? PLACE_ALL : PLACE_STALE);
  });
  const blocks = await db.query<{ block: number }[]>(all ? ALL_BLOCKS : STALE_BLOCKS);
  for (let i = 0; i < blocks.length; i += BLOCKS_AT_ONCE) {
    const some = blocks.slice(i, i + BLOCKS_AT_ONCE).map(({ block }) => block);
    await db.transaction((tx) => rollSome(tx, some));
  }
  if (all) await db.query('delete from derived.stale_hull where hull_id is null');
};

/** Read committed: hulls are read after the marks were, so that a change in between is rolled, and rolled again. */
const rollSome = async (tx: EntityManager, blocks: readonly number[]): Promise<void> => {
  await tx.query(NUMBERS_LOCK);
  await tx.query(MEMORY);
  const marks = await tx.query<{ id: string }[]>(MARKS, [blocks]);
  await tx.query(NUMBER, [blocks]);
  await tx.query('delete from derived.hull_block where block = any($1)', [blocks]);
  await tx.query(ROLL, [blocks]);
  await tx.query('delete from derived.stale_hull where id = any($1::bigint[])', [marks.map(({ id }) => id)]);
};
