import type { EntityManager } from 'typeorm';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileNeeds } from '../platform/photos/file-needs.js';
import { sha256 } from '../platform/ids.js';
import { fault, type TamperFault } from './fault.js';

/** Columns of facts that name a stored file by its SHA-256. */
const COLUMNS = `
  select table_name as "table", column_name as "column" from information_schema.columns
  where table_schema = 'fact' and ((table_name = 'certificate_file' and column_name = 'sha256')
    or column_name in ('original_sha256', 'shown_sha256')) order by 1, 2`;

/** What a look over the stored files found. */
export interface CheckedFiles {
  readonly faults: readonly TamperFault[];
  /** Files of photos that were erased by recorded acts. */
  readonly erased: number;
}

/**
 * Stored photos and certificates against the SHA-256 that facts have of them: what is missing, what was altered, and what
 * was to be erased by a recorded act and is there all the same.
 */
export const checkFiles = async (tx: EntityManager, folder: string): Promise<CheckedFiles> => {
  const erased = new Set((await fileNeeds(tx)).flatMap(({ name, needed }) => (needed ? [] : [name])));
  const found: TamperFault[] = [];
  for (const { table, column } of await tx.query<{ table: string; column: string }[]>(COLUMNS)) {
    const rows = await tx.query<{ id: string; name: string }[]>(
      `select t.id, t.${column} as name from fact.${table} t order by t.id`,
    );
    for (const { id, name } of rows) {
      const content = await readFile(join(folder, name.slice(0, 2), name)).catch(() => null);
      const where = `${table} ${id}`;
      if (erased.has(name)) {
        if (content !== null)
          found.push(
            fault('added', 'stored files', where, `the file ${name} was erased by a recorded act, and is there.`),
          );
      } else if (content === null) found.push(fault('removed', 'stored files', where, `the file ${name} is missing.`));
      else if (sha256(content) !== name)
        found.push(fault('changed', 'stored files', where, `the file ${name} is not what its SHA-256 says.`));
    }
  }
  return { faults: found, erased: erased.size };
};
