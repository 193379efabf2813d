import { type Hash, isHash } from '../sha-256.js';
import { assertSize, joined, type ReadSubtree, type Subtree, subtreesOf } from './subtrees.js';
import { EMPTY_ROOT, nodeHash } from './tree-hash.js';

/** A tree that leaves are appended to: its size, and the hashes of the complete subtrees it consists of, left to right. */
export interface GrowingTree {
  /** Number of leaves. */
  readonly size: number;
  /** One for each binary digit 1 of the size, larger subtrees first: at most 53. */
  readonly peaks: readonly Hash[];
}

/** A complete subtree with its hash, as it is stored. */
export interface StoredSubtree extends Subtree {
  readonly hash: Hash;
}

/** A tree after leaves were appended, and the subtrees they made complete, the leaves among them. */
export interface Grown {
  readonly tree: GrowingTree;
  /** In the order they were completed; each once in the life of the tree, fewer than two a leaf. */
  readonly made: readonly StoredSubtree[];
}

export const EMPTY_TREE: GrowingTree = { size: 0, peaks: [] };

/**
 * Appends leaves, which changes no subtree that is complete.
 *
 * @param leaves their hashes, from `leafHash`
 * @throws RangeError for a hash that is not 32 bytes, and for a tree whose peaks do not belong to its size
 */
export const appendLeaves = (tree: GrowingTree, leaves: readonly Hash[]): Grown => {
  assertTree(tree);
  assertSize(tree.size + leaves.length);
  const peaks = [...tree.peaks];
  const made = leaves.flatMap((leaf, i) => append(peaks, tree.size + i, leaf));
  return { tree: { size: tree.size + leaves.length, peaks }, made };
};

/** Puts a leaf on the peaks: like adding 1 to a binary number, each carry joins two subtrees of one level. */
const append = (peaks: Hash[], position: number, leaf: Hash): readonly StoredSubtree[] => {
  if (!isHash(leaf)) throw new RangeError('A leaf is given by its hash of 32 bytes.');
  let last: StoredSubtree = { level: 0, index: position, hash: leaf };
  const made = [last];
  while (last.index % 2 === 1) {
    const left = peaks.pop() as Hash;
    last = { level: last.level + 1, index: (last.index - 1) / 2, hash: nodeHash(left, last.hash) };
    made.push(last);
  }
  peaks.push(last.hash);
  return made;
};

/** Root of a tree: the Merkle Tree Hash of RFC 9162, section 2.1.1. */
export const rootOf = (tree: GrowingTree): Hash => {
  assertTree(tree);
  return tree.size === 0 ? EMPTY_ROOT : joined(tree.peaks);
};

/** The stored subtrees that `treeOfSize` reads: one for each binary digit 1 of the size. */
export const peakReads = (size: number): readonly Subtree[] => {
  assertSize(size);
  return subtreesOf({ start: 0, end: size });
};

/** The tree as it was, or is, at a size, from what is stored: to go on appending to, or for the root it had then. */
export const treeOfSize = (size: number, read: ReadSubtree): GrowingTree => ({
  size,
  peaks: peakReads(size).map(read),
});

const assertTree = ({ size, peaks }: GrowingTree): void => {
  if (peaks.length !== peakReads(size).length || !peaks.every(isHash))
    throw new RangeError(`${peaks.length} peaks do not make a tree of ${size} leaves.`);
};
