import { randomBytes } from 'node:crypto';
import { chownSync, closeSync, existsSync, fsyncSync, mkdirSync, openSync, readdirSync } from 'node:fs';
import { readFileSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { EmbeddedPostgresError, USE_A_SERVER } from './embedded-error.js';
import { program, versionOf } from './locate-binaries.js';
import type { Account } from './run-as.js';
import { runProgram } from './run-program.js';
import { lendPassword, makePassword } from './superuser-password.js';

/** The superuser of every cluster made here. */
export const SUPERUSER = 'postgres';

interface Wanted {
  readonly nativeDir: string;
  readonly cluster: string;
  readonly account: Account | undefined;
  /** False leaves initdb's writes to the operating system: for clusters that nobody will miss. */
  readonly sync: boolean;
}

/** With LANG unset initdb would choose SQL_ASCII, and an encoding cannot be changed later; so all is said here. */
const INITDB = ['--encoding=UTF8', '--locale-provider=builtin', '--locale=C.UTF-8', '--auth=scram-sha-256'];

function checkMajor(nativeDir: string, cluster: string): void {
  const found = readFileSync(join(cluster, 'PG_VERSION'), 'utf8').trim();
  const version = versionOf(nativeDir);
  if (Number.parseInt(version, 10) === Number(found)) return;
  const message = [
    `The database in ${cluster} was made by PostgreSQL ${found}; this release brings PostgreSQL ${version}, which cannot read it.`,
    `Start the release that made it, dump the data there and restore it here,`,
    `or set DATABASE_URL and DATABASE_OWNER_URL to a PostgreSQL ${found} server that holds the data.`,
  ];
  throw new EmbeddedPostgresError('wrong-major', message.join(' '));
}

/** Removes what an interrupted first start left: everything beside the cluster that is named `<pg>.new...`. */
function clearLeftovers(cluster: string): void {
  for (const name of readdirSync(dirname(cluster))) {
    if (!name.startsWith(`${basename(cluster)}.new`)) continue;
    // An initdb whose parent was killed may write on for a moment; hence the retries.
    rmSync(join(dirname(cluster), name), { recursive: true, force: true, maxRetries: 10, retryDelay: 100 });
  }
}

function makeRoom(cluster: string): void {
  if (!existsSync(cluster)) return;
  if (readdirSync(cluster).length > 0) {
    const message = `${cluster} holds files but no database (no PG_VERSION): move it away, or bring the backup back.`;
    throw new EmbeddedPostgresError('data-missing', message);
  }
  rmSync(cluster, { recursive: true });
}

async function runInitdb({ nativeDir, account, sync }: Wanted, fresh: string, password: string): Promise<void> {
  const pwfile = `${fresh}.pw`;
  const args = [
    ...INITDB,
    `--username=${SUPERUSER}`,
    `--pwfile=${pwfile}`,
    ...(sync ? [] : ['--no-sync']),
    '-D',
    fresh,
  ];
  const run = () => runProgram(program(nativeDir, 'initdb'), args, { account, cwd: dirname(fresh) });
  const { code, output } = await lendPassword(pwfile, password, account, run);
  if (code === 0) return;
  const remedy = `Correct that and start again, ${USE_A_SERVER}.`;
  throw new EmbeddedPostgresError('init-failed', `The database could not be made in ${fresh}: ${output}\n${remedy}`);
}

/** Makes a rename outlive a power cut; not every system lets a folder be opened for this. */
function syncFolder(folder: string): void {
  if (process.platform === 'win32') return;
  const handle = openSync(folder, 'r');
  fsyncSync(handle);
  closeSync(handle);
}

async function makeCluster(wanted: Wanted): Promise<void> {
  const { cluster, account } = wanted;
  // A name of its own each time: an initdb that outlived a killed start must not write into this one.
  const fresh = `${cluster}.new-${randomBytes(6).toString('hex')}`;
  mkdirSync(fresh, { mode: 0o700 });
  if (account) chownSync(fresh, account.uid, account.gid);
  try {
    await runInitdb(wanted, fresh, makePassword(cluster));
    renameSync(fresh, cluster);
  } finally {
    rmSync(fresh, { recursive: true, force: true });
  }
  if (wanted.sync) syncFolder(dirname(cluster));
}

/**
 * Makes the cluster if there is none, else checks that these programs can read it; resolves to whether it was made.
 *
 * A cluster appears under its name only when complete: it is made beside it and renamed.
 */
export async function initCluster(wanted: Wanted): Promise<boolean> {
  clearLeftovers(wanted.cluster);
  if (existsSync(join(wanted.cluster, 'PG_VERSION'))) {
    checkMajor(wanted.nativeDir, wanted.cluster);
    return false;
  }
  makeRoom(wanted.cluster);
  await makeCluster(wanted);
  return true;
}
