import { appendLeaves, EMPTY_TREE, type Hash, leafHash, type ReadSubtree, rootOf } from '@hull-record/evidence';

/** A tree of entries with all that was stored while it grew. */
export interface GrownTree {
  readonly read: ReadSubtree;
  readonly leaves: readonly Hash[];
  /** Root it had at each size, from 0. */
  readonly roots: readonly Hash[];
  /** Subtrees stored. */
  readonly stored: number;
}

/** Grows a tree entry by entry, as a journal does. */
export const grownTree = (entries: readonly Uint8Array[]): GrownTree => {
  const store = new Map<string, Hash>();
  const leaves = entries.map(leafHash);
  let tree = EMPTY_TREE;
  const roots = [rootOf(tree)];
  for (const leaf of leaves) {
    const grown = appendLeaves(tree, [leaf]);
    for (const { level, index, hash } of grown.made) {
      const key = `${level}/${index}`;
      if (store.has(key)) throw new Error(`Subtree ${key} was made twice.`);
      store.set(key, hash);
    }
    tree = grown.tree;
    roots.push(rootOf(tree));
  }
  return { read: readFrom(store), leaves, roots, stored: store.size };
};

const readFrom =
  (store: ReadonlyMap<string, Hash>): ReadSubtree =>
  ({ level, index }) => {
    const hash = store.get(`${level}/${index}`);
    if (hash === undefined) throw new Error(`Subtree ${level}/${index} is not stored.`);
    return hash;
  };

/** Entries that differ, told by their number. */
export const entriesUpTo = (count: number): readonly Uint8Array[] =>
  Array.from({ length: count }, (_, i) => Buffer.from(`entry ${i}`));

/** The bytes with one bit turned. */
export const turned = (bytes: Uint8Array, bit: number): Uint8Array => {
  const copy = Uint8Array.from(bytes);
  const at = Math.floor(bit / 8) % copy.length;
  copy[at] = (copy[at] ?? 0) ^ (1 << (bit % 8));
  return copy;
};
