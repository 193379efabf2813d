import { Injectable } from '@nestjs/common';
import { mkdir, open, readFile, rename } from 'node:fs/promises';
import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { newSecret, sha256 } from '../ids.js';

/** A folder of files named by their SHA-256: the same content is kept once, and cannot change under its name. */
@Injectable()
export class PhotoStore {
  constructor(private readonly folder: string) {}

  /**
   * Keeps a file; it is on disk when this returns.
   *
   * @returns its SHA-256 in hexadecimal
   */
  async keep(content: Buffer): Promise<string> {
    const name = sha256(content);
    const path = this.pathOf(name);
    if (existsSync(path)) return name;
    await mkdir(dirname(path), { recursive: true });
    const part = `${path}.${newSecret()}`;
    await writeThrough(part, content);
    await rename(part, path);
    return name;
  }

  read(name: string): Promise<Buffer> {
    return readFile(this.pathOf(name));
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
