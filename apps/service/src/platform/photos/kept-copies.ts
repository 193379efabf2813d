import { readFileSync } from 'node:fs';
import { mkdir, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { createHash } from 'node:crypto';
import { newSecret } from '../ids.js';

const DIGEST_BYTES = 32;

/**
 * A folder of files that can be made again at any time: it may be emptied while the service runs.
 *
 * Each file begins with the SHA-256 of what follows, so that one that was half-written, cut off or changed counts as
 * missing; it gets its name when it is whole.
 */
export class KeptCopies {
  constructor(private readonly folder: string) {}

  async keep(name: string, content: Buffer): Promise<void> {
    const path = this.pathOf(name);
    await mkdir(dirname(path), { recursive: true });
    const part = `${path}.${newSecret()}.part`;
    await writeFile(part, Buffer.concat([digestOf(content), content]), { mode: 0o600, flag: 'wx' });
    await rename(part, path);
  }

  /** What is kept under a name; undefined when it is not there or not whole. */
  async read(name: string): Promise<Buffer | undefined> {
    return whole(await readFile(this.pathOf(name)).catch(() => undefined));
  }

  /** The same, for code that cannot wait: a small file that was read a moment ago. */
  readNow(name: string): Buffer | undefined {
    try {
      return whole(readFileSync(this.pathOf(name)));
    } catch {
      return undefined;
    }
  }

  /** Erases what is kept under names that begin so. */
  async forget(beginning: string): Promise<void> {
    const folder = dirname(this.pathOf(beginning));
    const names = await readdir(folder).catch((): string[] => []);
    await Promise.all(names.filter((name) => name.startsWith(beginning)).map((name) => rm(join(folder, name))));
  }

  private pathOf(name: string): string {
    return join(this.folder, name.slice(0, 2), name);
  }
}

const digestOf = (content: Buffer): Buffer => createHash('sha256').update(content).digest();

const whole = (file: Buffer | undefined): Buffer | undefined => {
  if (file === undefined) return undefined;
  const content = file.subarray(DIGEST_BYTES);
  return digestOf(content).equals(file.subarray(0, DIGEST_BYTES)) ? content : undefined;
};
