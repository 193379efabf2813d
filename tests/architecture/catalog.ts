import type { QueryResultRow } from 'pg';

/** Asks the database as its owner. */
export type Ask = <R extends QueryResultRow>(sql: string) => Promise<R[]>;

const IN_SCHEMAS = "n.nspname in ('fact', 'derived', 'work')";

const lines = async (ask: Ask, sql: string): Promise<string[]> =>
  (await ask<{ line: string }>(sql)).map((row) => row.line);

/** Every column of the three schemas, as `schema.table.column type null`. */
export const columnsOf = (ask: Ask): Promise<string[]> =>
  lines(
    ask,
    `select format('%s.%s.%s %s %s', n.nspname, c.relname, a.attname, format_type(a.atttypid, a.atttypmod),
        case when a.attnotnull then 'not null' else 'null' end) as line
      from pg_attribute a join pg_class c on c.oid = a.attrelid join pg_namespace n on n.oid = c.relnamespace
      where ${IN_SCHEMAS} and c.relkind in ('r', 'p') and a.attnum > 0 and not a.attisdropped`,
  );

/** Every default and identity of a column. */
export const filledInOf = (ask: Ask): Promise<string[]> =>
  lines(
    ask,
    `select format('%s.%s.%s ', n.nspname, c.relname, a.attname) || case a.attidentity
        when 'a' then 'identity always' when 'd' then 'identity by default'
        else 'default ' || pg_get_expr(d.adbin, d.adrelid) end as line
      from pg_attribute a join pg_class c on c.oid = a.attrelid join pg_namespace n on n.oid = c.relnamespace
        left join pg_attrdef d on d.adrelid = c.oid and d.adnum = a.attnum
      where ${IN_SCHEMAS} and c.relkind in ('r', 'p') and a.attnum > 0 and (a.attidentity <> '' or d.oid is not null)`,
  );

/** Every primary key, as `schema.table: column, column`. */
export const primaryKeysOf = (ask: Ask): Promise<string[]> =>
  lines(
    ask,
    `select format('%s.%s: %s', n.nspname, c.relname, string_agg(a.attname, ', ' order by a.attname)) as line
      from pg_constraint k join pg_class c on c.oid = k.conrelid join pg_namespace n on n.oid = c.relnamespace
        join pg_attribute a on a.attrelid = c.oid and a.attnum = any (k.conkey)
      where ${IN_SCHEMAS} and k.contype = 'p' group by n.nspname, c.relname`,
  );

/** Every table, as `schema.table`. */
export const tablesOf = (ask: Ask): Promise<string[]> =>
  lines(
    ask,
    `select format('%s.%s', n.nspname, c.relname) as line from pg_class c join pg_namespace n on n.oid = c.relnamespace
      where ${IN_SCHEMAS} and c.relkind in ('r', 'p')`,
  );

/** Every constraint (NOT NULL stands with its column), every index that no constraint made, and options of storage. */
export const constraintsOf = (ask: Ask): Promise<string[]> =>
  lines(
    ask,
    `select line from (
      select format('%s.%s %s: %s', n.nspname, c.relname, k.conname, pg_get_constraintdef(k.oid)) as line
        from pg_constraint k join pg_class c on c.oid = k.conrelid join pg_namespace n on n.oid = c.relnamespace
        where ${IN_SCHEMAS} and k.contype <> 'n'
      union all
      select format('%s.%s %s: %s', n.nspname, t.relname, c.relname, pg_get_indexdef(i.indexrelid))
        from pg_index i join pg_class c on c.oid = i.indexrelid join pg_class t on t.oid = i.indrelid
          join pg_namespace n on n.oid = t.relnamespace
        where ${IN_SCHEMAS} and not exists (select from pg_constraint k where k.conindid = i.indexrelid and k.contype in ('p', 'u', 'x'))
      union all
      select format('%s.%s options: %s', n.nspname, c.relname, array_to_string(c.reloptions, ', '))
        from pg_class c join pg_namespace n on n.oid = c.relnamespace
        where ${IN_SCHEMAS} and c.relkind = 'r' and c.reloptions is not null
    ) found order by line collate "C"`,
  );
