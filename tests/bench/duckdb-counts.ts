import { createWriteStream, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import type pg from 'pg';
import { to as copyTo } from 'pg-copy-streams';
import type { JudgedHulls } from '../../apps/service/src/cases/inputs/judge-hulls.js';

/** Not among the packages of the project: with its binary it is too large for every install. */
const PACKAGE = '@duckdb/node-api';

interface Duck {
  readonly DuckDBInstance: { create(path: string): Promise<{ connect(): Promise<Connection> }> };
}
interface Connection {
  run(sql: string): Promise<unknown>;
  runAndReadAll(sql: string): Promise<{ getRowObjects(): Record<string, unknown>[] }>;
}

/** A candidate, a hull by its place in $1, and the share that it has of it. */
const ROWS = `
  select ('x' || substr(md5(s.source_id::text || r.schedule_layer_id::text), 1, 7))::bit(28)::int as candidate, b.place, s.kg / t.kg as share
  from boat b join fact.joint j on j.hull_id = b.hull_id
  join derived.place_source s on s.part_id = j.part_id and s.source_id is not null
  join derived.place_role t on t.place_id = s.place_id and t.role = s.role
  join fact.layer_record r on r.root = s.place_id`;

/** The same counts asked of a database of columns, its tables in memory: hulls and claims of each candidate from a share on. */
export const countInDuckDb = async (
  owner: pg.Client,
  { ids, hulls }: JudgedHulls,
  timed: <T>(what: string, work: () => Promise<T>) => Promise<T>,
): Promise<void> => {
  const duck = await (import(PACKAGE) as Promise<Duck>).catch(() => null);
  if (!duck) {
    console.log(`For the same counts in DuckDB: npm install --no-save ${PACKAGE} (some 70 MB), and again.`);
    return;
  }
  const folder = mkdtempSync(join(tmpdir(), 'hull-record-duckdb-'));
  try {
    await owner.query(
      'create temporary table boat as select * from unnest($1::uuid[]) with ordinality as at(hull_id, place)',
      [ids],
    );
    const used = join(folder, 'used.csv');
    await pipeline(owner.query(copyTo(`copy (${ROWS}) to stdout (format csv)`)), createWriteStream(used));
    const judged = join(folder, 'judged.csv');
    writeFileSync(
      judged,
      hulls.map(({ age, claimed, stratum }, i) => `${i + 1},${age},${claimed},"${stratum}"\n`).join(''),
    );
    const connection = await (await duck.DuckDBInstance.create(':memory:')).connect();
    const load = (table: string, columns: string, file: string): Promise<unknown> =>
      connection.run(
        `create table ${table} as select * from read_csv('${file}', header = false, columns = {${columns}})`,
      );
    await load('used', "'candidate': 'integer', 'hull': 'integer', 'share': 'double'", used);
    await load('judged', "'hull': 'integer', 'age': 'double', 'claimed': 'boolean', 'stratum': 'varchar'", judged);
    const counted = await timed('DuckDB, tables in memory: hulls and claims of each candidate', async () => {
      const read = await connection.runAndReadAll(COUNTS);
      return read.getRowObjects();
    });
    const [rows] = (await connection.runAndReadAll('select count(*)::int as n from used')).getRowObjects();
    console.log(`${counted.length} candidates counted in DuckDB, ${String(rows?.['n'])} rows`);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};

const COUNTS = `
  with exposed as (select candidate, hull, max(share) as share from used group by all having max(share) >= 0.05)
  select candidate, count(*) as hulls, count(*) filter (where claimed) as claims
  from exposed join judged using (hull) group by all order by claims desc`;
