import { chmodSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import pg from 'pg';
import { newSecret } from '../ids.js';

export const OWNER = 'hull_record_owner';
export const SERVICE = 'hull_record_service';
export const DATABASE = 'hull_record';

interface Server {
  readonly host: string;
  readonly port: number;
  readonly superuser: { readonly user: string; readonly password: string };
}

/** Connection strings of the two roles. */
export interface RoleUrls {
  readonly serviceUrl: string;
  readonly ownerUrl: string;
}

/**
 * Creates the two roles and the database on an embedded server, once.
 *
 * Passwords are made at the first start and kept in a file that its owner alone can read.
 */
export const prepareRoles = async (server: Server, dataDir: string): Promise<RoleUrls> => {
  const passwords = keptPasswords(join(dataDir, 'postgres-roles.json'));
  const admin = new pg.Client({ ...server.superuser, host: server.host, port: server.port, database: 'postgres' });
  await admin.connect();
  try {
    for (const [role, password] of Object.entries(passwords)) await ensureRole(admin, role, password);
    await admin.query(`alter role ${SERVICE} set random_page_cost = 1.1`);
    await admin.query(`alter role ${SERVICE} set jit = off`);
    const exists = await admin.query('select from pg_database where datname = $1', [DATABASE]);
    if (exists.rowCount === 0) await admin.query(`create database ${DATABASE} owner ${OWNER}`);
  } finally {
    await admin.end();
  }
  const url = (role: string): string =>
    `postgresql://${role}:${passwords[role] ?? ''}@${server.host}:${server.port}/${DATABASE}`;
  return { serviceUrl: url(SERVICE), ownerUrl: url(OWNER) };
};

const ensureRole = async (admin: pg.Client, role: string, password: string): Promise<void> => {
  const exists = await admin.query('select from pg_roles where rolname = $1', [role]);
  const verb = exists.rowCount === 0 ? 'create' : 'alter';
  await admin.query(
    `${verb} role ${role} login nosuperuser nocreaterole nocreatedb password ${admin.escapeLiteral(password)}`,
  );
};

const keptPasswords = (file: string): Readonly<Record<string, string>> => {
  if (!existsSync(file)) {
    writeFileSync(file, JSON.stringify({ [OWNER]: newSecret(), [SERVICE]: newSecret() }), { mode: 0o600 });
  }
  chmodSync(file, 0o600);
  return JSON.parse(readFileSync(file, 'utf8')) as Readonly<Record<string, string>>;
};
