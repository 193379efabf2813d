import type { DataSource } from 'typeorm';
import type { JudgedHulls } from '../../apps/service/src/cases/inputs/judge-hulls.js';

/** Not among the packages of the project: with its binary it is too large for every install. */
const PACKAGE = '@duckdb/node-api';

interface Duck {
  readonly DuckDBInstance: { create(path: string): Promise<{ connect(): Promise<Connection> }> };
}
interface Connection {
  run(sql: string): Promise<unknown>;
  runAndReadAll(sql: string): Promise<{ getRowObjects(): Record<string, unknown>[] }>;
  createAppender(table: string): Promise<Appender>;
}
interface Appender {
  appendInteger(value: number): void;
  appendDouble(value: number): void;
  appendBoolean(value: boolean): void;
  endRow(): void;
  closeSync(): void;
}

const ROWS = `
  select (('x' || substr(md5(s.source_id::text || r.schedule_layer_id::text), 1, 7))::bit(28))::int as candidate, at.place::int as hull, s.kg / t.kg as share
  from unnest($1::uuid[]) with ordinality as at(hull_id, place)
  join fact.joint j on j.hull_id = at.hull_id
  join derived.place_source s on s.part_id = j.part_id and s.source_id is not null
  join derived.place_role t on t.place_id = s.place_id and t.role = s.role
  join fact.layer_record r on r.root = s.place_id`;

/** The same counts asked of a database of columns, its tables in memory: hulls and claims of each candidate from a share on. */
export const countInDuckDb = async (
  db: DataSource,
  { ids, hulls }: JudgedHulls,
  timed: <T>(what: string, work: () => Promise<T>) => Promise<T>,
): Promise<void> => {
  const duck = await (import(PACKAGE) as Promise<Duck>).catch(() => null);
  if (!duck) {
    console.log(`For the same counts in DuckDB: npm install --no-save ${PACKAGE} (some 70 MB), and again.`);
    return;
  }
  const instance = await duck.DuckDBInstance.create(':memory:');
  const connection = await instance.connect();
  await connection.run('create table used (candidate integer, hull integer, share double)');
  await connection.run('create table judged (hull integer, age double, claimed boolean, stratum integer)');
  const used = await connection.createAppender('used');
  const rows = await db.query<{ candidate: number; hull: number; share: number }[]>(ROWS, [ids]);
  for (const { candidate, hull, share } of rows) {
    used.appendInteger(candidate);
    used.appendInteger(hull);
    used.appendDouble(share);
    used.endRow();
  }
  used.closeSync();
  const judged = await connection.createAppender('judged');
  const strata = new Map<string, number>();
  hulls.forEach(({ age, claimed, stratum }, place) => {
    if (!strata.has(stratum)) strata.set(stratum, strata.size);
    judged.appendInteger(place + 1);
    judged.appendDouble(age);
    judged.appendBoolean(claimed);
    judged.appendInteger(strata.get(stratum) ?? 0);
    judged.endRow();
  });
  judged.closeSync();
  const counted = await timed('DuckDB, tables in memory: hulls and claims of each candidate', async () => {
    const read = await connection.runAndReadAll(COUNTS);
    return read.getRowObjects();
  });
  console.log(`${counted.length} candidates counted in DuckDB, ${rows.length} rows`);
};

const COUNTS = `
  with exposed as (select candidate, hull, max(share) as share from used group by all having max(share) >= 0.05)
  select candidate, count(*) as hulls, count(*) filter (where claimed) as claims
  from exposed join judged using (hull) group by all order by claims desc`;
