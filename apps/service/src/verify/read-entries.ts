import type { EntityManager } from 'typeorm';

/** An entry of the journal with its place in the tree; what is not there is null. */
export interface ReadEntry {
  readonly index: string | null;
  readonly entered: string | null;
  readonly sealedId: string | null;
  readonly leaf: Buffer | null;
  readonly id: string | null;
  readonly position: string;
  readonly plantId: string;
  readonly format: number;
  readonly kind: string;
  readonly personId: string;
  readonly deviceId: string;
  readonly identity: string;
  readonly happenedAt: Date;
  readonly recordedAt: Date;
  readonly covers: readonly string[];
  readonly entry: string;
  readonly digest: Buffer | null;
}

const COLUMNS = `s.index::text as index, s.entered::text as entered, s.entry_id as "sealedId", t.hash as leaf,
  j.id, j.position::text as position, j.plant_id as "plantId", j.format, j.kind, j.person_id as "personId",
  j.device_id as "deviceId", j.identity, j.happened_at as "happenedAt", j.recorded_at as "recordedAt", j.covers, j.entry,
  k.digest`;

const JOINED = `left join fact.sealed_subtree t on t.plant_id = s.plant_id and t.level = 0 and t.index = s.index
  left join fact.client_id k on k.id = j.id`;

const SEALED = `
  select ${COLUMNS} from fact.sealed_entry s left join fact.journal j on j.id = s.entry_id ${JOINED}
  where s.plant_id = $1 and s.index >= $2 order by s.index limit $3`;

const UNSEALED = `
  select ${COLUMNS} from fact.journal j left join fact.sealed_entry s on s.entry_id = j.id ${JOINED}
  where j.plant_id = $1 and s.entry_id is null and j.position > $2 order by j.position limit $3`;

/** So many entries are held in memory at a time. */
const AT_ONCE = 500;

/** Entries of a plant in the order in which they were sealed, some at a time. */
export async function* sealedEntries(tx: EntityManager, plantId: string): AsyncGenerator<readonly ReadEntry[]> {
  for (let from = 0; ;) {
    const some = await tx.query<ReadEntry[]>(SEALED, [plantId, from, AT_ONCE]);
    if (some.length > 0) yield some;
    if (some.length < AT_ONCE) return;
    from = Number(some.at(-1)?.index) + 1;
  }
}

/** Entries of a plant that are not sealed yet, some at a time. */
export async function* unsealedEntries(tx: EntityManager, plantId: string): AsyncGenerator<readonly ReadEntry[]> {
  for (let after = '0'; ;) {
    const some = await tx.query<ReadEntry[]>(UNSEALED, [plantId, after, AT_ONCE]);
    if (some.length > 0) yield some;
    if (some.length < AT_ONCE) return;
    after = some.at(-1)?.position ?? after;
  }
}
