import { existsSync, lstatSync, mkdirSync, readFileSync, symlinkSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';

interface Link {
  readonly source: string;
  readonly target: string;
}

const UNWRITABLE = new Set(['EACCES', 'EPERM', 'EROFS']);

/** The list names its files from the folder above: `native/lib/...`. */
const inside = (nativeDir: string, path: string): string => join(nativeDir, path.replace(/^native\//, ''));

function makeLink(nativeDir: string, link: Link): void {
  const at = inside(nativeDir, link.target);
  if (lstatSync(at, { throwIfNoEntry: false })) return;
  mkdirSync(dirname(at), { recursive: true });
  try {
    symlinkSync(relative(dirname(at), inside(nativeDir, link.source)), at);
  } catch (error) {
    // Another start may have made it in between.
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
  }
}

/**
 * Makes the links between shared libraries that the package lists in pg-symlinks.json.
 *
 * An npm archive cannot hold links, and the package's own install script does not run under `--ignore-scripts`.
 * Returns false when links are missing and the folder cannot be written.
 */
export function ensureLinks(nativeDir: string): boolean {
  const list = join(nativeDir, 'pg-symlinks.json');
  if (!existsSync(list)) return true;
  try {
    for (const link of JSON.parse(readFileSync(list, 'utf8')) as Link[]) makeLink(nativeDir, link);
    return true;
  } catch (error) {
    if (UNWRITABLE.has((error as NodeJS.ErrnoException).code ?? '')) return false;
    throw error;
  }
}
