import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { setTimeout as sleep } from 'node:timers/promises';

const BOOT_ID = '/proc/sys/kernel/random/boot_id';

/** The fields of /proc/<pid>/stat from the third on; the second, the name, may hold spaces and brackets. */
function statFields(pid: number): string[] | undefined {
  try {
    const text = readFileSync(`/proc/${pid}/stat`, 'latin1');
    return text.slice(text.lastIndexOf(')') + 2).split(' ');
  } catch {
    return undefined;
  }
}

/** Whether a process runs. One that ended and waits to be collected by its parent (state Z) does not. */
export function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
  return statFields(pid)?.[0] !== 'Z';
}

/**
 * Identifies one life of a process id: the boot, and the clock tick since boot at which it started (proc(5), field 22).
 *
 * Empty where /proc does not exist; then the id alone must do.
 */
export function lifeOf(pid: number): string {
  const started = statFields(pid)?.[19];
  return started ? `${readFileSync(BOOT_ID, 'utf8').trim()}/${started}` : '';
}

/**
 * Whether a process is the server of a cluster, by its command line: we always start it with `-D <cluster>`.
 *
 * Its working folder would tell too, but in a container even root may not look at that of another user's process.
 */
export function serves(pid: number, cluster: string): boolean {
  // There a signal goes through a pipe that only PostgreSQL's own processes have, so a stranger cannot be hit.
  if (process.platform === 'win32') return true;
  if (process.platform !== 'linux') {
    const { stdout } = spawnSync('ps', ['-p', String(pid), '-o', 'command='], { encoding: 'utf8' });
    return stdout?.includes(`-D ${cluster} `) ?? false;
  }
  try {
    const args = readFileSync(`/proc/${pid}/cmdline`, 'utf8').split('\0');
    return args[args.indexOf('-D') + 1] === cluster;
  } catch {
    return false;
  }
}

/** Waits until a condition holds, looking every 50 ms; resolves to whether it did within the time in milliseconds. */
export async function waitFor(holds: () => boolean, milliseconds: number): Promise<boolean> {
  for (let waited = 0; waited < milliseconds; waited += 50) {
    if (holds()) return true;
    await sleep(50);
  }
  return holds();
}
