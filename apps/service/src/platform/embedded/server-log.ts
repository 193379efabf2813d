import { closeSync, fchownSync, fstatSync, openSync, readSync, renameSync, statSync } from 'node:fs';
import type { Account } from './run-as.js';

const TURN_OVER_BYTES = 10_000_000;
const TAIL_BYTES = 8_000;

/** A log opened for appending by a new server; `from` is its length in bytes before that server wrote to it. */
export interface ServerLog {
  readonly path: string;
  readonly handle: number;
  readonly from: number;
}

/** Opens the log for appending, mode 0600 as statements in it may hold data; past 10 MB the old one steps aside. */
export function openLog(path: string, account: Account | undefined): ServerLog {
  const size = statSync(path, { throwIfNoEntry: false })?.size ?? 0;
  if (size > TURN_OVER_BYTES) renameSync(path, `${path}.1`);
  const handle = openSync(path, 'a', 0o600);
  // An ordinary user's database started once by root must leave a log that the user can open again.
  if (account) fchownSync(handle, account.uid, account.gid);
  return { path, handle, from: fstatSync(handle).size };
}

/** Reads the last lines that the new server wrote, to put into an error. */
export function lastLines({ path, from }: ServerLog, count = 12): string {
  const handle = openSync(path, 'r');
  try {
    const size = fstatSync(handle).size;
    const start = Math.max(from, size - TAIL_BYTES);
    const buffer = Buffer.alloc(Math.max(0, size - start));
    readSync(handle, buffer, 0, buffer.length, start);
    return buffer.toString('utf8').trim().split('\n').slice(-count).join('\n');
  } finally {
    closeSync(handle);
  }
}
