import { randomBytes } from 'node:crypto';
import { chownSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { EmbeddedPostgresError } from './embedded-error.js';
import type { Account } from './run-as.js';

const fileBeside = (cluster: string): string => `${cluster}.password`;

/** Reads the superuser's password from the file beside the cluster, which only the service may read. */
export function readPassword(cluster: string): string {
  const file = fileBeside(cluster);
  try {
    return readFileSync(file, 'utf8').trim();
  } catch (cause) {
    const message = `The password of the database in ${cluster} cannot be read from ${file}: bring that file back from the backup.`;
    throw new EmbeddedPostgresError('data-missing', message, { cause });
  }
}

/** Makes a random password (192 bits) for a new cluster and keeps it beside the cluster, mode 0600. */
export function makePassword(cluster: string): string {
  const file = fileBeside(cluster);
  const password = randomBytes(24).toString('base64url');
  rmSync(file, { force: true });
  writeFileSync(file, `${password}\n`, { flag: 'wx', mode: 0o600, flush: true });
  return password;
}

/** Lends the password to initdb, in a file that the account may read while `use` runs and that is gone afterwards. */
export async function lendPassword<T>(
  file: string,
  password: string,
  account: Account | undefined,
  use: () => Promise<T>,
): Promise<T> {
  writeFileSync(file, `${password}\n`, { flag: 'wx', mode: 0o600 });
  try {
    if (account) chownSync(file, account.uid, account.gid);
    return await use();
  } finally {
    rmSync(file, { force: true });
  }
}
