import type { EntityManager } from 'typeorm';
import { rowDigest } from '../platform/facts/digest.js';
import type { NamedRow } from './check-entry.js';
import { fault, type TamperFault } from './fault.js';

/** Tables of facts, each with how its columns are read. */
export type FactTables = ReadonlyMap<string, string>;

/** Days and decimals are read as text, as the digest has them. */
const TABLES = `
  select c.relname as name, string_agg(case when a.atttypid in ('date'::regtype, 'numeric'::regtype)
      then format('%1$I::text as %1$I', a.attname) else quote_ident(a.attname) end, ', ' order by a.attnum) as columns
  from pg_attribute a join pg_class c on c.oid = a.attrelid
  where c.relnamespace = 'fact'::regnamespace and c.relkind in ('r', 'p') and a.attnum > 0 and not a.attisdropped
  group by c.oid, c.relname having bool_or(a.attname = 'entry_id') and bool_or(a.attname = 'root') order by c.relname`;

/** The tables whose rows journal entries name: all that carry the header of a fact. */
export const factTables = async (tx: EntityManager): Promise<FactTables> => {
  const rows = await tx.query<{ name: string; columns: string }[]>(TABLES);
  return new Map(rows.map(({ name, columns }) => [name, columns]));
};

/** Compares rows with the digests that the journal has of them. */
export const checkRows = async (
  tx: EntityManager,
  tables: FactTables,
  named: readonly NamedRow[],
): Promise<readonly TamperFault[]> => {
  const found: TamperFault[] = [];
  for (const table of new Set(named.map((row) => row.table))) {
    const columns = tables.get(table);
    const rows = named.filter((row) => row.table === table);
    const held = columns === undefined ? new Map<string, string>() : await digests(tx, table, columns, rows);
    for (const { id, sha256 } of rows) {
      const digest = held.get(id);
      if (digest === undefined)
        found.push(fault('removed', `fact.${table}`, id, 'the journal has it and the database has not.'));
      else if (digest !== sha256)
        found.push(fault('changed', `fact.${table}`, id, 'its digest is not the one in the journal.'));
    }
  }
  return found;
};

const digests = async (
  tx: EntityManager,
  table: string,
  columns: string,
  rows: readonly NamedRow[],
): Promise<ReadonlyMap<string, string>> => {
  const found = await tx.query<({ id: string } & Record<string, unknown>)[]>(
    `select ${columns} from fact.${table} where id = any($1)`,
    [rows.map(({ id }) => id)],
  );
  return new Map(found.map((row) => [row.id, rowDigest(row)]));
};

/** Rows that no entry of the journal names; a few of each table. */
export const checkAdded = async (tx: EntityManager, tables: FactTables): Promise<readonly TamperFault[]> => {
  const found: TamperFault[] = [];
  for (const table of tables.keys()) {
    const rows = await tx.query<{ id: string }[]>(
      `select t.id from fact.${table} t left join fact.journal j on j.id = t.entry_id
       where j.id is null or not (('${table}/' || t.id) = any (j.covers)) order by t.id limit 10`,
    );
    for (const { id } of rows) found.push(fault('added', `fact.${table}`, id, 'no entry of the journal names it.'));
  }
  return found;
};
