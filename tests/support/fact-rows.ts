import { rowDigest } from '../../apps/service/src/platform/facts/digest.js';
import type { RunningService } from './service.js';

/** Returns when no look at a case is on its way: the service records the answer of each. */
const looksAnswered = async (service: RunningService): Promise<void> => {
  const underWay = "select from work.case_run where state in ('waiting', 'running')";
  while ((await service.asOwner(underWay)).length > 0) await new Promise((resolve) => setTimeout(resolve, 10));
};

/** How many rows each table of facts has, and the table of personal data beside them, when nothing is on its way. */
export const countRows = async (service: RunningService): Promise<Readonly<Record<string, number>>> => {
  await looksAnswered(service);
  const tables = await service.asOwner<{ name: string }>(
    `select format('%I.%I', schemaname, tablename) as name from pg_tables
     where schemaname = 'fact' or (schemaname, tablename) = ('work', 'person_detail') order by 1`,
  );
  const counts = tables.map(({ name }) => `select '${name}' as name, count(*)::int as rows from ${name}`);
  const rows = await service.asOwner<{ name: string; rows: number }>(counts.join(' union all '));
  return Object.fromEntries(rows.map((row) => [row.name, row.rows]));
};

interface Entry {
  readonly id: string;
  readonly covers: readonly string[];
  readonly rows: readonly { readonly table: string; readonly id: string; readonly sha256: string }[];
}

/** Journal entries: all, or one. */
export const readEntries = async (service: RunningService, id?: string): Promise<readonly Entry[]> => {
  const found = await service.asOwner<{ id: string; covers: string[]; entry: string }>(
    'select id, covers, entry from fact.journal where $1::uuid is null or id = $1 order by position',
    [id ?? null],
  );
  return found.map((row) => ({
    ...row,
    rows: (JSON.parse(row.entry) as Pick<Entry, 'rows'>).rows,
  }));
};

/** The digest of a row as the database holds it now: days as text, decimals as text, instants as Date. */
export const digestInDatabase = async (
  service: RunningService,
  table: string,
  id: string,
): Promise<string | undefined> => {
  const columns = await service.asOwner<{ name: string; type: string }>(
    `select column_name as name, data_type as type from information_schema.columns
     where table_schema = 'fact' and table_name = $1 order by ordinal_position`,
    [table],
  );
  const list = columns.map(({ name, type }) => (type === 'date' || type === 'numeric' ? `${name}::text` : name));
  const [row] = await service.asOwner(`select ${list.join(', ')} from fact.${table} where id = $1`, [id]);
  return row && rowDigest(row);
};

/** Rows of facts that name a journal entry as theirs, as table/id; what is no fact of its own, as its place in the log, has no root. */
export const rowsOfEntry = async (service: RunningService, entry: string): Promise<readonly string[]> => {
  const tables = await service.asOwner<{ name: string }>(
    `select table_name as name from information_schema.columns where table_schema = 'fact' and column_name in ('entry_id', 'root')
     group by table_name having count(*) = 2`,
  );
  const sql = tables.map(({ name }) => `select '${name}/' || id as row from fact.${name} where entry_id = $1`);
  return (await service.asOwner<{ row: string }>(sql.join(' union all '), [entry])).map(({ row }) => row);
};
