import pg from 'pg';
import { ConfigWrong, WHAT_TO_CREATE } from '../config/config.js';

interface Attributes {
  readonly role: string;
  readonly may_bypass: boolean;
  readonly owns: number;
  readonly is_owner: boolean;
  readonly encoding: string;
}

const ASK = `
  select current_user as role,
    r.rolsuper or r.rolcreaterole or r.rolbypassrls as may_bypass,
    (select count(*)::int from pg_class c join pg_namespace n on n.oid = c.relnamespace
      where n.nspname in ('fact', 'derived', 'work') and pg_has_role(current_user, c.relowner, 'member')) as owns,
    pg_has_role(current_user, d.datdba, 'member') as is_owner,
    current_setting('server_encoding') as encoding
  from pg_roles r, pg_database d
  where r.rolname = current_user and d.datname = current_database()`;

/**
 * Refuses a service role that could change facts, and a database that is not UTF8.
 *
 * @throws ConfigWrong saying what was found and what to create
 */
export const checkServiceRole = async (serviceUrl: string): Promise<void> => {
  const client = new pg.Client({ connectionString: serviceUrl });
  await client.connect();
  try {
    const found = (await client.query<Attributes>(ASK)).rows[0];
    if (!found) throw new ConfigWrong('DATABASE_URL: the role is not listed by the server.');
    if (found.encoding !== 'UTF8') {
      throw new ConfigWrong(
        `DATABASE_URL: the database is ${found.encoding}, not UTF8, which cannot be changed later. Create a new one. ${WHAT_TO_CREATE}`,
      );
    }
    if (found.may_bypass || found.is_owner || found.owns > 0) {
      throw new ConfigWrong(
        `DATABASE_URL: the role ${found.role} owns the record or may do so, and could change facts. ${WHAT_TO_CREATE}`,
      );
    }
  } finally {
    await client.end();
  }
};
