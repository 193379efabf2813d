import { chmodSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { EmbeddedPostgresError } from './embedded-error.js';
import { isAlive, lifeOf, waitFor } from './process-life.js';

interface Owner {
  readonly pid: number;
  readonly life: string;
}

function parse(text: string): Owner | undefined {
  const match = /^(\d+) (\S*)\n$/.exec(text);
  return match ? { pid: Number(match[1]), life: match[2] ?? '' } : undefined;
}

function readText(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return '';
    throw error;
  }
}

/** A process id is used again in time, so an owner counts as alive only if it is the same life of that id. */
function holdsStill(owner: Owner | undefined): owner is Owner {
  return owner !== undefined && isAlive(owner.pid) && lifeOf(owner.pid) === owner.life;
}

function create(path: string, text: string): boolean {
  try {
    writeFileSync(path, text, { flag: 'wx' });
    // Whatever the umask: a start by another user must be able to read whose it is.
    chmodSync(path, 0o644);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  }
}

/** Takes a dead owner's file away, but not one that a quicker start has put there since it was judged. */
function clearStale(path: string, judged: string): void {
  const aside = `${path}.${process.pid}`;
  try {
    renameSync(path, aside);
  } catch {
    return;
  }
  const taken = readText(aside);
  if (taken !== judged) create(path, taken);
  rmSync(aside, { force: true });
}

/**
 * Makes this process the owner of a database folder until the returned function is called.
 *
 * @throws EmbeddedPostgresError `already-owned` while another start (of this process or another) holds it.
 */
export async function takeOwnership(path: string, dataDir: string): Promise<() => void> {
  const mine = `${process.pid} ${lifeOf(process.pid)}\n`;
  for (let attempt = 0; attempt < 5; attempt += 1) {
    if (create(path, mine)) return () => (readText(path) === mine ? rmSync(path, { force: true }) : undefined);
    // A file is empty for an instant after it is created; one that stays so was left by a crash.
    await waitFor(() => parse(readText(path)) !== undefined, 500);
    const text = readText(path);
    const owner = parse(text);
    if (holdsStill(owner)) throw alreadyOwned(dataDir, owner.pid);
    clearStale(path, text);
  }
  throw alreadyOwned(dataDir, parse(readText(path))?.pid);
}

function alreadyOwned(dataDir: string, pid: number | undefined): EmbeddedPostgresError {
  const who = pid === undefined ? 'another process' : `process ${pid}`;
  const remedy = 'Stop that one first, or give this one a DATA_DIR of its own.';
  return new EmbeddedPostgresError('already-owned', `The data in ${dataDir} is in use by ${who}. ${remedy}`);
}
