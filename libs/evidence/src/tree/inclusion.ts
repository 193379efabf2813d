import { type Hash, isHash, sameBytes } from '../sha-256.js';
import { climb } from './climb.js';
import { type LeafRange, rangeHash, type ReadSubtree, splitOf, type Subtree, subtreesOf } from './subtrees.js';
import { nodeHash } from './tree-hash.js';

/** That a leaf is at a place in the tree of a size and root, with the proof of it. */
export interface InclusionClaim {
  /** Place of the leaf, from 0. */
  readonly index: number;
  readonly size: number;
  readonly leaf: Hash;
  readonly proof: readonly Hash[];
  readonly root: Hash;
}

/** The stored subtrees that `inclusionProof` reads, so that one query can fetch them: fewer than 2 log2(size) + 1. */
export const inclusionReads = (index: number, size: number): readonly Subtree[] =>
  beside(index, size).flatMap(subtreesOf);

/**
 * Proof that the leaf at `index` is in the tree of `size` leaves (RFC 9162, section 2.1.3.1), nearest sibling first.
 *
 * @throws RangeError for a leaf that the tree does not have
 */
export const inclusionProof = (index: number, size: number, read: ReadSubtree): readonly Hash[] =>
  beside(index, size).map((range) => rangeHash(range, read));

/** What lies beside the way from the root to a leaf, nearest to the leaf first. */
const beside = (index: number, size: number): readonly LeafRange[] => {
  if (!isPlace(index, size)) throw new RangeError(`There is no leaf ${index} in a tree of ${size}.`);
  const ranges: LeafRange[] = [];
  let [start, end] = [0, size];
  while (end - start > 1) {
    const middle = start + splitOf(end - start);
    ranges.unshift(index < middle ? { start: middle, end } : { start, end: middle });
    [start, end] = index < middle ? [start, middle] : [middle, end];
  }
  return ranges;
};

/**
 * Whether a proof leads from a leaf at its place to the root of a tree: the steps of RFC 9162, section 2.1.3.2.
 *
 * It says nothing of the size, which fixes the shape alone: root and size are to be believed together, from a signed
 * head. Anything malformed is false.
 */
export const verifyInclusion = ({ index, size, leaf, proof, root }: InclusionClaim): boolean => {
  if (!isPlace(index, size) || ![leaf, root, ...proof].every(isHash)) return false;
  let hash = leaf;
  const whole = climb(index, size - 1, proof, (sibling, isLeft) => {
    hash = isLeft ? nodeHash(sibling, hash) : nodeHash(hash, sibling);
  });
  return whole && sameBytes(hash, root);
};

const isPlace = (index: number, size: number): boolean =>
  Number.isSafeInteger(index) && Number.isSafeInteger(size) && index >= 0 && index < size;
