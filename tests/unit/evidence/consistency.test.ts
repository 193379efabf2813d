import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  type ConsistencyClaim,
  consistencyProof,
  consistencyReads,
  EMPTY_ROOT,
  type Hash,
  verifyConsistency,
} from '@hull-record/evidence';
import { entriesUpTo, grownTree, turned } from '../../support/grown-tree.js';
import { proof as proofOf } from '../../support/rfc-tree.js';

const MOST = 130;
const ENTRIES = entriesUpTo(MOST);
const grown = grownTree(ENTRIES);
const rootAt = (size: number): Hash => grown.roots[size] as Hash;

const claimOf = (first: number, second: number): ConsistencyClaim => ({
  first,
  firstRoot: rootAt(first),
  second,
  secondRoot: rootAt(second),
  proof: consistencyProof(first, second, grown.read),
});

const everyPair = Array.from({ length: MOST + 1 }, (_, second) => second).flatMap((second) =>
  Array.from({ length: second + 1 }, (_, first) => [first, second] as const),
);

describe('a proof of consistency', () => {
  it('is that of the recursive definition (RFC 9162, section 2.1.4.1)', () => {
    for (const [first, second] of everyPair.filter(([first, second]) => first > 0 && (second <= 40 || second === MOST)))
      expect(consistencyProof(first, second, grown.read)).toEqual(proofOf(first, ENTRIES.slice(0, second)));
  });

  it(`verifies for every two sizes of up to ${MOST}`, () => {
    expect(everyPair.filter(([first, second]) => !verifyConsistency(claimOf(first, second)))).toEqual([]);
  });

  it('verifies for no other sizes and no other root', () => {
    const wrong = everyPair
      .filter(([first, second]) => first > 0 && second <= 24)
      .filter(([first, second]) => {
        const claim = claimOf(first, second);
        return grown.roots.some(
          (root, size) =>
            (size !== first && verifyConsistency({ ...claim, firstRoot: root })) ||
            (size !== second && verifyConsistency({ ...claim, secondRoot: root })) ||
            (size !== first && size > 0 && verifyConsistency({ ...claim, first: size, firstRoot: root })) ||
            (size !== second && verifyConsistency({ ...claim, second: size, secondRoot: root })),
        );
      });
    expect(wrong).toEqual([]);
  });

  const pair = fc.nat(everyPair.length - 1).map((at) => everyPair[at] as readonly [number, number]);

  it('never verifies with a bit turned in a root or in a hash of the proof', () => {
    fc.assert(
      fc.property(pair, fc.nat(255), fc.nat(), ([first, second], bit, which) => {
        const claim = claimOf(first, second);
        const at = which % Math.max(1, claim.proof.length);
        const proof = claim.proof.map((hash, i) => (i === at ? turned(hash, bit) : hash));
        expect(verifyConsistency({ ...claim, proof })).toBe(proof.length === 0);
        expect(verifyConsistency({ ...claim, firstRoot: turned(claim.firstRoot, bit) })).toBe(false);
        // Every tree begins with the one of no leaves: from it there is nothing to be proved of the later root.
        expect(verifyConsistency({ ...claim, secondRoot: turned(claim.secondRoot, bit) })).toBe(
          first === 0 && second > 0,
        );
      }),
    );
  });

  it('never verifies with a hash too many, too few, exchanged or cut', () => {
    fc.assert(
      fc.property(pair, fc.nat(), fc.uint8Array({ maxLength: 40 }), ([first, second], where, more) => {
        const claim = claimOf(first, second);
        const at = where % (claim.proof.length + 1);
        const verifies = (proof: readonly Hash[]): boolean => verifyConsistency({ ...claim, proof });
        for (const hash of [more, claim.firstRoot, claim.secondRoot, ...claim.proof])
          expect(verifies(claim.proof.toSpliced(at, 0, hash))).toBe(false);
        expect(verifies(claim.proof.toSpliced(at, 1))).toBe(at === claim.proof.length);
        expect(verifies([...claim.proof].reverse())).toBe(claim.proof.length < 2);
        expect(verifies(claim.proof.map((hash) => hash.subarray(1)))).toBe(claim.proof.length === 0);
      }),
    );
  });

  it('does not verify against a tree in which an earlier entry was changed', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.nat(40), fc.nat(), (first, more, which) => {
        const second = first + more;
        const changed = ENTRIES.slice(0, second).with(which % first, Buffer.from('changed'));
        const other = grownTree(changed);
        const proof = consistencyProof(first, second, other.read);
        const secondRoot = other.roots[second] as Hash;
        expect(verifyConsistency({ first, firstRoot: rootAt(first), second, secondRoot, proof })).toBe(false);
      }),
    );
  });

  it('is false, not an error, for what is malformed', () => {
    const claim = claimOf(3, 7);
    for (const first of [-1, 0, 8, 3.5, NaN, Infinity]) expect(verifyConsistency({ ...claim, first })).toBe(false);
    for (const second of [2, -7, 7.5, NaN, Infinity, 2 ** 53])
      expect(verifyConsistency({ ...claim, second })).toBe(false);
    expect(verifyConsistency({ ...claim, proof: [] })).toBe(false);
    const empty = { first: 0, firstRoot: EMPTY_ROOT, second: 0, secondRoot: EMPTY_ROOT, proof: [] };
    expect(verifyConsistency(empty)).toBe(true);
    expect(verifyConsistency({ ...empty, firstRoot: rootAt(1), secondRoot: rootAt(1) })).toBe(false);
    expect(verifyConsistency({ ...empty, firstRoot: rootAt(1), second: 7, secondRoot: rootAt(7) })).toBe(false);
  });

  it('reads what it says it reads, fewer than 2 log2 + 2 subtrees, in a tree of ten million leaves', () => {
    const second = 10_000_000;
    for (const first of [1, 4_999_999, 8_388_608, 8_388_609, second - 1]) {
      const read: unknown[] = [];
      consistencyProof(first, second, (subtree) => {
        read.push(subtree);
        return rootAt(1);
      });
      expect(read).toEqual(consistencyReads(first, second));
      expect(read.length).toBeLessThan(2 * Math.log2(second) + 2);
    }
  });

  it('is refused when the later tree is the smaller one', () => {
    for (const [first, second] of [
      [8, 7],
      [-1, 7],
      [0.5, 7],
    ] as const)
      expect(() => consistencyProof(first, second, grown.read)).toThrow(RangeError);
  });
});
