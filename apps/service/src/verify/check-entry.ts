import { canonical, digestOf } from '../platform/facts/digest.js';
import { fault, type TamperFault } from './fault.js';
import type { ReadEntry } from './read-entries.js';

/** A row that an entry names, with the digest that it had when it was written. */
export interface NamedRow {
  readonly table: string;
  readonly id: string;
  readonly sha256: string;
}

interface Told {
  readonly kind: string;
  readonly body: unknown;
  readonly rows: readonly NamedRow[];
}

/** What an entry says that its columns repeat. */
const header = ({ format, id, plantId, kind, personId, deviceId, identity, happenedAt, recordedAt }: ReadEntry) => ({
  ...{ format, id, plantId, kind, personId, deviceId, identity, happenedAt, recordedAt },
});

/** The rows that an entry names; none of one that is no entry, which is said elsewhere. */
export const rowsOf = (read: ReadEntry): readonly NamedRow[] => told(read)?.rows ?? [];

const told = ({ entry }: ReadEntry): Told | undefined => {
  try {
    const value = JSON.parse(entry) as Partial<Told>;
    return Array.isArray(value.rows) ? (value as Told) : undefined;
  } catch {
    return undefined;
  }
};

/** What does not fit between an entry, its columns and the client's id that it was recorded under. */
export const checkEntry = (read: ReadEntry): readonly TamperFault[] => {
  const { id } = read;
  if (id === null) return [];
  const value = told(read);
  if (value === undefined) return [fault('changed', 'fact.journal', id, 'its entry is none.')];
  const covers = value.rows.map((row) => `${row.table}/${row.id}`);
  const own = { ...value, ...header(read) };
  const found: TamperFault[] = [];
  if (canonical(own) !== read.entry || canonical(covers) !== canonical(read.covers))
    found.push(fault('changed', 'fact.journal', id, 'its columns do not say what its entry says.'));
  if (read.entered !== null && read.entered !== read.position)
    found.push(fault('reordered', 'fact.journal', id, `it was entered as ${read.entered}, not as ${read.position}.`));
  if (read.digest === null) found.push(fault('removed', 'fact.client_id', id, 'the entry recorded under it is there.'));
  else if (!read.digest.equals(digestOf({ kind: value.kind, body: value.body })))
    found.push(fault('changed', 'fact.client_id', id, 'its digest is not that of the request in the journal.'));
  return found;
};
