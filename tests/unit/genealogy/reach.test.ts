import { describe, expect, it } from '@jest/globals';
import { fractionsDownstream, LotCycle, LotUnknown, lotsUpstream, membersDownstream } from '@hull-record/genealogy';
import { graph, inputsOf } from './graph-of.js';

const SOURCES = { A: 'resin', B: 'resin', C: 'catalyst' };

describe('the fraction of a lot in what was made of it', () => {
  const tank = graph(SOURCES, 'T1 < 100 A', 'T2 < 25 T1 + 75 B', 'pot < 1 T2 + 3 B', 'other < 1 B + 1 C');

  it('shrinks with every heel and every mixture, and is 1 in itself', () => {
    expect(Object.fromEntries(fractionsDownstream('A', tank))).toEqual({ A: 1, T1: 1, T2: 0.25, pot: 0.0625 });
  });

  it('is asked of a made lot as of a received one', () => {
    expect(Object.fromEntries(fractionsDownstream('T2', tank))).toEqual({ T2: 1, pot: 0.25 });
  });

  it('adds up the ways through a diamond', () => {
    const lots = graph(SOURCES, 'M < 1 A + 1 B', 'N < 1 A + 3 B', 'top < 2 M + 4 N + 2 A');
    expect(fractionsDownstream('A', lots).get('top')).toBe(0.5);
  });

  it('leaves out what is below the floor and keeps what is at it', () => {
    expect([...fractionsDownstream('A', tank, 0.25).keys()]).toEqual(['A', 'T1', 'T2']);
  });

  it('does not lose on the way what is above the floor again further on', () => {
    // A is 1e-10 of M, and with 9.5e-10 of its own 1.05e-9 of top.
    const lots = graph(SOURCES, 'M < 0.0000001 A + 999.9999999 B', 'top < 999.99999905 M + 0.00000095 A');
    const found = fractionsDownstream('A', lots);
    expect(found.has('M')).toBe(false);
    expect(found.get('top')).toBeCloseTo(1.05e-9, 15);
  });

  it('ends in membership alone where the product is smaller than any number', () => {
    const made = Array.from({ length: 1500 }, (_, n) => `T${n + 1} < 1 ${n === 0 ? 'A' : `T${n}`} + 3 B`);
    const lots = graph(SOURCES, ...made);
    expect(fractionsDownstream('A', lots, 0).has('T1500')).toBe(false);
    expect(fractionsDownstream('A', lots).size).toBe(15); // 4^-14 is 3.7e-9, 4^-15 is below 1e-9
    expect(membersDownstream('A', inputsOf(lots)).size).toBe(1501);
  });

  it('names a lot that is not there, and a cycle', () => {
    expect(() => fractionsDownstream('Z', tank)).toThrow(new LotUnknown('Z'));
    expect(() => fractionsDownstream('A', graph(SOURCES, 'M < 1 A + 1 N', 'N < 1 M'))).toThrow(LotCycle);
  });
});

describe('the sets of lots around a lot', () => {
  const inputs = inputsOf(graph(SOURCES, 'T1 < 100 A', 'T2 < 25 T1 + 75 B', 'pot < 98 T2 + 2 C', 'other < 1 B'));

  it.each([
    ['A', ['A', 'T1', 'T2', 'pot']],
    ['B', ['B', 'T2', 'other', 'pot']],
    ['pot', ['pot']],
    ['never seen', ['never seen']],
  ])('downstream of %s are %j', (lot, expected) => {
    expect([...membersDownstream(lot, inputs)].sort()).toEqual([...expected].sort());
  });

  it.each([
    ['pot', ['A', 'B', 'C', 'T1', 'T2', 'pot']],
    ['other', ['B', 'other']],
    ['A', ['A']],
  ])('upstream of %s are %j', (lot, expected) => {
    expect([...lotsUpstream(lot, inputs)].sort()).toEqual([...expected].sort());
  });

  it('end even where records made a cycle', () => {
    const round = [...inputs, { lot: 'T1', input: 'pot', kg: 1 }];
    expect([...lotsUpstream('T1', round)].sort()).toEqual(['A', 'B', 'C', 'T1', 'T2', 'pot']);
    expect([...membersDownstream('T1', round)].sort()).toEqual(['T1', 'T2', 'pot']);
  });
});
