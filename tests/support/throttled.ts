import pg from 'pg';
import type { Clone } from './clone.js';

/** The addresses from which wrong tries at signing in were counted. */
export const addressesIn = async (clone: Clone): Promise<string[]> => {
  const client = new pg.Client({ connectionString: clone.ownerUrl });
  await client.connect();
  const { rows } = await client
    .query<{ address: string }>(
      `select substr(about, 14) as address from work.sign_in_failure where about like 'from address %' order by 1`,
    )
    .finally(() => client.end());
  return rows.map(({ address }) => address);
};
