import { appendLeaves, type GrowingTree, leafHash, peakReads, treeOfSize } from '@hull-record/evidence';
import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { readSubtrees } from './read-subtrees.js';

/** So many entries are sealed in one transaction. */
const AT_ONCE = 2_000;

/** The name of the server as its control file has it: another after a restore or an upgrade to a new cluster. */
const SERVER = 'select system_identifier::text as server from pg_control_system()';

const STATE = 'select server, sealed_below as "sealedBelow" from work.seal_state where plant_id = $1';

/**
 * Entries that can be sealed. What a transaction below the oldest running one wrote is all there is to see of it, and
 * who began after it ended has a higher number: so no entry comes later that belongs before these. One statement sees
 * one snapshot, and the limit is that of the same snapshot.
 *
 * `$3` is true when the numbers mean nothing any more: then whatever is there is taken.
 */
const UNSEALED = `
  select j.id, j.position as entered, j.entry from fact.journal j
  where j.plant_id = $1 and ($3 or (j.transaction >= $2::xid8 and j.transaction < pg_snapshot_xmin(pg_current_snapshot())))
    and not exists (select from fact.sealed_entry s where s.entry_id = j.id)
  order by j.position limit $4`;

const NOW_BELOW = 'select pg_snapshot_xmin(pg_current_snapshot())::text as below';

const KEEP_ENTRIES = `
  insert into fact.sealed_entry (entry_id, plant_id, index, entered)
  select e.id, $1, $2 + e.nth - 1, e.entered from unnest($3::uuid[], $4::bigint[]) with ordinality e(id, entered, nth)`;

const KEEP_SUBTREES = `
  insert into fact.sealed_subtree (plant_id, level, index, hash)
  select $1, t.level, t.index, t.hash from unnest($2::int[], $3::bigint[], $4::bytea[]) t(level, index, hash)`;

const KEEP_STATE = `
  insert into work.seal_state (plant_id, server, sealed_below) values ($1, $2, $3)
  on conflict (plant_id) do update set server = excluded.server, sealed_below = excluded.sealed_below`;

interface Unsealed {
  readonly id: string;
  readonly entered: string;
  readonly entry: string;
}

/**
 * Gives entries of the journal their place in the tree of their plant, one alone at a time; writers do not wait for it.
 */
@Injectable()
export class SealJournal {
  constructor(private readonly db: DataSource) {}

  /** Seals what can be sealed of each plant; how many entries that were. */
  async all(): Promise<number> {
    const plants = await this.db.query<{ id: string }[]>('select id from fact.plant order by code');
    let sealed = 0;
    for (const { id } of plants) sealed += await this.of(id);
    return sealed;
  }

  /** Seals what can be sealed of a plant; how many entries that were. */
  async of(plantId: string): Promise<number> {
    let sealed = 0;
    for (;;) {
      const some = await this.db.transaction((tx) => sealSome(tx, plantId));
      sealed += some;
      if (some < AT_ONCE) return sealed;
    }
  }
}

/** Waits for whoever seals or signs in the plant, until the end of the transaction. */
export const aloneInJournal = async (tx: EntityManager, plantId: string): Promise<void> => {
  await tx.query('select pg_advisory_xact_lock(hashtextextended($1, 26))', [plantId]);
};

/** The tree of all that is sealed in a plant. */
export const sealedTree = async (tx: EntityManager, plantId: string): Promise<GrowingTree> => {
  const [row] = await tx.query<{ size: string }[]>(
    'select (coalesce(max(index), -1) + 1)::text as size from fact.sealed_entry where plant_id = $1',
    [plantId],
  );
  const size = Number(row?.size ?? 0);
  return treeOfSize(size, await readSubtrees(tx, plantId, peakReads(size)));
};

const sealSome = async (tx: EntityManager, plantId: string): Promise<number> => {
  await aloneInJournal(tx, plantId);
  const [{ server } = { server: '' }] = await tx.query<{ server: string }[]>(SERVER);
  const [state] = await tx.query<{ server: string; sealedBelow: string }[]>(STATE, [plantId]);
  const anew = state?.server !== server;
  // Asked before the entries: what is below this limit is below the later one of the entries too.
  const [{ below } = { below: '0' }] = await tx.query<{ below: string }[]>(NOW_BELOW);
  const found = await tx.query<Unsealed[]>(UNSEALED, [plantId, anew ? '0' : state.sealedBelow, anew, AT_ONCE]);
  await append(tx, plantId, found);
  // A full batch may have left some: the limit stays where it was, and the server unknown, until all are sealed.
  if (found.length < AT_ONCE) await tx.query(KEEP_STATE, [plantId, server, below]);
  return found.length;
};

const append = async (tx: EntityManager, plantId: string, entries: readonly Unsealed[]): Promise<void> => {
  if (entries.length === 0) return;
  const tree = await sealedTree(tx, plantId);
  const { made } = appendLeaves(
    tree,
    entries.map(({ entry }) => leafHash(entry)),
  );
  await tx.query(KEEP_ENTRIES, [
    plantId,
    tree.size,
    entries.map(({ id }) => id),
    entries.map(({ entered }) => entered),
  ]);
  await tx.query(KEEP_SUBTREES, [
    plantId,
    made.map(({ level }) => level),
    made.map(({ index }) => index),
    made.map(({ hash }) => hash),
  ]);
};
