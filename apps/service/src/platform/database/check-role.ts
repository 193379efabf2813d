import { ConfigWrong, WHAT_TO_CREATE } from '../config/config.js';
import { connectAs } from './connect.js';

interface Attributes {
  readonly role: string;
  readonly may_bypass: boolean;
  readonly owns: number;
  readonly is_owner: boolean;
  readonly encoding: string;
}

const ATTRIBUTES = `
  select current_user as role,
    r.rolsuper or r.rolcreaterole or r.rolbypassrls as may_bypass,
    (select count(*)::int from pg_class c join pg_namespace n on n.oid = c.relnamespace
      where n.nspname in ('fact', 'derived', 'work') and pg_has_role(current_user, c.relowner, 'member')) as owns,
    pg_has_role(current_user, d.datdba, 'member')
      or exists (select from pg_roles o where o.rolname = $1 and pg_has_role(current_user, o.oid, 'member')) as is_owner,
    current_setting('server_encoding') as encoding
  from pg_roles r, pg_database d
  where r.rolname = current_user and d.datname = current_database()`;

/**
 * Refuses a service role that could change facts, and a database that is not UTF8: before anything is written there.
 *
 * @throws ConfigWrong saying what was found and what to create
 */
export const checkServiceRole = async (serviceUrl: string, ownerRole: string): Promise<void> => {
  const client = await connectAs('DATABASE_URL', serviceUrl);
  try {
    const found = (await client.query<Attributes>(ATTRIBUTES, [ownerRole])).rows[0];
    if (!found) throw new ConfigWrong('DATABASE_URL: the role is not listed by the server.');
    if (found.encoding !== 'UTF8') {
      throw new ConfigWrong(
        `DATABASE_URL: the database is ${found.encoding}, not UTF8, which cannot be changed later. Create a new one. ${WHAT_TO_CREATE}`,
      );
    }
    if (found.may_bypass || found.is_owner || found.owns > 0) throw couldChange(found.role);
  } finally {
    await client.end();
  }
};

/** TRIGGER is among them because a trigger runs as whoever writes, and could change what is written. */
const PRIVILEGES = `
  select current_user as role, to_regclass('fact.journal') is not null as is_there,
    coalesce((select bool_or(has_table_privilege(c.oid, 'UPDATE, DELETE, TRUNCATE, TRIGGER')
        or has_any_column_privilege(c.oid, 'UPDATE'))
      from pg_class c join pg_namespace n on n.oid = c.relnamespace
      where n.nspname = 'fact' and c.relkind in ('r', 'p')), false) as could_change`;

/**
 * Refuses a service role that got the right to change facts by another way than ownership: a grant, a group, PUBLIC.
 *
 * @throws ConfigWrong also when the two connection strings name different databases
 */
export const checkServicePrivileges = async (serviceUrl: string): Promise<void> => {
  const client = await connectAs('DATABASE_URL', serviceUrl);
  try {
    const { rows } = await client.query<{ role: string; is_there: boolean; could_change: boolean }>(PRIVILEGES);
    const found = rows[0];
    if (!found?.is_there) {
      throw new ConfigWrong(
        'DATABASE_URL: the tables just migrated are not there: it names another database than DATABASE_OWNER_URL.',
      );
    }
    if (found.could_change) throw couldChange(found.role);
  } finally {
    await client.end();
  }
};

const couldChange = (role: string): ConfigWrong =>
  new ConfigWrong(
    `DATABASE_URL: the role ${role} owns the record or may do so, and could change facts. ${WHAT_TO_CREATE}`,
  );
