import { randomBytes } from 'node:crypto';
import pg from 'pg';

interface TestPostgres {
  readonly host: string;
  readonly port: number;
  readonly serviceUrl: string;
  readonly ownerUrl: string;
  readonly superuser: { readonly user: string; readonly password: string };
}

/** A database of its own for one test file: a clone of the migrated template. */
export interface Clone {
  readonly serviceUrl: string;
  readonly ownerUrl: string;
  readonly superuserUrl: string;
  drop(): Promise<void>;
}

const given = (): TestPostgres => {
  const text = process.env['TEST_POSTGRES'];
  if (text === undefined)
    throw new Error('These tests need the database that tests/support/postgres/start.mjs starts.');
  return JSON.parse(text) as TestPostgres;
};

const admin = async (sql: string): Promise<void> => {
  const { host, port, superuser } = given();
  const client = new pg.Client({ host, port, ...superuser, database: 'postgres' });
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
};

/** Clones the template; `template` may name another database of the run that nobody is connected to. */
export const cloneDatabase = async (template = 'hull_record'): Promise<Clone> => {
  const name = `hull_record_test_${randomBytes(6).toString('hex')}`;
  await admin(`create database ${name} template ${template} owner hull_record_owner`);
  const { serviceUrl, ownerUrl, host, port, superuser } = given();
  const at = (url: string): string => url.replace(/[^/]*$/, name);
  return {
    serviceUrl: at(serviceUrl),
    ownerUrl: at(ownerUrl),
    superuserUrl: `postgresql://${superuser.user}:${superuser.password}@${host}:${port}/${name}`,
    drop: () => admin(`drop database ${name} with (force)`),
  };
};
