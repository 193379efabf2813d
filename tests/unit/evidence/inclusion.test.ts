import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  type Hash,
  inclusionProof,
  inclusionReads,
  type InclusionClaim,
  nodeHash,
  verifyInclusion,
} from '@hull-record/evidence';
import { entriesUpTo, grownTree, turned } from '../../support/grown-tree.js';
import { path } from '../../support/rfc-tree.js';

const MOST = 130;
const ENTRIES = entriesUpTo(MOST);
const grown = grownTree(ENTRIES);
const hashAt = (of: readonly Hash[], at: number): Hash => of[at] as Hash;

const claimOf = (index: number, size: number): InclusionClaim => ({
  index,
  size,
  leaf: hashAt(grown.leaves, index),
  proof: inclusionProof(index, size, grown.read),
  root: hashAt(grown.roots, size),
});

const everyLeaf = Array.from({ length: MOST }, (_, i) => i + 1).flatMap((size) =>
  Array.from({ length: size }, (_, index) => [index, size] as const),
);

describe('a proof of inclusion', () => {
  it('is that of the recursive definition (RFC 9162, section 2.1.3.1)', () => {
    for (const [index, size] of everyLeaf.filter(([, size]) => size <= 40 || size === MOST))
      expect(inclusionProof(index, size, grown.read)).toEqual(path(index, ENTRIES.slice(0, size)));
  });

  it(`verifies for every leaf of every tree of up to ${MOST}`, () => {
    expect(everyLeaf.filter(([index, size]) => !verifyInclusion(claimOf(index, size)))).toEqual([]);
  });

  it('verifies at no other place of the tree: any in small trees and around 128, in others the likely ones', () => {
    const wrong = everyLeaf.flatMap(([index, size]) => {
      const claim = claimOf(index, size);
      const likely = [0, index - 1, index + 1, ...[1, 2, 4, 8, 16, 32, 64].map((bit) => index ^ bit), size - 1];
      const others = size <= 40 || size > 126 ? Array.from({ length: size }, (_, other) => other) : likely;
      return others.filter((other) => other !== index && verifyInclusion({ ...claim, index: other }));
    });
    expect(wrong).toEqual([]);
  });

  it('verifies for no other leaf, nor for the root of another tree', () => {
    const wrong = everyLeaf
      .filter(([, size]) => size <= 17)
      .filter(([index, size]) => {
        const claim = claimOf(index, size);
        const leaves = grown.leaves.filter((_, other) => other !== index);
        const roots = grown.roots.filter((_, other) => other !== size);
        return (
          leaves.some((leaf) => verifyInclusion({ ...claim, leaf })) ||
          roots.some((root) => verifyInclusion({ ...claim, root }))
        );
      });
    expect(wrong).toEqual([]);
  });

  const place = fc.nat(everyLeaf.length - 1).map((at) => everyLeaf[at] as readonly [number, number]);

  it('never verifies with a bit turned in the leaf, the root or a hash of the proof', () => {
    fc.assert(
      fc.property(place, fc.nat(255), fc.nat(), ([index, size], bit, which) => {
        const claim = claimOf(index, size);
        expect(verifyInclusion({ ...claim, leaf: turned(claim.leaf, bit) })).toBe(false);
        expect(verifyInclusion({ ...claim, root: turned(claim.root, bit) })).toBe(false);
        const at = which % Math.max(1, claim.proof.length);
        const proof = claim.proof.map((hash, i) => (i === at ? turned(hash, bit) : hash));
        expect(verifyInclusion({ ...claim, proof })).toBe(proof.length === 0);
      }),
    );
  });

  it('never verifies with a hash too many, too few, exchanged or cut', () => {
    fc.assert(
      fc.property(place, fc.nat(), fc.uint8Array({ maxLength: 40 }), ([index, size], where, more) => {
        const claim = claimOf(index, size);
        const at = where % (claim.proof.length + 1);
        const verifies = (proof: readonly Hash[]): boolean => verifyInclusion({ ...claim, proof });
        for (const hash of [more, claim.leaf, claim.root, ...claim.proof])
          expect(verifies(claim.proof.toSpliced(at, 0, hash))).toBe(false);
        expect(verifies(claim.proof.toSpliced(at, 1))).toBe(at === claim.proof.length);
        expect(verifies([...claim.proof].reverse())).toBe(claim.proof.length < 2);
        expect(verifies(claim.proof.map((hash) => hash.subarray(1)))).toBe(claim.proof.length === 0);
      }),
    );
  });

  it('is false when it is longer than the way up, though it leads to the root that was given', () => {
    const [leaf, more] = [hashAt(grown.leaves, 0), hashAt(grown.leaves, 1)];
    const claim = { index: 0, size: 1, leaf, proof: [more] };
    expect(verifyInclusion({ ...claim, root: nodeHash(more, leaf) })).toBe(false);
    expect(verifyInclusion({ ...claim, root: nodeHash(leaf, more) })).toBe(false);
    expect(verifyInclusion({ ...claim, size: 2, root: nodeHash(leaf, more) })).toBe(true);
  });

  it('is false, not an error, for what is malformed', () => {
    const claim = claimOf(3, 7);
    for (const index of [-1, 7, 3.5, NaN, Infinity, 2 ** 53]) expect(verifyInclusion({ ...claim, index })).toBe(false);
    for (const size of [0, -7, 3, 7.5, NaN, Infinity, 2 ** 53]) expect(verifyInclusion({ ...claim, size })).toBe(false);
    expect(verifyInclusion({ ...claim, leaf: new Uint8Array() })).toBe(false);
    expect(verifyInclusion({ ...claim, root: new Uint8Array() })).toBe(false);
    expect(verifyInclusion({ ...claimOf(0, 1), leaf: new Uint8Array(), root: new Uint8Array() })).toBe(false);
  });

  it('reads what it says it reads, fewer than 2 log2 + 1 subtrees, in a tree of ten million leaves', () => {
    const size = 10_000_000;
    const most = 2 * Math.log2(size) + 1;
    for (const index of [0, 1, 4_999_999, 8_388_607, 8_388_608, 9_999_998, size - 1]) {
      const read: unknown[] = [];
      const proof = inclusionProof(index, size, (subtree) => {
        read.push(subtree);
        return hashAt(grown.leaves, 0);
      });
      expect(read).toEqual(inclusionReads(index, size));
      expect(read.length).toBeLessThan(most);
      expect(proof.length).toBeLessThanOrEqual(24);
    }
  });

  it('is refused for a leaf that the tree does not have', () => {
    for (const [index, size] of [
      [0, 0],
      [5, 5],
      [-1, 5],
      [0.5, 5],
    ] as const)
      expect(() => inclusionProof(index, size, grown.read)).toThrow(RangeError);
  });
});
