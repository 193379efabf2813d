import { EmbeddedPostgresError, USE_A_SERVER } from './embedded-error.js';
import { ensureLinks } from './library-links.js';
import { checkExecutable, program } from './locate-binaries.js';
import { blockedAt, readsAll } from './reachable.js';
import type { Account } from './run-as.js';
import { runProgram } from './run-program.js';
import { stage } from './stage.js';

interface Wanted {
  readonly nativeDir: string;
  readonly account: Account | undefined;
  readonly stateDir: string;
  readonly say: (line: string) => void;
}

const reaches = (account: Account, folder: string): boolean => !blockedAt(folder, account) && readsAll(folder, account);

function place({ nativeDir, account, stateDir, say }: Wanted): string {
  const inPlace = !account || reaches(account, nativeDir);
  if (inPlace && ensureLinks(nativeDir)) return nativeDir;
  if (!account) {
    const remedy = `run "npm rebuild" as the user who installed the packages, ${USE_A_SERVER}`;
    const message = `${nativeDir} lacks links between its libraries and cannot be written: ${remedy}.`;
    throw new EmbeddedPostgresError('programs-unusable', message);
  }
  const staged = stage(nativeDir, stateDir);
  say(`The user ${account.name} cannot use ${nativeDir}: the PostgreSQL programs are copied to ${staged}.`);
  return staged;
}

/**
 * Returns the folder of programs that the account can really run: the installed one, or as root a copy of it.
 *
 * @throws EmbeddedPostgresError `programs-unusable` if they do not run here (other C library, a no-exec mount).
 */
export async function choosePrograms(wanted: Wanted): Promise<string> {
  checkExecutable(wanted.nativeDir);
  const nativeDir = place(wanted);
  const postgres = program(nativeDir, 'postgres');
  const { code, output } = await runProgram(postgres, ['--version'], { account: wanted.account, cwd: nativeDir });
  if (code === 0) return nativeDir;
  const message = `${postgres} does not run on this system: ${output}. Install its packages anew, ${USE_A_SERVER}.`;
  throw new EmbeddedPostgresError('programs-unusable', message);
}
