import type { CorrectionRow, Version } from './load-corrections.js';
import type { RecordFacts } from './record-facts.js';
import { valuesOf } from './versions.sql.js';

/** What people wrote freely, by the column it stands in, and what stands for it. */
const WRITTEN: Readonly<Record<string, string | null>> = {
  note: null,
  acceptance_note: null,
  toldBy: 'somebody there',
  evidence: 'left out here',
};

/**
 * The facts of a hull without what somebody noted freely: a note may hold a name. Reasons of decisions and of corrections
 * stay; a note that was corrected is told as such, and not what it said.
 */
export const withoutNotes = (facts: RecordFacts): RecordFacts => {
  const { layers, defects, repairs, touchUps, joints, life } = facts;
  const made = dropped({ layers, defects, repairs, touchUps, joints, life });
  return { ...facts, ...made, corrections: facts.corrections.map(withoutNote) };
};

/** The same value with each freely written text in it left out; dates and the like stay as they are. */
const dropped = <T>(value: T): T => {
  if (Array.isArray(value)) return value.map(dropped) as T;
  if (value === null || typeof value !== 'object' || Object.getPrototypeOf(value) !== Object.prototype) return value;
  const entries = Object.entries(value).map(([key, each]) => [
    key,
    Object.hasOwn(WRITTEN, key) && typeof each === 'string' ? WRITTEN[key] : dropped(each),
  ]);
  return Object.fromEntries(entries) as T;
};

const withoutNote = (row: CorrectionRow): CorrectionRow => ({
  ...row,
  before: hidden(row.table, row.before, 'left out here'),
  after: row.after === null ? null : hidden(row.table, row.after, 'changed, left out here'),
});

const hidden = (table: string, version: Version, words: string): Version => ({
  ...version,
  values: valuesOf(table).map(({ label }, i) => {
    const value = version.values[i] ?? null;
    return label === 'note' && value !== null ? words : value;
  }),
});
