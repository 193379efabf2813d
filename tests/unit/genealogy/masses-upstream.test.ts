import { describe, expect, it } from '@jest/globals';
import { LotCycle, LotUnknown, massesUpstream } from '@hull-record/genealogy';
import { graph } from './graph-of.js';

const SOURCES = { A: 'resin', B: 'resin', C: 'catalyst' };

describe('what stands behind given kilograms', () => {
  it('is split over the inputs of each lot as it was made, tank by tank', () => {
    const tank = graph(SOURCES, 'T1 < 100 A', 'T2 < 25 T1 + 75 B');
    const { masses, steps } = massesUpstream(new Map([['T2', 40]]), tank);
    expect(Object.fromEntries(masses)).toEqual({ T2: 40, T1: 10, B: 30, A: 10 });
    expect(steps).toEqual(
      expect.arrayContaining([
        { lot: 'T2', input: 'T1', kg: 10 },
        { lot: 'T2', input: 'B', kg: 30 },
        { lot: 'T1', input: 'A', kg: 10 },
      ]),
    );
    expect(steps).toHaveLength(3);
  });

  it('adds up the ways through a diamond, and what was given itself', () => {
    const lots = graph(SOURCES, 'M < 1 A + 1 B', 'N < 1 A + 3 B', 'top < 1 M + 1 N');
    const { masses } = massesUpstream(
      new Map([
        ['top', 8],
        ['A', 2],
      ]),
      lots,
    );
    expect(Object.fromEntries(masses)).toEqual({ top: 8, M: 4, N: 4, A: 5, B: 5 });
  });

  it('takes an input that comes twice as one step', () => {
    const lots = graph(SOURCES, 'M < 1 A + 2 A + 1 B');
    expect(massesUpstream(new Map([['M', 4]]), lots).steps).toEqual([
      { lot: 'M', input: 'A', kg: 3 },
      { lot: 'M', input: 'B', kg: 1 },
    ]);
  });

  it('is refused for lots that are missing or made of themselves', () => {
    expect(() => massesUpstream(new Map([['X', 1]]), graph(SOURCES))).toThrow(LotUnknown);
    expect(() => massesUpstream(new Map([['M', 1]]), graph(SOURCES, 'M < 1 N', 'N < 1 M'))).toThrow(LotCycle);
  });
});
