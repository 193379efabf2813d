import { readHead } from '@hull-record/evidence';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readConfig } from '../platform/config/config.js';
import { readAsOne } from '../platform/database/read-as-one.js';
import { KeyRing } from '../platform/journal/key-ring.js';
import { checkFiles } from './check-files.js';
import { openToRead } from './open-to-read.js';
import { verifyCertificate } from './certificate/verify-certificate.js';
import { verifyDatabase, withFiles } from './verify-database.js';
import { wordsOf } from './words.js';

/** What the command line asks for. */
export interface Asked {
  readonly heads: readonly string[];
  readonly newKey: boolean;
  /** The file of a certificate, which is checked alone. */
  readonly file: string | null;
  /** Ids of keys that are trusted. */
  readonly trust: readonly string[];
}

/** @throws Error for an option that is none */
export const readAsked = (given: readonly string[]): Asked => {
  const heads: string[] = [];
  const trust: string[] = [];
  let newKey = false;
  let file: string | null = null;
  for (let i = 0; i < given.length; i += 1) {
    if (given[i] === '--new-key') newKey = true;
    else if (given[i] === '--head' && given[i + 1] !== undefined) heads.push(given[(i += 1)] as string);
    else if (given[i] === '--trust' && given[i + 1] !== undefined) trust.push(given[(i += 1)] as string);
    else if (file === null && !given[i]?.startsWith('-')) file = given[i] ?? null;
    else
      throw new Error(
        `${String(given[i])} is no option. npm run verify -- [--head FILE]... | CERTIFICATE.pdf [--trust KEY]... | --new-key`,
      );
  }
  return { heads, newKey, file, trust };
};

/**
 * Looks over the whole database, or at the file of a certificate, or makes a new key for the journal.
 *
 * @returns 0 when nothing was found, 1 when something was
 */
export const runVerify = async (
  given: readonly string[],
  env: NodeJS.ProcessEnv,
  say: (line: string) => void,
): Promise<number> => {
  const asked = readAsked(given);
  if (asked.file !== null) {
    const { is, words } = await verifyCertificate(readFileSync(asked.file), asked.trust);
    say(words);
    return is === 'broken' ? 1 : 0;
  }
  const config = readConfig(env);
  const ring = new KeyRing(config.evidence.keysDir);
  if (asked.newKey) {
    const { keyId, file } = ring.add();
    say(`Heads are signed from now on by key ${keyId} (${file}). Tell its id to whoever holds heads.`);
    return 0;
  }
  const held = asked.heads.map((file) => readHead(readFileSync(file)));
  const { db, close } = await openToRead(config, say);
  try {
    const keys = new Set(ring.all().map(({ keyId }) => keyId));
    const verified = await readAsOne(db, async (tx) => {
      const rows = await verifyDatabase(tx, { keys, held });
      return withFiles(rows, await checkFiles(tx, join(config.dataDir, 'photos')));
    });
    for (const line of wordsOf(verified)) say(line);
    for (const keyId of keys) say(`Key of this service: ${keyId}`);
    return verified.faults.length === 0 ? 0 : 1;
  } finally {
    await close();
  }
};
