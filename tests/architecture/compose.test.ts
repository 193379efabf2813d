import { describe, expect, it } from '@jest/globals';
import { existsSync, readFileSync } from 'node:fs';
import { randomBytes } from 'node:crypto';
import pg from 'pg';
import { WHAT_TO_CREATE } from '../../apps/service/src/platform/config/config.js';
import { checkServicePrivileges, checkServiceRole } from '../../apps/service/src/platform/database/check-role.js';
import { migrate } from '../../apps/service/src/platform/database/migrate.js';
import { cloneDatabase } from '../support/clone.js';
import { readCompose } from '../support/compose-file.js';

const compose = readCompose();
const { database } = compose.services;
const SCRIPT = 'apps/service/database/create-roles.sql';

/** SQL statements of a text, without comments, commands of psql and the passwords. */
const statementsOf = (text: string): string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => /^(create|alter) .*;$/.test(line))
    .map((line) => line.replace(/password \S+;$/, 'password ?;'));

describe('the database of docker-compose.yml', () => {
  it('is PostgreSQL 18; the others stand in containers.test.ts', () => {
    expect(Object.keys(compose.services)).toEqual(['database', 'service', 'proxy']);
    expect(database?.image).toBe('postgres:18');
  });

  it('binds to the loopback address alone', () => {
    expect(database?.ports).toHaveLength(1);
    for (const port of database?.ports ?? []) expect(port).toMatch(/^127\.0\.0\.1:[^:]+(:-\d+\})?:5432$/);
  });

  it('has no password: each must be set, and says so when it is not', () => {
    const secrets = Object.entries(database?.environment ?? {}).filter(([name]) => name.endsWith('PASSWORD'));
    expect(secrets.map(([name]) => name).sort()).toEqual([
      'HULL_RECORD_OWNER_PASSWORD',
      'HULL_RECORD_SERVICE_PASSWORD',
      'POSTGRES_PASSWORD',
    ]);
    for (const [name, value] of secrets) expect(value).toMatch(new RegExp(`^\\$\\{${name}:\\?.+\\}$`));
  });

  it('makes its server with UTF8 and the builtin locale', () => {
    const wanted = '--encoding=UTF8 --locale-provider=builtin --locale=C.UTF-8';
    expect(database?.environment['POSTGRES_INITDB_ARGS']).toBe(wanted);
  });

  it('keeps its data in a named volume, where version 18 of the image keeps it', () => {
    expect(compose.volumes).toHaveProperty('database', null);
    expect(database?.volumes).toContain('database:/var/lib/postgresql');
  });

  it('is healthy when the server answers by TCP', () => {
    expect(database?.healthcheck.test.slice(0, 3)).toEqual(['CMD', 'pg_isready', '--host=127.0.0.1']);
  });

  it('creates both roles and the database on the first start, by the statements that the service asks for', () => {
    expect(database?.volumes).toContain(`./${SCRIPT}:/docker-entrypoint-initdb.d/10-create-roles.sql:ro`);
    expect(existsSync(SCRIPT)).toBe(true);
    const script = readFileSync(SCRIPT, 'utf8');
    expect(statementsOf(script)).toEqual(statementsOf(WHAT_TO_CREATE));
    expect(statementsOf(script)).toHaveLength(5);
    for (const variable of [
      'owner_password HULL_RECORD_OWNER_PASSWORD',
      'service_password HULL_RECORD_SERVICE_PASSWORD',
    ])
      expect(script).toContain(`\\getenv ${variable}\n`);
    expect(script.match(/password \S+;/g)).toEqual(["password :'owner_password';", "password :'service_password';"]);
  });
});

describe('what an administrator is told to create', () => {
  it('is what the service starts on, with names and passwords of its own', async () => {
    const clone = await cloneDatabase();
    const name = `hull_record_test_${randomBytes(6).toString('hex')}`;
    const admin = new pg.Client({ connectionString: clone.superuserUrl });
    await admin.connect();
    const own = (text: string): string => text.replace(/\bhull_record/g, name).replace('?', "'invented'");
    for (const statement of statementsOf(WHAT_TO_CREATE)) await admin.query(own(statement));
    const { host } = new URL(clone.superuserUrl);
    const url = (role: string): string => `postgresql://${name}_${role}:invented@${host}/${name}`;
    try {
      await checkServiceRole(url('service'), `${name}_owner`);
      await migrate(url('owner'), `${name}_service`);
      await checkServicePrivileges(url('service'));
    } finally {
      await admin.query(`drop database ${name} with (force)`);
      for (const role of ['owner', 'service']) await admin.query(`drop role ${name}_${role}`);
      await admin.end();
      await clone.drop();
    }
  });
});
