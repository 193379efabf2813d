import { describe, expect, it } from '@jest/globals';
import { LotCycle, LotUnknown, pathsUpstream } from '@hull-record/genealogy';
import type { LotGraph } from '@hull-record/genealogy';
import fc from 'fast-check';
import { randomGenealogy } from '../../support/random-genealogy.js';
import { graph, graphOf } from './graph-of.js';

/** Lot n+1 is made of two mixtures of lot n: 2^n ways to the top. */
const diamonds = (count: number): LotGraph =>
  graph(
    { L0: 'resin' },
    ...Array.from({ length: count }, (_, n) => [
      `a${n} < 1 L${n}`,
      `b${n} < 1 L${n}`,
      `L${n + 1} < 1 a${n} + 1 b${n}`,
    ]).flat(),
  );

/** All paths, by trying each way in turn: only for small graphs. */
const everyPath = (from: string, to: string, lots: LotGraph): string[][] =>
  from === to
    ? [[to]]
    : [...new Set(lots.get(from)?.inputs.map((input) => input.lot))].flatMap((input) =>
        everyPath(input, to, lots).map((path) => [from, ...path]),
      );

describe('the ways by which a lot came into another', () => {
  const lots = graph({ A: 'resin', Z: 'resin' }, 'T1 < 1 A + 1 Z', 'T2 < 1 T1 + 1 A', 'pot < 1 T2 + 1 T1 + 1 A');

  it('come shortest first, and of one length by the ids of their lots', () => {
    expect(pathsUpstream('pot', 'A', lots)).toEqual({
      paths: [
        ['pot', 'A'],
        ['pot', 'T1', 'A'],
        ['pot', 'T2', 'A'],
        ['pot', 'T2', 'T1', 'A'],
      ],
      truncated: false,
    });
  });

  it('stop at the limit, and say so', () => {
    expect(pathsUpstream('pot', 'A', lots, 1)).toEqual({ paths: [['pot', 'A']], truncated: true });
    expect(pathsUpstream('pot', 'A', lots, 4).truncated).toBe(false);
  });

  it('are one path of one lot from a lot to itself, and none where there is no way', () => {
    expect(pathsUpstream('A', 'A', lots)).toEqual({ paths: [['A']], truncated: false });
    expect(pathsUpstream('T1', 'T2', lots)).toEqual({ paths: [], truncated: false });
    expect(pathsUpstream('pot', 'no such lot', lots)).toEqual({ paths: [], truncated: false });
  });

  it('count two amounts of one input as one way', () => {
    expect(pathsUpstream('M', 'A', graph({ A: 'resin' }, 'M < 1 A + 2 A')).paths).toEqual([['M', 'A']]);
  });

  it('are cut to the limit in a chain of 60 diamonds, which has 2^60', () => {
    const { paths, truncated } = pathsUpstream('L60', 'L0', diamonds(60));
    expect(paths).toHaveLength(100);
    expect(new Set(paths.map((path) => path.join())).size).toBe(100);
    expect(paths.every((path) => path.length === 121)).toBe(true);
    expect(truncated).toBe(true);
  });

  it('are the same ones under the limit whichever way round the inputs were recorded', () => {
    const turned = new Map(
      [...diamonds(60)].map(([id, node]) => [id, { ...node, inputs: [...node.inputs].reverse() }]),
    );
    expect(pathsUpstream('L60', 'L0', turned, 5)).toEqual(pathsUpstream('L60', 'L0', diamonds(60), 5));
  });

  it('end at once where a chain of diamonds leads nowhere near the lot asked about', () => {
    const lonely = new Map([...diamonds(60), ...graph({ X: 'resin' })]);
    expect(pathsUpstream('L60', 'X', lonely)).toEqual({ paths: [], truncated: false });
  });

  it('reach through 2,000 fills', () => {
    const chain = Array.from({ length: 2000 }, (_, n) => `T${n + 1} < 1 ${n === 0 ? 'A' : `T${n}`} + 1 A`);
    const { paths, truncated } = pathsUpstream('T2000', 'A', graph({ A: 'resin' }, ...chain), 1500);
    expect(paths.map((path) => path.length)).toEqual(Array.from({ length: 1500 }, (_, n) => n + 2));
    expect(truncated).toBe(true);
  });

  it('are all there are, found by trying each way, whatever the order of the inputs', () => {
    fc.assert(
      fc.property(randomGenealogy(25), fc.nat(), fc.nat(), fc.integer({ min: 1, max: 12 }), (plant, a, b, limit) => {
        const [from, to] = [plant.lots[a % plant.lots.length]?.id ?? '', plant.lots[b % plant.lots.length]?.id ?? ''];
        const every = everyPath(from, to, graphOf(plant)).sort(
          (x, y) => x.length - y.length || (x.join('\0') < y.join('\0') ? -1 : 1),
        );
        fc.pre(every.length <= 500);
        const turned = graphOf({ lots: plant.lots, inputs: [...plant.inputs].reverse() });
        expect(pathsUpstream(from, to, graphOf(plant), 500)).toEqual({ paths: every, truncated: false });
        const cut = pathsUpstream(from, to, turned, limit);
        expect(cut).toEqual(pathsUpstream(from, to, graphOf(plant), limit));
        expect(cut.paths.map((path) => path.length)).toEqual(every.slice(0, limit).map((path) => path.length));
        expect(cut.truncated).toBe(every.length > limit);
      }),
      { numRuns: 60 },
    );
  });

  it('are refused for lots that are missing or made of each other', () => {
    expect(() => pathsUpstream('Z', 'A', graph({ A: 'resin' }))).toThrow(new LotUnknown('Z'));
    expect(() => pathsUpstream('M', 'A', graph({ A: 'resin' }, 'M < 1 N + 1 A', 'N < 1 M'))).toThrow(LotCycle);
  });
});
