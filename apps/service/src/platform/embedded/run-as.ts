import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

/** The operating system's user that PostgreSQL runs as; ids as in /etc/passwd. */
export interface Account {
  readonly name: string;
  readonly uid: number;
  readonly gid: number;
}

const OWN_NAME = 'hull-record';
const NOWHERE = '/nonexistent';

/** Whether this process is root; false where the system has no such idea. */
export const isRoot = (): boolean => process.getuid?.() === 0;

function accounts(): Account[] {
  return readFileSync('/etc/passwd', 'utf8')
    .split('\n')
    .map((line) => line.split(':'))
    .map(([name = '', , uid, gid]) => ({ name, uid: Number(uid), gid: Number(gid) }))
    .filter((account) => account.uid > 0);
}

const named = (name: string): Account | undefined => accounts().find((account) => account.name === name);

/** Finds the account of a user id; an id that has no name keeps the group of the files it owns. */
export function accountOf(uid: number, groupOfFiles: number): Account {
  return accounts().find((account) => account.uid === uid) ?? { name: `uid ${uid}`, uid, gid: groupOfFiles };
}

/** Makes the system user, with whichever of the two usual programs this system has. */
function createOwn(): Account | undefined {
  const env = { PATH: `${process.env.PATH ?? ''}:/usr/sbin:/sbin:/usr/bin:/bin` };
  const useradd = ['--system', '--user-group', '--no-create-home', '--home-dir', NOWHERE, '--shell', '/bin/false'];
  spawnSync('useradd', [...useradd, OWN_NAME], { env, stdio: 'ignore' });
  // Alpine has no useradd; its adduser takes these flags (Debian's adduser does not, but Debian has useradd).
  if (!named(OWN_NAME)) {
    spawnSync('adduser', ['-S', '-D', '-H', '-h', NOWHERE, '-s', '/bin/false', OWN_NAME], { env, stdio: 'ignore' });
  }
  return named(OWN_NAME);
}

/**
 * Chooses the unprivileged account that PostgreSQL runs as when the service is root, because PostgreSQL refuses root.
 *
 * In this order: `postgres`, `hull-record`, a new system user `hull-record`, `nobody`.
 */
export function databaseAccount(): Account {
  const account = named('postgres') ?? named(OWN_NAME) ?? createOwn() ?? named('nobody');
  return account ?? { name: 'nobody', uid: 65534, gid: 65534 };
}
