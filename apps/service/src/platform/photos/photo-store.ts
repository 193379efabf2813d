import { Injectable } from '@nestjs/common';
import { mkdir, open, readFile, rename, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { newSecret, sha256 } from '../ids.js';

/** A folder of files named by their SHA-256: the same content is kept once, and cannot change under its name. */
@Injectable()
export class PhotoStore {
  constructor(readonly folder: string) {}

  /**
   * Keeps a file; it is on disk when this returns.
   *
   * @returns its SHA-256 in hexadecimal
   */
  async keep(content: Buffer): Promise<string> {
    const name = sha256(content);
    const path = this.pathOf(name);
    if ((await this.read(name)) !== undefined) return name;
    await mkdir(dirname(path), { recursive: true });
    const part = `${path}.${newSecret()}`;
    await writeThrough(part, content);
    await rename(part, path);
    return name;
  }

  /** A file by its SHA-256; undefined when it is missing, cannot be read, or is no longer what its name says. */
  async read(name: string): Promise<Buffer | undefined> {
    const content = await readFile(this.pathOf(name)).catch(() => undefined);
    return content !== undefined && sha256(content) === name ? content : undefined;
  }

  /** Erases a file; it does not matter whether it is there. */
  async erase(name: string): Promise<void> {
    await rm(this.pathOf(name), { force: true });
  }

  private pathOf(name: string): string {
    return join(this.folder, name.slice(0, 2), name);
  }
}

const writeThrough = async (path: string, content: Buffer): Promise<void> => {
  const file = await open(path, 'wx', 0o600);
  try {
    await file.writeFile(content);
    await file.sync();
  } finally {
    await file.close();
  }
};
