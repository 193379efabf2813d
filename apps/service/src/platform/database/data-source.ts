import pg from 'pg';
import { DataSource } from 'typeorm';
import { TABLES } from './tables.js';

const DATE = 1082;

/** Days stay days: the driver would make a date an instant in the time zone of the process. */
pg.types.setTypeParser(DATE, (day) => day);

/**
 * Makes the connection pool of the service role.
 *
 * @param url connection string of the service role
 * @param poolSize connections at most; at least the number of facts recorded at one time
 */
export const serviceDataSource = (url: string, poolSize = 20): DataSource =>
  new DataSource({
    type: 'postgres',
    url,
    entities: [...TABLES],
    poolSize,
    installExtensions: false,
    extra: {
      options: '-c timezone=UTC',
      statement_timeout: 60_000,
      lock_timeout: 15_000, // who waits longer is told to try again, and gives its connection back
      idle_in_transaction_session_timeout: 60_000,
      connectionTimeoutMillis: 20_000,
    },
  });
