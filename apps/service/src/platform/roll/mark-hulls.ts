import type { Fact, WrittenRow } from '../facts/fact.js';

/** Tables of which the roll has something, each with the column that says of which hull. */
const OF_HULLS: Readonly<Record<string, 'root' | 'hull_id'>> = {
  hull: 'root',
  hull_number: 'hull_id',
  life_fact: 'hull_id',
  joint: 'hull_id',
};

/** A mark more for each change, never one that is changed: writers must not wait for each other here. */
const MARK = 'insert into derived.stale_hull (hull_id) select distinct hull_id from unnest($1::uuid[]) hull_id';

const CORRECTED = `
  insert into derived.stale_hull (hull_id)
  ${Object.entries(OF_HULLS)
    .map(([table, hull]) => `select ${hull} from fact.${table} where id = any($1)`)
    .join(' union ')}`;

/** Marks hulls as not in the roll as they are now, those of facts that were written and those of facts that were corrected. */
export const markHulls = async ({ tx, rows }: Pick<Fact, 'tx' | 'rows'>): Promise<void> => {
  const written = rows.flatMap((row) => hullOf(row) ?? []);
  const corrected = rows.flatMap(({ table, values }) =>
    table === 'correction' && String(values['corrects_table']) in OF_HULLS ? [values['corrects']] : [],
  );
  if (written.length > 0) await tx.query(MARK, [written]);
  if (corrected.length > 0) await tx.query(CORRECTED, [corrected]);
};

const hullOf = ({ table, values }: WrittenRow): string | null => {
  const column = OF_HULLS[table];
  return column === undefined ? null : String(values[column]);
};
