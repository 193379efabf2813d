import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** What postmaster.pid says (miscadmin.h of PostgreSQL: line 1 process id, 2 data folder, 4 port, 8 state). */
export interface PostmasterFile {
  readonly pid: number;
  readonly cluster: string;
  readonly port: number;
  readonly ready: boolean;
}

/** The file in which a running PostgreSQL says who it is. */
export const postmasterFilePath = (cluster: string): string => join(cluster, 'postmaster.pid');

/** Reads a cluster's postmaster.pid; undefined when there is none or its first lines are not written yet. */
export function readPostmasterFile(cluster: string): PostmasterFile | undefined {
  let lines: string[];
  try {
    lines = readFileSync(postmasterFilePath(cluster), 'utf8').split('\n');
  } catch {
    return undefined;
  }
  const pid = Number(lines[0]);
  if (!Number.isSafeInteger(pid) || pid <= 0) return undefined;
  return { pid, cluster: lines[1] ?? '', port: Number(lines[3]), ready: lines[7]?.trim() === 'ready' };
}
