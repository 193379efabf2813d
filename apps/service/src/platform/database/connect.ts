import pg from 'pg';
import { ConfigWrong } from '../config/config.js';

/**
 * Opens one connection, to be ended by whoever asked for it.
 *
 * @param variable the environment variable that the connection string came from
 * @throws ConfigWrong naming that variable, the server and the role, and never the password
 */
export const connectAs = async (variable: string, url: string): Promise<pg.Client> => {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: 20_000 });
  // Without a listener, a server that ends this connection would end the process.
  client.on('error', () => undefined);
  try {
    await client.connect();
    return client;
  } catch (error) {
    const { hostname, port, pathname, username } = new URL(url);
    const where = `${hostname}:${port || 5432}${pathname}`;
    throw new ConfigWrong(
      `${variable}: cannot connect to ${where} as ${decodeURIComponent(username)}: ${reasonOf(error)}. ` +
        'Check that the server runs, and that the database, the role and its password are right.',
      { cause: error },
    );
  }
};

/** Several addresses tried in vain come as one error without a message of its own. */
const reasonOf = (error: unknown): string => {
  if (!(error instanceof Error)) return String(error);
  return error.message || (error as NodeJS.ErrnoException).code || error.name;
};
