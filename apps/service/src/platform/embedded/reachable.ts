import { readdirSync, realpathSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Account } from './run-as.js';

const READ = 4;
const SEARCH = 1;

/** Judges the permission bits alone: the child drops supplementary groups, so only uid and primary gid count. */
function allows(path: string, account: Account, wanted: number): boolean {
  const { uid, gid, mode } = statSync(path);
  const shift = uid === account.uid ? 6 : gid === account.gid ? 3 : 0;
  return ((mode >> shift) & wanted) === wanted;
}

/** Returns the outermost folder on the way to (and including) `folder` that the account may not enter, if any. */
export function blockedAt(folder: string, account: Account): string | undefined {
  const way: string[] = [];
  for (let at = realpathSync(folder); ; at = dirname(at)) {
    way.unshift(at);
    if (dirname(at) === at) break;
  }
  return way.find((step) => !allows(step, account, SEARCH));
}

/** Whether the account can read everything below a folder: a checkout made with umask 077 has open parents only. */
export function readsAll(folder: string, account: Account): boolean {
  if (!allows(folder, account, READ | SEARCH)) return false;
  return readdirSync(folder, { withFileTypes: true }).every((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return readsAll(path, account);
    // A link is as readable as what it names, and that lies in the same tree.
    return entry.isSymbolicLink() || allows(path, account, READ);
  });
}
