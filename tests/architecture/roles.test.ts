import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { randomUUID } from 'node:crypto';
import { checkServicePrivileges } from '../../apps/service/src/platform/database/check-role.js';
import { migrate } from '../../apps/service/src/platform/database/migrate.js';
import { startService, type RunningService } from '../support/service.js';

const SERVICE = 'hull_record_service';
const PERMISSION_DENIED = '42501';

interface Table {
  readonly name: string;
  readonly column: string;
  /** The columns of its primary key. */
  readonly key: string;
}

let service: RunningService;
let factTables: readonly Table[];
let otherTables: readonly Table[];
beforeAll(async () => {
  service = await startService();
  factTables = await tables("n.nspname = 'fact'");
  otherTables = await tables("n.nspname in ('derived', 'work')");
});
afterAll(() => service.close());

/** Every table as the catalog lists it, with its first column and its key. */
const tables = (where: string): Promise<Table[]> =>
  service.asOwner<{ name: string; column: string; key: string }>(
    `select format('%I.%I', n.nspname, c.relname) as name, quote_ident(a.attname) as column,
        (select string_agg(quote_ident(b.attname), ', ') from pg_constraint k
          join pg_attribute b on b.attrelid = c.oid and b.attnum = any (k.conkey)
          where k.conrelid = c.oid and k.contype = 'p') as key
      from pg_class c join pg_namespace n on n.oid = c.relnamespace
        join pg_attribute a on a.attrelid = c.oid and a.attnum = 1
      where ${where} and c.relkind in ('r', 'p')`,
  );

/** What the server says to a statement of the service role: an SQLSTATE, or `done`. */
const tryAsService = (sql: string): Promise<string> =>
  service.db.query(sql).then(
    () => 'done',
    (error: { driverError: { code: string } }) => error.driverError.code,
  );

const CHANGES: readonly [string, (table: Table) => string][] = [
  ['UPDATE', ({ name, column }) => `update ${name} set ${column} = ${column} where false`],
  ['DELETE', ({ name }) => `delete from ${name} where false`],
  ['TRUNCATE', ({ name }) => `truncate ${name}`],
  ['SELECT FOR UPDATE', ({ name }) => `select from ${name} for update`],
  ['SELECT FOR SHARE', ({ name }) => `select from ${name} for share`],
  [
    'INSERT ON CONFLICT DO UPDATE',
    ({ name, column, key }) =>
      `insert into ${name} (${column}) values (gen_random_uuid()) on conflict (${key}) do update set ${column} = excluded.${column}`,
  ],
  [
    'MERGE',
    ({ name, column }) =>
      `merge into ${name} t using (select 1) s on false when matched then update set ${column} = default`,
  ],
  ['ALTER TABLE', ({ name }) => `alter table ${name} add column more text`],
  ['DROP TABLE', ({ name }) => `drop table ${name}`],
  ['DISABLE TRIGGER', ({ name }) => `alter table ${name} disable trigger all`],
  ['CREATE INDEX', ({ name, column }) => `create index on ${name} (${column})`],
  ['CREATE RULE', ({ name }) => `create rule nothing as on insert to ${name} do instead nothing`],
];

describe('the role of the running service', () => {
  it('is the service role on every connection of its pool, without any attribute of power', async () => {
    const ask = `select session_user::text as session, current_user::text as role, rolsuper, rolcreaterole, rolcreatedb,
      rolbypassrls, rolreplication from pg_roles where rolname = current_user`;
    const rows = await Promise.all(Array.from({ length: 8 }, () => service.db.query<object[]>(ask)));
    const powers = { rolsuper: false, rolcreaterole: false, rolcreatedb: false, rolbypassrls: false };
    for (const [row] of rows) {
      expect(row).toEqual({ session: SERVICE, role: SERVICE, ...powers, rolreplication: false });
    }
  });

  it('owns nothing and is a member of nothing', async () => {
    const me = 'current_user::regrole';
    const [found] = await service.db.query<object[]>(
      `select (select count(*)::int from pg_class where relowner = ${me}) as relations,
        (select count(*)::int from pg_namespace where nspowner = ${me}) as schemas,
        (select count(*)::int from pg_proc where proowner = ${me}) as functions,
        (select count(*)::int from pg_type where typowner = ${me}) as types,
        (select count(*)::int from pg_database where datdba = ${me}) as databases,
        (select count(*)::int from pg_auth_members where member = ${me}) as memberships`,
    );
    expect(found).toEqual({ relations: 0, schemas: 0, functions: 0, types: 0, databases: 0, memberships: 0 });
  });

  it('runs with the settings that were chosen for it', async () => {
    const settings = ['random_page_cost', 'jit', 'TimeZone', 'server_encoding', 'idle_in_transaction_session_timeout'];
    const shown = await service.db.query<{ name: string; setting: string }[]>(
      'select name, setting from pg_settings where name = any($1)',
      [settings],
    );
    expect(Object.fromEntries(shown.map(({ name, setting }) => [name, setting]))).toEqual({
      random_page_cost: '1.1',
      jit: 'off',
      TimeZone: 'UTC',
      server_encoding: 'UTF8',
      idle_in_transaction_session_timeout: '60000',
    });
  });

  it.each([
    ...['fact', 'derived', 'work', 'public'].map((schema) => `create table ${schema}.mine (id int)`),
    ...['fact', 'derived', 'work'].map((schema) => `drop schema ${schema} cascade`),
    ...['create schema mine', 'create role mine', 'create database mine', 'set role hull_record_owner'],
    ...['set session_replication_role = replica', "copy (select 1) to program 'true'"],
    ...['delete from public.migration', 'alter role hull_record_service superuser'],
  ])('cannot: %s', async (sql) => {
    expect(await tryAsService(sql)).toBe(PERMISSION_DENIED);
  });
});

