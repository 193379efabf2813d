import type { EntityManager } from 'typeorm';
import { describeVersions } from './versions.sql.js';
import { TOUCHED, touchedBy, type Drawn } from './touched.sql.js';

/** One version of a corrected fact: what it is called, and its values in the order of `valuesOf`. */
export interface Version {
  readonly id: string;
  readonly subject: string;
  readonly values: readonly unknown[];
}

interface Row {
  readonly id: string;
  readonly entry_id: string;
  readonly corrects: string;
  readonly table: string;
  readonly replacement: string | null;
  readonly reason: string;
  readonly by: string;
  readonly happened_at: Date;
  /** The layer, joint or repair that it touches. */
  readonly place: string | null;
}

/** A correction that touches a hull, with what was and what is. */
export interface CorrectionRow extends Row {
  readonly before: Version;
  /** null: withdrawn. */
  readonly after: Version | null;
  /** Tables of the facts that were withdrawn along with it. */
  readonly along: readonly string[];
}

const CORRECTIONS = `
  with ${TOUCHED}
  select c.id, c.entry_id, c.corrects, c.corrects_table as table, c.replacement, c.reason, w.badge as by, c.happened_at, k.place
  from corrections k join fact.correction c on c.id = k.id
  join fact.journal e on e.id = c.entry_id join fact.person w on w.id = e.person_id
  order by c.recorded_at, e.position, c.corrects_table, c.id`;

/**
 * Every correction of a fact of this hull that was recorded by an instant, oldest first.
 *
 * What had to go along with a fact that was withdrawn is told with it, not by itself.
 */
export const loadCorrections = async (tx: EntityManager, drawn: Drawn, asOf: string): Promise<CorrectionRow[]> => {
  const rows = await tx.query<Row[]>(CORRECTIONS, [...touchedBy(drawn, asOf)]);
  const versions = await loadVersions(tx, rows, asOf);
  const chief = new Map<string, CorrectionRow>();
  for (const row of rows.filter(isChief(rows))) {
    const before = versions.get(row.corrects);
    if (!before || chief.has(row.id)) continue;
    const after = row.replacement === null ? null : (versions.get(row.replacement) ?? null);
    const along = rows.filter((other) => other.entry_id === row.id && other.id !== row.id);
    chief.set(row.id, { ...row, before, after, along: [...new Map(along.map((o) => [o.id, o.table])).values()] });
  }
  return [...chief.values()];
};

/** The first row of a correction has the id of its entry; one whose first row does not touch the hull stands for itself. */
const isChief =
  (rows: readonly Row[]) =>
  (row: Row): boolean =>
    row.id === row.entry_id || !rows.some((other) => other.id === row.entry_id);

const loadVersions = async (
  tx: EntityManager,
  rows: readonly Row[],
  asOf: string,
): Promise<ReadonlyMap<string, Version>> => {
  const found = new Map<string, Version>();
  for (const table of new Set(rows.map((row) => row.table))) {
    const sql = describeVersions(table);
    if (sql === undefined) continue;
    const ids = rows
      .filter((row) => row.table === table)
      .flatMap((row) => [row.corrects, row.replacement ?? []].flat());
    for (const version of await tx.query<Version[]>(sql, [ids, asOf])) found.set(version.id, version);
  }
  return found;
};
