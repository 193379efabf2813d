import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { randomBytes } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import pg from 'pg';
import { WHAT_TO_CREATE } from '../../apps/service/src/platform/config/config.js';
import { MIGRATIONS } from '../../apps/service/src/platform/database/migrations/index.js';
import { cloneDatabase, type Clone } from '../support/clone.js';
import { build, BUILT, cleanUp, type Env, newFolder, start } from '../support/start-up.js';

let clone: Clone;
beforeAll(async () => {
  build();
  clone = await cloneDatabase();
}, 120_000);
afterAll(async () => {
  await cleanUp();
  await clone.drop();
});

/** A name that no other test of this run has. */
const newName = (): string => `hull_record_test_${randomBytes(6).toString('hex')}`;

const asSuperuser = async <R extends pg.QueryResultRow>(sql: string, database?: string): Promise<R[]> => {
  const client = new pg.Client({ connectionString: at(clone.superuserUrl, database) });
  await client.connect();
  return (await client.query<R>(sql).finally(() => client.end())).rows;
};

/** The same connection to another database, or as another role. */
const at = (url: string, database?: string, user?: string, password?: string): string => {
  const changed = new URL(url);
  if (database) changed.pathname = `/${database}`;
  if (user) changed.username = user;
  if (password) changed.password = password;
  return changed.href;
};

/** Starts the service on a server and gives what it says when it refuses to start. */
const refusal = async (env: Env): Promise<string> => {
  const { code, out, errors } = await start({ DATA_DIR: newFolder(), ...env }, BUILT).ended;
  expect({ code, out }).toEqual({ code: 1, out: '' });
  expect(errors).toMatch(/^Cannot start\.\n/);
  expect(errors).not.toMatch(/\n {4}at /);
  return errors;
};

