import type { Hash } from '../sha-256.js';
import { nodeHash } from './tree-hash.js';

/**
 * A complete subtree: the 2^level leaves from `index * 2^level` on. Level 0 are the leaves themselves.
 *
 * Once complete it never changes, whatever is appended: so its hash can be stored for good.
 */
export interface Subtree {
  readonly level: number;
  readonly index: number;
}

/** Finds the stored hash of a complete subtree. */
export type ReadSubtree = (subtree: Subtree) => Hash;

/** Leaves from `start` up to, not including, `end`; one that the definition of RFC 9162 cuts a tree into. */
export interface LeafRange {
  readonly start: number;
  readonly end: number;
}

/** @throws RangeError unless it is a whole number of leaves that a double holds exactly */
export const assertSize = (size: number): void => {
  if (!Number.isSafeInteger(size) || size < 0) throw new RangeError(`${size} is no number of leaves.`);
};

/** The largest power of two that is less than `leaves`, which are at least 2: k of RFC 9162, section 2.1.1. */
export const splitOf = (leaves: number): number => {
  let power = 1;
  while (power * 2 < leaves) power *= 2;
  return power;
};

/**
 * The complete subtrees a range consists of, left to right: at most one of each level, larger ones first.
 *
 * Doubling and halving are done by arithmetic: the bit operators of the language end at 32 bits.
 */
export const subtreesOf = ({ start, end }: LeafRange): readonly Subtree[] => {
  const found: Subtree[] = [];
  for (let from = start; from < end;) {
    let [level, leaves] = [0, 1];
    while (leaves * 2 <= end - from) [level, leaves] = [level + 1, leaves * 2];
    found.push({ level, index: from / leaves });
    from += leaves;
  }
  return found;
};

/** Hash of a range that is not empty (RFC 9162, section 2.1.1): the first subtree over the rest, down to the last. */
export const rangeHash = (range: LeafRange, read: ReadSubtree): Hash => joined(subtreesOf(range).map(read));

/** Hash over the complete subtrees of a range that is not empty, given left to right. */
export const joined = (hashes: readonly Hash[]): Hash => hashes.reduceRight((right, left) => nodeHash(left, right));
