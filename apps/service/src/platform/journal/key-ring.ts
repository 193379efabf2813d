import { keyIdOf, publicKeyOf } from '@hull-record/evidence';
import { createPrivateKey, generateKeyPairSync, type KeyObject } from 'node:crypto';
import { existsSync, linkSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ConfigWrong } from '../config/config-wrong.js';
import { newSecret } from '../ids.js';

/** A key that signs heads, and its name. */
export interface JournalKey {
  readonly file: string;
  readonly keyId: string;
  readonly key: KeyObject;
}

const NAME = /^journal-(\d{4})\.pem$/;
const nameOf = (number: number): string => `journal-${String(number).padStart(4, '0')}.pem`;

/** What others than the owner of a file may do with it (POSIX). */
const FOR_OTHERS = 0o077;

/**
 * The keys that sign the heads of the journal: files outside the database, which its owner alone can read. The one with
 * the highest number signs; the others stay, so that heads of their time can be told to be of this plant.
 */
export class KeyRing {
  constructor(private readonly folder: string) {}

  /** The key that signs now; made at the first run. */
  newest(): JournalKey {
    const keys = this.all();
    return keys.at(-1) ?? this.add();
  }

  /**
   * All keys, the oldest first.
   *
   * @throws ConfigWrong for a file that others can read
   */
  all(): readonly JournalKey[] {
    if (!existsSync(this.folder)) return [];
    return readdirSync(this.folder)
      .filter((name) => NAME.test(name))
      .sort()
      .map((name) => {
        const file = join(this.folder, name);
        const key = createPrivateKey(readSecret(file));
        return { file, key, keyId: keyIdOf(publicKeyOf(key)) };
      });
  }

  /** Makes another key, which signs from now on. Two that do so at once make one key. */
  add(): JournalKey {
    mkdirSync(this.folder, { recursive: true, mode: 0o700 });
    const last = readdirSync(this.folder).flatMap((name) => NAME.exec(name)?.[1] ?? []);
    const file = join(this.folder, nameOf(Math.max(0, ...last.map(Number)) + 1));
    const { privateKey } = generateKeyPairSync('ed25519');
    writeSecretOnce(file, privateKey.export({ format: 'pem', type: 'pkcs8' }));
    const key = createPrivateKey(readSecret(file));
    return { file, key, keyId: keyIdOf(publicKeyOf(key)) };
  }
}

/**
 * Reads a file that holds a secret.
 *
 * @throws ConfigWrong when others than its owner may read or change it
 */
export const readSecret = (file: string): Buffer => {
  if (process.platform !== 'win32' && (statSync(file).mode & FOR_OTHERS) !== 0)
    throw new ConfigWrong(
      `${file}: others than its owner can read or change this key. If nobody did, chmod 600 it; else make a new key: npm run verify -- --new-key.`,
    );
  return readFileSync(file);
};

/** Writes a file that its owner alone can read; whole or not at all, and never over one that is there. */
export const writeSecretOnce = (file: string, content: string | Buffer): void => {
  const part = `${file}.${newSecret()}`;
  writeFileSync(part, content, { mode: 0o600, flag: 'wx' });
  try {
    linkSync(part, file);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
  } finally {
    rmSync(part);
  }
};
