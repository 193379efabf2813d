import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import pg from 'pg';
import type { RunningService } from './service.js';

const TABLES = `
  select format('%I.%I', n.nspname, c.relname) as name from pg_class c join pg_namespace n on n.oid = c.relnamespace
  where c.relkind in ('r', 'p', 'm') and n.nspname !~ '^(pg_|information_schema)' order by 1`;

/** Every table of every schema that has one of these texts in any of its columns, and the server's log if it has. */
export const whereItIs = async ({ clone }: RunningService, texts: readonly string[]): Promise<string[]> => {
  const client = new pg.Client({ connectionString: clone.superuserUrl });
  await client.connect();
  try {
    const found: string[] = [];
    const { rows: tables } = await client.query<{ name: string }>(TABLES);
    for (const { name } of tables) {
      // A row as text doubles quotes and backslashes; so does JSON: the texts are of plain letters.
      const { rowCount } = await client.query(
        `select from ${name} t where exists (select from unnest($1::text[]) x where strpos(t::text, x) > 0) limit 1`,
        [texts],
      );
      if (rowCount) found.push(name);
    }
    const { rows } = await client.query<{ data_directory: string }>('show data_directory');
    const log = readFileSync(join(dirname(rows[0]?.data_directory ?? ''), 'postgres.log'), 'utf8');
    return texts.some((text) => log.includes(text)) ? [...found, 'postgres.log'] : found;
  } finally {
    await client.end();
  }
};
