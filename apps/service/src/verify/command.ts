import { readHead } from '@hull-record/evidence';
import { readFileSync } from 'node:fs';
import { readConfig } from '../platform/config/config.js';
import { readAsOne } from '../platform/database/read-as-one.js';
import { KeyRing } from '../platform/journal/key-ring.js';
import { openToRead } from './open-to-read.js';
import { verifyDatabase } from './verify-database.js';
import { wordsOf } from './words.js';

/** What the command line asks for. */
export interface Asked {
  readonly heads: readonly string[];
  readonly newKey: boolean;
}

/** @throws Error for an option that is none */
export const readAsked = (given: readonly string[]): Asked => {
  const heads: string[] = [];
  let newKey = false;
  for (let i = 0; i < given.length; i += 1) {
    if (given[i] === '--new-key') newKey = true;
    else if (given[i] === '--head' && given[i + 1] !== undefined) heads.push(given[(i += 1)] as string);
    else throw new Error(`${String(given[i])} is no option. npm run verify -- [--head FILE]... | --new-key`);
  }
  return { heads, newKey };
};

/**
 * Looks over the whole database, or makes a new key for the journal.
 *
 * @returns 0 when nothing was found, 1 when something was
 */
export const runVerify = async (
  given: readonly string[],
  env: NodeJS.ProcessEnv,
  say: (line: string) => void,
): Promise<number> => {
  const asked = readAsked(given);
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
    const verified = await readAsOne(db, (tx) => verifyDatabase(tx, { keys, held }));
    for (const line of wordsOf(verified)) say(line);
    for (const keyId of keys) say(`Key of this service: ${keyId}`);
    return verified.faults.length === 0 ? 0 : 1;
  } finally {
    await close();
  }
};
