import {
  appendLeaves,
  EMPTY_TREE,
  type GrowingTree,
  type Hash,
  leafHash,
  rootOf,
  type StoredSubtree,
} from '@hull-record/evidence';
import type { EntityManager } from 'typeorm';
import { fault, type TamperFault } from './fault.js';
import type { ReadEntry } from './read-entries.js';

const STORED = `
  select a.level, a.index::text as index, s.hash from unnest($2::int[], $3::bigint[]) with ordinality a(level, index, nth)
  left join fact.sealed_subtree s on s.plant_id = $1 and s.level = a.level and s.index = a.index order by a.nth`;

/** The tree of a plant, grown anew from the entries, with the roots it had at the sizes asked for. */
export class TreeAnew {
  readonly faults: TamperFault[] = [];
  readonly roots = new Map<number, string>();
  private tree: GrowingTree = EMPTY_TREE;
  private made = 0;

  /** @param sizes of the heads that were signed, in any order */
  constructor(
    private readonly tx: EntityManager,
    private readonly plantId: string,
    private readonly sizes: ReadonlySet<number>,
  ) {}

  get size(): number {
    return this.tree.size;
  }

  /** Appends the next entries. One that is gone leaves its leaf, if that was kept: what follows is checked all the same. */
  async append(entries: readonly ReadEntry[]): Promise<void> {
    const made: StoredSubtree[] = [];
    for (const read of entries) {
      while (this.tree.size < Number(read.index)) made.push(...this.grow(await this.lost()));
      made.push(...this.grow(this.leafOf(read)));
    }
    await this.compare(made);
  }

  /** Says what is stored beyond what the entries make. */
  async end(): Promise<void> {
    const [row] = await this.tx.query<{ count: string }[]>(
      'select count(*)::text as count from fact.sealed_subtree where plant_id = $1',
      [this.plantId],
    );
    const more = Number(row?.count ?? 0) - this.made;
    if (more > 0)
      this.faults.push(fault('added', 'fact.sealed_subtree', `${more} rows`, 'the entries make no such subtrees.'));
  }

  private grow(leaf: Hash): readonly StoredSubtree[] {
    const grown = appendLeaves(this.tree, [leaf]);
    this.tree = grown.tree;
    if (this.sizes.has(this.tree.size)) this.roots.set(this.tree.size, Buffer.from(rootOf(this.tree)).toString('hex'));
    return grown.made;
  }

  private leafOf({ id, sealedId, entry, leaf, index }: ReadEntry): Hash {
    if (id === null) {
      this.faults.push(fault('removed', 'fact.journal', sealedId ?? '', `it was sealed as entry ${index}.`));
      return leaf ?? new Uint8Array(32);
    }
    const own = leafHash(entry);
    if (leaf && Buffer.compare(leaf, own) !== 0)
      this.faults.push(fault('changed', 'fact.journal', id, `it is not what was sealed as entry ${index}.`));
    return own;
  }

  private async lost(): Promise<Hash> {
    const at = this.tree.size;
    this.faults.push(fault('removed', 'fact.sealed_entry', `of index ${at}`, 'places are counted without a gap.'));
    const [row] = await this.stored([{ level: 0, index: at }]);
    return row?.hash ?? new Uint8Array(32);
  }

  private stored(of: readonly { level: number; index: number }[]): Promise<{ hash: Buffer | null }[]> {
    return this.tx.query(STORED, [this.plantId, of.map(({ level }) => level), of.map(({ index }) => index)]);
  }

  private async compare(made: readonly StoredSubtree[]): Promise<void> {
    const stored = await this.stored(made);
    for (const [i, { level, index, hash }] of made.entries()) {
      const held = stored[i]?.hash ?? null;
      const name = `${index} of level ${level}`;
      if (held !== null) this.made += 1;
      if (held === null) this.faults.push(fault('removed', 'fact.sealed_subtree', name, 'it was complete.'));
      else if (Buffer.compare(held, hash) !== 0)
        this.faults.push(fault('changed', 'fact.sealed_subtree', name, 'it is not the hash of its entries.'));
    }
  }
}
