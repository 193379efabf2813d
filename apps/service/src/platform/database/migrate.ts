import { Logger, runMigrations as migrateJobs } from 'graphile-worker';
import type pg from 'pg';
import { DataSource } from 'typeorm';
import { connectAs } from './connect.js';
import { MIGRATIONS } from './migrations/index.js';

/** Any number that no other user of the database takes for an advisory lock. */
const MIGRATION_LOCK = 4_318_072_501;

/**
 * Brings the database up to date as the owner role, then closes that connection.
 *
 * Several services may start at once: an advisory lock lets one migrate while the others wait.
 * Grants are given anew each time, so that a new table is never forgotten.
 */
export const migrate = async (ownerUrl: string, serviceRole: string): Promise<void> => {
  const lock = await connectAs('DATABASE_OWNER_URL', ownerUrl);
  try {
    await lock.query('select pg_advisory_lock($1)', [MIGRATION_LOCK]);
    await runMigrations(ownerUrl);
    await migrateJobs({ connectionString: ownerUrl, logger: new Logger(() => () => undefined) });
    await grantAnew(lock, serviceRole);
  } finally {
    await lock.end();
  }
};

/** In one transaction: a service that is running meanwhile must never see its rights taken and not yet given. */
const grantAnew = async (owner: pg.Client, serviceRole: string): Promise<void> => {
  await owner.query('begin');
  for (const grant of grants(owner.escapeIdentifier(serviceRole))) await owner.query(grant);
  for (const grant of await jobGrants(owner, serviceRole)) await owner.query(grant);
  await owner.query('commit');
};

const runMigrations = async (ownerUrl: string): Promise<void> => {
  const owner = new DataSource({
    type: 'postgres',
    url: ownerUrl,
    migrations: [...MIGRATIONS],
    migrationsTableName: 'migration',
    installExtensions: false,
    poolSize: 2,
  });
  await owner.initialize();
  try {
    await owner.runMigrations({ transaction: 'all' });
  } finally {
    await owner.destroy();
  }
};

/** Facts can be read and added; what is derived or in work can be changed. */
const grants = (role: string): readonly string[] => [
  'revoke create on schema public from public',
  `grant usage on schema fact, derived, work to ${role}`,
  `revoke all on all tables in schema fact from ${role}`,
  `grant select, insert on all tables in schema fact to ${role}`,
  `grant select, insert, update, delete on all tables in schema derived, work to ${role}`,
];

const LOCKED_TABLES = `
  select c.relname as name, exists (select from pg_policy p where p.polrelid = c.oid and p.polname = 'service') as open
  from pg_class c where c.relnamespace = 'graphile_worker'::regnamespace and c.relrowsecurity`;

/** The tables of jobs are locked row by row: rights alone open none of them. */
const jobGrants = async (owner: pg.Client, serviceRole: string): Promise<readonly string[]> => {
  const role = owner.escapeIdentifier(serviceRole);
  const { rows } = await owner.query<{ name: string; open: boolean }>(LOCKED_TABLES);
  return [
    `grant usage on schema graphile_worker to ${role}`,
    `grant select, insert, update, delete on all tables in schema graphile_worker to ${role}`,
    `grant usage on all sequences in schema graphile_worker to ${role}`,
    `grant execute on all functions in schema graphile_worker to ${role}`,
    ...rows.map(({ name, open }) => {
      const table = `graphile_worker.${owner.escapeIdentifier(name)}`;
      return open
        ? `alter policy service on ${table} to ${role}`
        : `create policy service on ${table} to ${role} using (true) with check (true)`;
    }),
  ];
};
