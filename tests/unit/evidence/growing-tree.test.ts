import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  appendLeaves,
  EMPTY_TREE,
  type Hash,
  leafHash,
  nodeHash,
  peakReads,
  rootOf,
  treeOfSize,
} from '@hull-record/evidence';
import { entriesUpTo, grownTree } from '../../support/grown-tree.js';
import { mth } from '../../support/rfc-tree.js';

const MOST = 130;
const ENTRIES = entriesUpTo(MOST);
const grown = grownTree(ENTRIES);

describe('a growing tree', () => {
  it(`has at every size up to ${MOST} the root of the recursive definition (RFC 9162, section 2.1.1)`, () => {
    for (let size = 0; size <= MOST; size++) expect(grown.roots[size]).toEqual(mth(ENTRIES.slice(0, size)));
  });

  it('can be taken up again at any size from what was stored', () => {
    for (let size = 0; size <= MOST; size++) expect(rootOf(treeOfSize(size, grown.read))).toEqual(grown.roots[size]);
    const rest = appendLeaves(treeOfSize(77, grown.read), grown.leaves.slice(77));
    expect(rootOf(rest.tree)).toEqual(grown.roots[MOST]);
  });

  it('is the same whether leaves come one by one or many at once', () => {
    fc.assert(
      fc.property(fc.array(fc.uint8Array({ maxLength: 5 }), { maxLength: 60 }), fc.nat(60), (entries, cut) => {
        const leaves = entries.map(leafHash);
        const first = appendLeaves(EMPTY_TREE, leaves.slice(0, cut));
        const then = appendLeaves(first.tree, leaves.slice(cut));
        const once = appendLeaves(EMPTY_TREE, leaves);
        expect(then.tree).toEqual(once.tree);
        expect([...first.made, ...then.made]).toEqual(once.made);
        expect(rootOf(once.tree)).toEqual(mth(entries));
      }),
    );
  });

  it('stores fewer than two subtrees a leaf, and keeps one peak for each 1 in the size as a binary number', () => {
    expect(grown.stored).toBe(2 * MOST - 2);
    expect(peakReads(10_000_000).length).toBe((10_000_000).toString(2).replaceAll('0', '').length);
  });

  it('counts beyond 32 bits', () => {
    const size = 2 ** 40 + 2 ** 33 + 1;
    expect(peakReads(size)).toEqual([
      { level: 40, index: 0 },
      { level: 33, index: 128 },
      { level: 0, index: 2 ** 40 + 2 ** 33 },
    ]);
    const peak = leafHash('');
    const { made } = appendLeaves({ size, peaks: [peak, peak, peak] }, [peak]);
    expect(made.map(({ level, index }) => [level, index])).toEqual([
      [0, size],
      [1, 2 ** 39 + 2 ** 32],
    ]);
  });

  it.each<[string, () => unknown]>([
    ['a leaf that is not 32 bytes', () => appendLeaves(EMPTY_TREE, [new Uint8Array(31)])],
    ['a tree with a peak too many', () => rootOf({ size: 2, peaks: [leafHash('a'), leafHash('b')] })],
    ['a tree with a peak too few', () => appendLeaves({ size: 3, peaks: [leafHash('a')] }, [leafHash('b')])],
    ['a size that is no number of leaves', () => treeOfSize(-1, grown.read)],
    ['a size that is not whole', () => treeOfSize(1.5, grown.read)],
    ['a size that a double cannot hold', () => treeOfSize(2 ** 53, grown.read)],
    ['a node over less than two hashes', () => nodeHash(leafHash('a'), leafHash('b').subarray(1))],
    ['half of a surrogate pair as an entry', () => leafHash('\ud83d')],
  ])('refuses %s', (_what, act) => {
    expect(act).toThrow(RangeError);
  });

  it('takes the bytes of a text in UTF-8', () => {
    expect(leafHash('Åse 😀')).toEqual(leafHash(Buffer.from('Åse 😀', 'utf8')) as Hash);
  });
});
