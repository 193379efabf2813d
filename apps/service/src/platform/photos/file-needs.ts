import type { EntityManager } from 'typeorm';

/** A stored file of photos: whether any photo still needs it, or it was erased by recorded acts. */
export interface FileNeed {
  readonly name: string;
  readonly needed: boolean;
}

const TABLES = `
  select table_name as name from information_schema.columns
  where table_schema = 'fact' and column_name = 'original_sha256' order by 1`;

/** Tables of facts whose rows are photos. */
export const photoTables = async (tx: EntityManager): Promise<readonly string[]> =>
  (await tx.query<{ name: string }[]>(TABLES)).map(({ name }) => name);

/** SQL, to stand before a select: `files`, each file of each photo and redacted copy, and whether that one needs it. */
const needs = (tables: readonly string[]): string => `
  with photos as (${tables
    .map((table) => `select root, original_sha256 as original, shown_sha256 as shown from fact.${table}`)
    .join(' union all ')}),
  redacted as (
    select photo_id, shown_sha256 as shown, original,
      row_number() over (partition by photo_id order by recorded_at desc, id desc) as back
    from fact.photo_redacted),
  files as (
    select p.root, p.original as name,
      not exists (select from redacted r where r.photo_id = p.root and r.original = 'erased') as needed from photos p
    union all
    select p.root, p.shown, not exists (select from redacted r where r.photo_id = p.root) from photos p
    union all
    select r.photo_id, r.shown, r.back = 1 from redacted r)`;

/**
 * Every stored file that photos name, each once: needed by one of them, or by none any more. A redacted photo needs
 * the newest redacted copy, and the original only while it is kept apart.
 *
 * @param photo only the files of this one; another that has the same file may need it all the same
 */
export const fileNeeds = async (tx: EntityManager, photo?: string): Promise<readonly FileNeed[]> =>
  tx.query<FileNeed[]>(
    `${needs(await photoTables(tx))}
     select f.name, bool_or(f.needed) as needed from files f
     where $1::uuid is null or f.name in (select o.name from files o where o.root = $1)
     group by f.name order by f.name`,
    [photo ?? null],
  );
