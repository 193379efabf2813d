import { describe, expect, it } from '@jest/globals';
import { LotCycle, LotUnknown, MassMissing, resolveComposition } from '@hull-record/genealogy';
import type { LotNode } from '@hull-record/genealogy';
import { graph } from './graph-of.js';

const fractions = (lot: string, lots: ReturnType<typeof graph>) =>
  Object.fromEntries(resolveComposition(lot, lots).map(({ source, fraction }) => [source ?? 'remainder', fraction]));

describe('what a lot is made of', () => {
  it('is itself for a received lot', () => {
    expect(resolveComposition('R', graph({ R: 'resin' }))).toEqual([{ source: 'R', role: 'resin', fraction: 1 }]);
  });

  it.each<[string, string[], Record<string, number>]>([
    // T2: A 1/5, B 4/5; T3: heel of 3/10 T2 and 7/10 C.
    [
      'a tank over three fills',
      ['T1 < 100 A', 'T2 < 20 T1 + 80 B', 'lot < 30 T2 + 70 C'],
      { A: 0.06, B: 0.24, C: 0.7 },
    ],
    // A = 2/8 x 1/2 + 4/8 x 1/4 + 2/8, B = 2/8 x 1/2, C = 4/8 x 3/4.
    ['a diamond', ['M < 1 A + 1 B', 'N < 1 A + 3 C', 'lot < 2 M + 4 N + 2 A'], { A: 0.5, B: 0.125, C: 0.375 }],
    ['a lot that took one input twice', ['lot < 1 A + 2 B + 1 A'], { A: 0.5, B: 0.5 }],
  ])('adds up the ways in %s', (_what, made, expected) => {
    const found = fractions('lot', graph({ A: 'resin', B: 'resin', C: 'resin' }, ...made));
    expect(Object.keys(found)).toEqual(Object.keys(expected));
    for (const [source, fraction] of Object.entries(expected)) expect(found[source]).toBeCloseTo(fraction, 15);
  });

  it('is taken from a known composition, whose inputs are not looked at', () => {
    const known = [
      { source: 'A', role: 'resin', fraction: 0.5 },
      { source: null, role: 'resin', fraction: 0.5 },
    ];
    const tank: LotNode = { id: 'T', role: 'resin', known, inputs: [{ lot: 'nowhere', kg: 1 }] };
    const lots = new Map([...graph({ B: 'resin' }, 'M < 1 T + 1 B'), ['T', tank] as const]);
    expect(resolveComposition('T', lots)).toEqual(known);
    expect(fractions('M', lots)).toEqual({ A: 0.25, B: 0.5, remainder: 0.25 });
  });

  it('counts a source that is below the floor on every path and above it in their sum', () => {
    // 0.1 mg of S in 1000 kg of M is 1e-10; nearly all M and 0.95 mg of S in 1000 kg are 1e-10 + 9.5e-10 = 1.05e-9.
    const made = ['M < 0.0000001 S + 999.9999999 R', 'lot < 999.99999905 M + 0.00000095 S'];
    const found = fractions('lot', graph({ S: 'resin', R: 'resin' }, ...made));
    expect(found['S']).toBeCloseTo(1.05e-9, 15);
    expect(Object.keys(found)).toEqual(['R', 'S']);
  });

  it('is found through a chain of 2,000 lots', () => {
    const chain = Array.from({ length: 2000 }, (_, n) => `L${n + 1} < 1 ${n === 0 ? 'R' : `L${n}`} + 1 F${n % 50}`);
    const fresh = Object.fromEntries(Array.from({ length: 50 }, (_, n) => [`F${n}`, 'resin']));
    const found = resolveComposition('L2000', graph({ R: 'resin', ...fresh }, ...chain));
    // F49 is half of the last lot, and again 2^-50 of that one round of 50 before, and so on.
    expect(found.find(({ source }) => source === 'F49')?.fraction).toBeCloseTo(0.5 / (1 - 2 ** -50), 14);
    expect(found).toHaveLength(30);
    expect(Math.abs(found.reduce((sum, { fraction }) => sum + fraction, 0) - 1)).toBeLessThanOrEqual(1e-12);
  });
});

describe('what cannot be resolved', () => {
  it('names the lot that is missing, asked about or on the way', () => {
    expect(() => resolveComposition('Z', graph({ R: 'resin' }))).toThrow(new LotUnknown('Z'));
    expect(() => resolveComposition('M', graph({ R: 'resin' }, 'M < 1 R + 1 Z'))).toThrow(new LotUnknown('Z'));
  });

  it('shows the cycle, from a lot to itself', () => {
    const lots = graph({ R: 'resin' }, 'A < 1 R + 1 B', 'B < 1 C', 'C < 1 B', 'M < 1 A');
    expect(() => resolveComposition('M', lots)).toThrow(new LotCycle(['B', 'C', 'B']));
    expect(() => resolveComposition('S', graph({}, 'S < 1 S'))).toThrow(new LotCycle(['S', 'S']));
  });

  it('refuses a made lot whose inputs weigh nothing', () => {
    expect(() => resolveComposition('M', graph({ R: 'resin' }, 'M < 0 R'))).toThrow(MassMissing);
  });
});
