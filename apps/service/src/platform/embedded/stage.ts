import { createHash, randomBytes } from 'node:crypto';
import { chmodSync, cpSync, existsSync, lstatSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { renameSync, rmSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { ensureLinks } from './library-links.js';
import { versionOf } from './locate-binaries.js';

const MARKER = 'complete';

/** Makes a folder with exactly this mode, whatever the umask is. */
export function openFolder(path: string, mode: number): string {
  mkdirSync(path, { recursive: true });
  chmodSync(path, mode);
  return path;
}

function filesBelow(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return filesBelow(path);
    return entry.isFile() ? [path] : [];
  });
}

/** Tells one build of the programs from another by names and sizes; links are left out, as they may not be made yet. */
function fingerprint(nativeDir: string): string {
  const lines = filesBelow(nativeDir).map((path) => `${relative(nativeDir, path)} ${lstatSync(path).size}`);
  return createHash('sha256').update(lines.sort().join('\n')).digest('hex');
}

function holds(folder: string, print: string): boolean {
  const marker = join(folder, MARKER);
  return existsSync(marker) && readFileSync(marker, 'utf8') === print;
}

/** Opens the copy to everyone: a checkout made with umask 077 has closed files. Who may execute stays as it was. */
function openToAll(folder: string): void {
  chmodSync(folder, 0o755);
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) openToAll(path);
    else if (entry.isFile()) chmodSync(path, lstatSync(path).mode & 0o100 ? 0o755 : 0o644);
  }
}

/** Puts a finished copy in its place by renaming; a copy of another build steps aside first. */
function putInPlace(fresh: string, folder: string, print: string): void {
  const old = `${fresh}.old`;
  if (existsSync(folder)) renameSync(folder, old);
  try {
    renameSync(fresh, folder);
  } catch (error) {
    // Another start may have put the same build there in between.
    if (!holds(folder, print)) throw error;
  } finally {
    for (const left of [fresh, old]) rmSync(left, { recursive: true, force: true });
  }
}

/**
 * Copies the programs to `<stateDir>/postgresql-<version>`, which every user can reach, and returns that folder.
 *
 * For root alone. A complete copy of the same build is used again; an interrupted copy is never mistaken for one.
 */
export function stage(nativeDir: string, stateDir: string): string {
  const folder = join(openFolder(stateDir, 0o755), `postgresql-${versionOf(nativeDir)}`);
  const print = fingerprint(nativeDir);
  if (holds(folder, print)) return folder;
  const fresh = `${folder}.new-${randomBytes(6).toString('hex')}`;
  cpSync(nativeDir, fresh, { recursive: true, verbatimSymlinks: true });
  openToAll(fresh);
  ensureLinks(fresh);
  writeFileSync(join(fresh, MARKER), print);
  putInPlace(fresh, folder, print);
  return folder;
}