describe('tables of facts, for the service role', () => {
  it.each(CHANGES)('refuse %s, every one of them', async (_what, statement) => {
    const answers = await Promise.all(
      factTables.map(async (table) => [table.name, await tryAsService(statement(table))] as const),
    );
    expect(answers).toEqual(factTables.map((table) => [table.name, PERMISSION_DENIED]));
    expect(answers.length).toBeGreaterThan(25);
  });

  it('can all be read and added to', async () => {
    const [lacking] = await service.db.query<{ tables: string[] | null }[]>(
      `select array_agg(name) as tables from unnest($1::text[]) as name
        where not (has_table_privilege(name, 'SELECT') and has_table_privilege(name, 'INSERT'))`,
      [factTables.map((table) => table.name)],
    );
    expect(lacking).toEqual({ tables: null });
  });

  it('take INSERT ON CONFLICT DO NOTHING, which tells whether the row is new', async () => {
    const claim = `insert into fact.client_id (id, digest) values ('${randomUUID()}', '\\x00') on conflict do nothing returning id`;
    expect(await service.db.query<unknown[]>(claim)).toHaveLength(1);
    expect(await service.db.query<unknown[]>(claim)).toHaveLength(0);
  });

  it('keep their order of insertion: the sequence cannot be set or drawn from', async () => {
    const sequence = "'fact.journal_position_seq'";
    expect(await tryAsService(`select setval(${sequence}, 1)`)).toBe(PERMISSION_DENIED);
    expect(await tryAsService(`select nextval(${sequence})`)).toBe(PERMISSION_DENIED);
  });
});

describe('tables that are derived or in work, for the service role', () => {
  it('can be read, added to, changed and emptied, every one of them', async () => {
    for (const { name, column } of otherTables) {
      const statements = [
        `select from ${name} for update`,
        `insert into ${name} select * from ${name} where false`,
        `update ${name} set ${column} = ${column} where false`,
        `delete from ${name} where false`,
      ];
      expect([name, ...(await Promise.all(statements.map(tryAsService)))]).toEqual([
        name,
        'done',
        'done',
        'done',
        'done',
      ]);
    }
    expect(otherTables.length).toBeGreaterThan(4);
  });

  it('cannot be dropped or altered', async () => {
    for (const { name } of otherTables) {
      expect(await tryAsService(`drop table ${name}`)).toBe(PERMISSION_DENIED);
      expect(await tryAsService(`alter table ${name} add column more text`)).toBe(PERMISSION_DENIED);
    }
  });
});

describe('each start', () => {
  const start = async (): Promise<void> => {
    await migrate(service.clone.ownerUrl, SERVICE);
    await checkServicePrivileges(service.clone.serviceUrl);
  };

  it('gives the service role its rights on a table that a later migration added', async () => {
    for (const schema of ['fact', 'derived', 'work'])
      await service.asOwner(`create table ${schema}.later (id uuid primary key)`);
    expect(await tryAsService('select from fact.later')).toBe(PERMISSION_DENIED);
    await start();
    const insert = 'insert into fact.later values (gen_random_uuid())';
    expect(await tryAsService(insert)).toBe('done');
    expect(await tryAsService('update fact.later set id = id')).toBe(PERMISSION_DENIED);
    expect(await tryAsService('delete from fact.later')).toBe(PERMISSION_DENIED);
    expect(await tryAsService('delete from derived.later')).toBe('done');
    expect(await tryAsService('delete from work.later')).toBe('done');
    for (const schema of ['fact', 'derived', 'work']) await service.asOwner(`drop table ${schema}.later`);
  });

  it('takes back what somebody granted to the service role on facts', async () => {
    await service.asOwner(`grant update (code), delete on fact.lot to ${SERVICE}`);
    expect(await tryAsService('update fact.lot set code = code')).toBe('done');
    await start();
    expect(await tryAsService('update fact.lot set code = code')).toBe(PERMISSION_DENIED);
    expect(await tryAsService('delete from fact.lot where false')).toBe(PERMISSION_DENIED);
  });

  it('refuses to go on when facts can be changed by everyone', async () => {
    await service.asOwner('grant update (code) on fact.lot to public');
    await expect(start()).rejects.toThrow(/could change facts/);
    await service.asOwner('revoke update (code) on fact.lot from public');
    await start();
  });

  it('never takes a right from a service that is running, even for an instant', async () => {
    let ended = false;
    const starts = Promise.all([start(), start(), start()]).finally(() => (ended = true));
    const answers = new Set<string>();
    let asked = 0;
    for (; !ended; asked += 1) answers.add(await tryAsService('select from fact.lot limit 1'));
    await starts;
    expect(asked).toBeGreaterThan(20);
    expect([...answers]).toEqual(['done']);
  });
});
