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
  order by c.recorded_at, e.position`;

/**
 * Every correction of a fact of this hull that was recorded by an instant, oldest first.
 *
 * One entry may correct several facts. Those that got another value are told each by itself; those that had to go along
 * with a fact that was withdrawn are told with it.
 */
export const loadCorrections = async (tx: EntityManager, drawn: Drawn, asOf: string): Promise<CorrectionRow[]> => {
  const found = await tx.query<Row[]>(CORRECTIONS, [...touchedBy(drawn, asOf)]);
  const rows = [...new Map(found.map((row) => [row.id, row])).values()];
  const versions = await loadVersions(tx, rows, asOf);
  const told = rows.flatMap((row): CorrectionRow[] => {
    const before = versions.get(row.corrects);
    if (before === undefined || goesAlong(rows, row)) return [];
    const after = row.replacement === null ? null : (versions.get(row.replacement) ?? null);
    const along = rows.filter((other) => other.entry_id === row.id && goesAlong(rows, other)).map(({ table }) => table);
    return [{ ...row, before, after, along }];
  });
  const entries = [...new Set(rows.map((row) => row.entry_id))];
  return told.sort((a, b) => entries.indexOf(a.entry_id) - entries.indexOf(b.entry_id) || withinEntry(a, b));
};

/** The first row of a correction has the id of its entry; what it withdrew besides goes along with it. */
const goesAlong = (rows: readonly Row[], row: Row): boolean =>
  row.id !== row.entry_id && row.replacement === null && rows.some((other) => other.id === row.entry_id);

/** What was corrected first, then what followed, by what it is called. */
const withinEntry = (a: CorrectionRow, b: CorrectionRow): number => (keyOf(a) < keyOf(b) ? -1 : 1);

const keyOf = ({ id, entry_id, before }: CorrectionRow): string =>
  `${id === entry_id ? 0 : 1} ${before.subject} ${JSON.stringify(before.values)} ${id}`;

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
