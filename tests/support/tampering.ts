import type { EntityManager } from 'typeorm';

/** A table of facts, with its columns in order. */
export interface FactTable {
  readonly name: string;
  readonly columns: readonly { readonly name: string; readonly type: string }[];
}

/** Every table of schema fact that has a row. */
export const filledTables = async (tx: EntityManager): Promise<readonly FactTable[]> => {
  const tables = await tx.query<FactTable[]>(`
    select c.relname as name, json_agg(json_build_object('name', a.attname, 'type', format_type(a.atttypid, null)) order by a.attnum) as columns
    from pg_attribute a join pg_class c on c.oid = a.attrelid
    where c.relnamespace = 'fact'::regnamespace and c.relkind in ('r', 'p') and a.attnum > 0 and not a.attisdropped
    group by c.relname order by c.relname`);
  const filled: FactTable[] = [];
  for (const table of tables)
    if ((await tx.query<unknown[]>(`select from fact.${table.name} limit 1`)).length > 0) filled.push(table);
  return filled;
};

/** SQL for another value of a column. */
const OTHER: Readonly<Record<string, (column: string) => string>> = {
  text: (column) => `coalesce(${column}, '') || 'x'`,
  uuid: () => 'gen_random_uuid()',
  boolean: (column) => `not coalesce(${column}, false)`,
  jsonb: () => `'{"tampered": true}'`,
  bytea: () => `decode(repeat('00', 32), 'hex')`,
  date: (column) => `coalesce(${column}, current_date) + 1`,
  'timestamp with time zone': (column) => `coalesce(${column}, now()) + interval '1 second'`,
  'text[]': (column) => `array_append(${column}, 'x')`,
  'uuid[]': (column) => `array_append(${column}, gen_random_uuid())`,
};
const number = (column: string): string => `coalesce(${column}, 0) + 1`;

export const otherValue = ({ name, type }: FactTable['columns'][number]): string => (OTHER[type] ?? number)(name);

/** Runs in a transaction of a superuser in which no key is checked, and undoes it. */
export const tampering = async <T>(tx: EntityManager, sql: readonly string[], look: () => Promise<T>): Promise<T> => {
  await tx.query('savepoint before');
  try {
    for (const statement of sql) await tx.query(statement);
    return await look();
  } finally {
    await tx.query('rollback to savepoint before');
  }
};
