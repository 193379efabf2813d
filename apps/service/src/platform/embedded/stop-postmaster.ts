import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { EmbeddedPostgresError } from './embedded-error.js';
import { program } from './locate-binaries.js';
import { postmasterFilePath, readPostmasterFile } from './postmaster-file.js';
import { isAlive, serves, waitFor } from './process-life.js';

const FAST_MS = 20_000;
const IMMEDIATE_MS = 15_000;

/** Signals a postmaster: INT disconnects and stops, QUIT stops at once and leaves recovery to the next start. */
function signal(nativeDir: string, pid: number, name: 'INT' | 'QUIT'): void {
  if (process.platform === 'win32') {
    // Node ends a process at once there, whatever the signal; PostgreSQL's own program knows how to ask.
    spawnSync(program(nativeDir, 'pg_ctl'), ['kill', name, String(pid)], { stdio: 'ignore' });
    return;
  }
  try {
    process.kill(pid, `SIG${name}`);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ESRCH') throw error;
  }
}

/** Stops a postmaster in order and resolves when it is gone; after 20 s it is told to stop at once. */
export async function stopPostmaster(nativeDir: string, pid: number): Promise<void> {
  const gone = (): boolean => !isAlive(pid);
  signal(nativeDir, pid, 'INT');
  if (await waitFor(gone, FAST_MS)) return;
  signal(nativeDir, pid, 'QUIT');
  if (await waitFor(gone, IMMEDIATE_MS)) return;
  throw new EmbeddedPostgresError('stop-failed', `PostgreSQL (process ${pid}) does not stop.`);
}

/**
 * Stops the PostgreSQL that a killed service left running on this cluster; resolves to whether there was one.
 *
 * The caller owns the cluster, so no living service uses it. A process that merely has the number of an old postmaster
 * is left alone, and the old file is removed, since PostgreSQL would refuse to start because of it.
 */
export async function stopLeftover(nativeDir: string, cluster: string): Promise<boolean> {
  const file = readPostmasterFile(cluster);
  if (!file || !isAlive(file.pid)) return false;
  if (file.cluster !== cluster || !serves(file.pid, cluster)) {
    rmSync(postmasterFilePath(cluster), { force: true });
    return false;
  }
  await stopPostmaster(nativeDir, file.pid);
  return true;
}