describe('a start refuses, with the reason and the remedy,', () => {
  it.each(['0.0.0.0', '::', 'example.org'])('to listen on %s', async (host) => {
    expect(await refusal({ HOST: host })).toContain(
      `HOST: ${host} is not a loopback address. Badges and PINs must not travel in clear: set TLS_CERT and TLS_KEY, or TRUSTED_PROXY`,
    );
  });

  it('a DATABASE_URL without a DATABASE_OWNER_URL, and the other way round', async () => {
    const errors = await refusal({ DATABASE_URL: clone.serviceUrl });
    expect(errors).toContain(`DATABASE_OWNER_URL: is missing. ${WHAT_TO_CREATE}`);
    expect(await refusal({ DATABASE_OWNER_URL: clone.ownerUrl })).toContain(
      `DATABASE_URL: is missing. ${WHAT_TO_CREATE}`,
    );
  });

  it('the same role twice', async () => {
    const errors = await refusal({ DATABASE_URL: clone.serviceUrl, DATABASE_OWNER_URL: clone.serviceUrl });
    expect(errors).toContain(`name the same role. ${WHAT_TO_CREATE}`);
  });

  it('the two roles exchanged', async () => {
    const errors = await refusal({ DATABASE_URL: clone.ownerUrl, DATABASE_OWNER_URL: clone.serviceUrl });
    expect(errors).toContain(`the role hull_record_owner owns the record or may do so, and could change facts.`);
  });

  it('a superuser as the service role', async () => {
    const errors = await refusal({ DATABASE_URL: clone.superuserUrl, DATABASE_OWNER_URL: clone.ownerUrl });
    expect(errors).toContain(
      `the role postgres owns the record or may do so, and could change facts. ${WHAT_TO_CREATE}`,
    );
  });

  it.each([
    ['owns a table', (role: string) => `alter table derived.composed_lot owner to ${role}`],
    ['is a member of the owner role', (role: string) => `grant hull_record_owner to ${role}`],
    ['may create roles', (role: string) => `alter role ${role} createrole`],
    ['bypasses row security', (role: string) => `alter role ${role} bypassrls`],
    ['may write everywhere', (role: string) => `grant pg_write_all_data to ${role}`],
  ])('a service role that %s', async (_what, sql) => {
    const role = newName();
    const own = await cloneDatabase();
    const database = new URL(own.serviceUrl).pathname.slice(1);
    await asSuperuser(`create role ${role} login password 'invented'; ${sql(role)}`, database);
    const url = at(own.serviceUrl, undefined, role, 'invented');
    const errors = await refusal({ DATABASE_URL: url, DATABASE_OWNER_URL: own.ownerUrl });
    await own.drop();
    await asSuperuser(`drop role ${role}`);
    expect(errors).toContain(
      `the role ${role} owns the record or may do so, and could change facts. ${WHAT_TO_CREATE}`,
    );
  });

  it('a database that is not UTF8, before anything is written in it', async () => {
    const name = newName();
    await asSuperuser(
      `create database ${name} owner hull_record_owner encoding 'SQL_ASCII' locale_provider libc locale 'C' template template0`,
    );
    const urls = { DATABASE_URL: at(clone.serviceUrl, name), DATABASE_OWNER_URL: at(clone.ownerUrl, name) };
    const errors = await refusal(urls);
    const schemas = await asSuperuser("select from pg_namespace where nspname in ('fact', 'derived', 'work')", name);
    await asSuperuser(`drop database ${name}`);
    expect(errors).toContain('the database is SQL_ASCII, not UTF8, which cannot be changed later.');
    expect(schemas).toEqual([]);
  });

  it('two connection strings that name different databases', async () => {
    const name = newName();
    await asSuperuser(`create database ${name} template template0`);
    const errors = await refusal({ DATABASE_URL: at(clone.serviceUrl, name), DATABASE_OWNER_URL: clone.ownerUrl });
    await asSuperuser(`drop database ${name}`);
    expect(errors).toContain('it names another database than DATABASE_OWNER_URL');
  });

  it('a wrong password and a server that is not there, without telling the password', async () => {
    const wrong = at(clone.ownerUrl, undefined, undefined, 'a-wrong-password');
    const errors = await refusal({ DATABASE_URL: clone.serviceUrl, DATABASE_OWNER_URL: wrong });
    expect(errors).toMatch(
      /DATABASE_OWNER_URL: cannot connect to \S+ as hull_record_owner: password authentication failed/,
    );
    expect(errors).not.toContain('a-wrong-password');
    const nowhere = clone.serviceUrl.replace(/:\d+\//, ':1/');
    const refused = await refusal({ DATABASE_URL: nowhere, DATABASE_OWNER_URL: clone.ownerUrl });
    expect(refused).toMatch(/DATABASE_URL: cannot connect to 127\.0\.0\.1:1\S+ as hull_record_service: .*ECONNREFUSED/);
    expect(refused).not.toContain(new URL(clone.serviceUrl).password);
  });

  it('a DATA_DIR that is a file, or below one', async () => {
    const file = join(newFolder(), 'file');
    writeFileSync(file, '');
    expect(await refusal({ DATA_DIR: file })).toBe(`Cannot start.\nDATA_DIR: ${file} is a file: name a folder.\n`);
    const below = join(file, 'data');
    expect(await refusal({ DATA_DIR: below })).toBe(
      `Cannot start.\nDATA_DIR: ${below} lies below a file: name a folder.\n`,
    );
  });

  it('settings that are no settings, each by its name', async () => {
    const errors = await refusal({
      PORT: '99999',
      DEMO: 'perhaps',
      PLANT_TIME_ZONE: 'Mars/Olympus',
      DATABASE_URL: 'x',
    });
    for (const name of ['PORT', 'DEMO', 'PLANT_TIME_ZONE', 'DATABASE_URL'])
      expect(errors).toMatch(new RegExp(`^${name}: `, 'm'));
  });
});

describe('two services that start at once on one empty database', () => {
  it('migrate it once, open one plant, and both answer', async () => {
    const name = newName();
    await asSuperuser(`create database ${name} owner hull_record_owner template template0`);
    const env = { DATABASE_URL: at(clone.serviceUrl, name), DATABASE_OWNER_URL: at(clone.ownerUrl, name) };
    const both = [1, 2].map(() => start({ DATA_DIR: newFolder(), ...env }, BUILT));
    const urls = await Promise.all(both.map((each) => each.url()));
    for (const url of urls) {
      expect(await (await fetch(`${url}/health/ready`)).json()).toMatchObject({ ready: true });
      expect((await fetch(`${url}/api/people`)).status).toBe(401);
    }
    const [counted] = await asSuperuser<{ migrations: number; plants: number; owners: number }>(
      `select (select count(*)::int from public.migration) as migrations, (select count(*)::int from fact.plant) as plants,
        (select count(*)::int from pg_stat_activity where usename = 'hull_record_owner' and datname = current_database()) as owners`,
      name,
    );
    // The owner's connection is closed once the database is migrated.
    expect(counted).toEqual({ migrations: MIGRATIONS.length, plants: 1, owners: 0 });
    for (const each of both) each.kill('SIGTERM');
    for (const each of both) expect(await each.ended).toMatchObject({ code: 0, errors: '' });
    await asSuperuser(`drop database ${name}`);
  });
});
