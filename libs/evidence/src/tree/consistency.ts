import { type Hash, isHash, sameBytes } from '../sha-256.js';
import { climb, half } from './climb.js';
import { type LeafRange, rangeHash, type ReadSubtree, splitOf, type Subtree, subtreesOf } from './subtrees.js';
import { EMPTY_ROOT, nodeHash } from './tree-hash.js';

/** That a tree begins with the leaves of an earlier one, with the proof of it. */
export interface ConsistencyClaim {
  /** Size and root of the earlier tree. */
  readonly first: number;
  readonly firstRoot: Hash;
  /** Size and root of the later tree. */
  readonly second: number;
  readonly secondRoot: Hash;
  readonly proof: readonly Hash[];
}

/** The stored subtrees that `consistencyProof` reads, so that one query can fetch them: fewer than 2 log2(second) + 2. */
export const consistencyReads = (first: number, second: number): readonly Subtree[] =>
  proving(first, second).flatMap(subtreesOf);

/**
 * Proof that the tree of `second` leaves begins with that of `first` (RFC 9162, section 2.1.4.1). It is empty for two
 * trees of one size, and from the tree of no leaves, with which every tree begins.
 *
 * @throws RangeError when the second tree is the smaller one
 */
export const consistencyProof = (first: number, second: number, read: ReadSubtree): readonly Hash[] =>
  proving(first, second).map((range) => rangeHash(range, read));

/** SUBPROOF of the section above, from the root down, given in its order: the deepest first. */
const proving = (first: number, second: number): readonly LeafRange[] => {
  if (!inOrder(first, second)) throw new RangeError(`A tree of ${second} leaves does not begin with one of ${first}.`);
  if (first === 0) return [];
  const ranges: LeafRange[] = [];
  let [start, end] = [0, second];
  while (end > first) {
    const middle = start + splitOf(end - start);
    ranges.unshift(first <= middle ? { start: middle, end } : { start, end: middle });
    [start, end] = first <= middle ? [start, middle] : [middle, end];
  }
  // A whole earlier tree is known to whoever holds its root; a part of it has to be told.
  return start === 0 ? ranges : [{ start, end }, ...ranges];
};

/**
 * Whether a proof shows that the later tree begins with the earlier one: the steps of RFC 9162, section 2.1.4.2.
 *
 * Two trees of one size have to have one root, and the tree of no leaves its own. Anything malformed is false.
 */
export const verifyConsistency = ({ first, firstRoot, second, secondRoot, proof }: ConsistencyClaim): boolean => {
  if (!inOrder(first, second) || ![firstRoot, secondRoot, ...proof].every(isHash)) return false;
  if (first === second) return proof.length === 0 && sameBytes(firstRoot, secondRoot) && isRootOf(first, firstRoot);
  if (first === 0) return proof.length === 0 && isRootOf(first, firstRoot);
  let [at, last] = [first - 1, second - 1];
  while (at % 2 === 1) [at, last] = [half(at), half(last)];
  // A first tree that is one complete subtree is where the proof begins; its root is left out of it.
  const [seed, ...rest] = at === 0 ? [firstRoot, ...proof] : proof;
  if (seed === undefined) return false;
  let [one, two] = [seed, seed];
  const whole = climb(at, last, rest, (hash, isLeft) => {
    if (isLeft) one = nodeHash(hash, one);
    two = isLeft ? nodeHash(hash, two) : nodeHash(two, hash);
  });
  return whole && sameBytes(one, firstRoot) && sameBytes(two, secondRoot);
};

const isRootOf = (size: number, root: Hash): boolean => size > 0 || sameBytes(root, EMPTY_ROOT);

const inOrder = (first: number, second: number): boolean =>
  Number.isSafeInteger(first) && Number.isSafeInteger(second) && first >= 0 && first <= second;
