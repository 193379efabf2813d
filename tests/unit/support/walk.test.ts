import { describe, expect, it } from '@jest/globals';
import {
  fromDecimal,
  rational,
  sum,
  toNumber,
  walkComposition,
  walkHullsWith,
  walkLotsIn,
} from '../../support/walk/index.js';
import { given } from '../../support/told-genealogy.js';
import type { Rational, WalkFacts } from '../../support/walk/index.js';

const text = ({ numerator, denominator }: Rational): string => `${numerator}/${denominator}`;
const composition = (lot: string, facts: WalkFacts): Record<string, string> =>
  Object.fromEntries([...walkComposition(lot, facts)].map(([source, fraction]) => [source, text(fraction)]));
const hullsWith = (lot: string, facts: WalkFacts) =>
  walkHullsWith(lot, facts, { floor: 1e-9 }).map(({ hull, kg, placeShare, partShare, trace }) => ({
    hull,
    kg: text(kg),
    placeShare: text(placeShare),
    partShare: text(partShare),
    trace,
  }));
const lotsIn = (hull: string, facts: WalkFacts): Record<string, string> =>
  Object.fromEntries(walkLotsIn(hull, facts).map(({ lot, kg }) => [lot, text(kg)]));

describe('the walk on a bucket of two lots', () => {
  // Bucket: 6 kg of R1 and 2 kg of R2 = 8 kg, so R1 is 6/8 = 3/4 and R2 is 2/8 = 1/4.
  // Layer 1 took 4 kg of the bucket (3 kg R1, 1 kg R2) and 4 kg of R1 as it is: 7 kg R1 and 1 kg R2 of 8 kg resin.
  // Layer 2 took 8 kg of R1. In the part: 15 kg R1 and 1 kg R2 of 16 kg.
  const facts = given({
    sources: { R1: 'resin', R2: 'resin' },
    made: ['bucket < 6 R1 + 2 R2'],
    uses: ['P1/layer-1 4 bucket', 'P1/layer-1 4 R1', 'P1/layer-2 8 R1'],
    hulls: { P1: 'H1' },
  });

  it('splits the bucket 3 to 1', () => expect(composition('bucket', facts)).toEqual({ R1: '3/4', R2: '1/4' }));

  it('takes a received lot for itself', () => expect(composition('R1', facts)).toEqual({ R1: '1/1' }));

  it('sums the paths within a layer and takes the largest layer', () => {
    expect(hullsWith('R2', facts)).toEqual([
      { hull: 'H1', kg: '1/1', placeShare: '1/8', partShare: '1/16', trace: false },
    ]);
    expect(hullsWith('R1', facts)).toEqual([
      { hull: 'H1', kg: '15/1', placeShare: '1/1', partShare: '15/16', trace: false },
    ]);
  });

  it('answers for the bucket itself: 4 kg of the 8 kg resin in layer 1', () => {
    expect(hullsWith('bucket', facts)).toEqual([
      { hull: 'H1', kg: '4/1', placeShare: '1/2', partShare: '1/4', trace: false },
    ]);
  });

  it('lists the bucket and what is in it', () => {
    expect(lotsIn('H1', facts)).toEqual({ R1: '15/1', R2: '1/1', bucket: '4/1' });
  });
});

describe('the walk on a tank with heels over three fills', () => {
  // T1: 100 kg of A. T2: heel 20 kg of T1 and 80 kg of B: A 20/100 = 1/5, B 4/5.
  // T3: heel 30 kg of T2 and 70 kg of C: A 30/100 x 1/5 = 3/50, B 30/100 x 4/5 = 6/25, C 7/10.
  // H1 took 50 kg of T3: A 3 kg, B 12 kg, C 35 kg. H2 took 10 kg of T2: A 2 kg, B 8 kg.
  const facts = given({
    sources: { A: 'resin', B: 'resin', C: 'resin' },
    made: ['T1 < 100 A', 'T2 < 20 T1 + 80 B', 'T3 < 30 T2 + 70 C'],
    uses: ['P1/layer-1 50 T3', 'P2/layer-1 10 T2'],
    hulls: { P1: 'H1', P2: 'H2' },
  });

  it('finds the first delivery in the third fill', () => {
    expect(composition('T3', facts)).toEqual({ A: '3/50', B: '6/25', C: '7/10' });
  });

  it('finds both hulls with the first delivery and one with the last', () => {
    expect(hullsWith('A', facts)).toEqual([
      { hull: 'H1', kg: '3/1', placeShare: '3/50', partShare: '3/50', trace: false },
      { hull: 'H2', kg: '2/1', placeShare: '1/5', partShare: '1/5', trace: false },
    ]);
    expect(hullsWith('C', facts).map(({ hull }) => hull)).toEqual(['H1']);
  });

  it('finds the hull with the second fill through the heel: 30/100 of 50 kg', () => {
    expect(hullsWith('T2', facts)[0]).toMatchObject({ hull: 'H1', kg: '15/1', placeShare: '3/10' });
    expect(lotsIn('H1', facts)).toEqual({ A: '3/1', B: '12/1', C: '35/1', T1: '3/1', T2: '15/1', T3: '50/1' });
  });
});

describe('the walk on a kit and a catalysed bucket', () => {
  // Kit: 3 kg of G1 and 1 kg of G2 (glass) and 1 kg of K (core) = 5 kg. Bucket: 98 kg R and 2 kg C = 100 kg.
  // Layer 1 took the kit and 10 kg of the bucket: glass 4 kg (G1 3/4), core 1 kg, resin 9.8 kg, catalyst 0.2 kg.
  // Layer 2 took 5 kg of the bucket and 0.1 kg of C as it is: catalyst 0.1 + 0.1 kg, half of it with the bucket.
  const facts = given({
    sources: { G1: 'glass', G2: 'glass', K: 'core', R: 'resin', C: 'catalyst', G3: 'glass' },
    made: ['kit < 3 G1 + 1 G2 + 1 K', 'bucket < 98 R + 2 C'],
    uses: ['P1/layer-1 5 kit', 'P1/layer-1 10 bucket', 'P1/layer-2 5 bucket', 'P1/layer-2 0.1 C', 'P1/layer-2 8 G3'],
    hulls: { P1: 'H1' },
  });

  it('takes the share within the role of the source, not of everything in the layer', () => {
    expect(hullsWith('G1', facts)[0]).toMatchObject({ kg: '3/1', placeShare: '3/4', partShare: '1/4' });
    expect(hullsWith('K', facts)[0]).toMatchObject({ kg: '1/1', placeShare: '1/1', partShare: '1/1' });
    expect(hullsWith('C', facts)[0]).toMatchObject({ kg: '2/5', placeShare: '1/1' });
  });

  it('takes for a mixture the role in which it counts most: all resin in layer 2, though half the catalyst', () => {
    expect(hullsWith('bucket', facts)[0]).toMatchObject({ kg: '15/1', placeShare: '1/1', partShare: '1/1' });
    expect(hullsWith('kit', facts)[0]).toMatchObject({ kg: '5/1', placeShare: '1/1', partShare: '1/1' });
  });
});

describe('the walk on a repair', () => {
  // The deck was made of R1 alone. A repair later took 0.5 kg of a pot: 1 kg R1 and 3 kg X, so X is 3/8 kg of 1/2 kg.
  // In the part: 3/8 of 20.5 kg = 3/164. The hull molding P2, with a repair of
  // the same name, has none; P3, of the same pot, is on no hull.
  const facts = given({
    sources: { R1: 'resin', X: 'resin' },
    made: ['pot < 1 R1 + 3 X'],
    uses: ['P1/layer-1 20 R1', 'P2/layer-1 30 R1', 'P2/repair-7 1 R1', 'P1/repair-7 0.5 pot', 'P3/layer-1 1 pot'],
    hulls: { P1: 'H1', P2: 'H1' },
  });

  it('reaches the hull through the repair, with the share of the repair', () => {
    expect(hullsWith('X', facts)).toEqual([
      { hull: 'H1', kg: '3/8', placeShare: '3/4', partShare: '3/164', trace: false },
    ]);
  });

  it('names the part that holds it, not the other parts of the hull, and no part without a hull', () => {
    expect(walkHullsWith('X', facts, { floor: 1e-9 })[0]?.parts).toEqual([
      { part: 'P1', kg: fromDecimal('0.375'), share: rational(3n, 164n) },
    ]);
    expect(walkHullsWith('X', facts, { floor: 1e-9 })).toHaveLength(1);
  });

  it('counts the clean parts with the lot they were made of: 20 + 30 + 1 kg and 1/4 of the pot', () => {
    expect(hullsWith('R1', facts)[0]).toMatchObject({ kg: '409/8', placeShare: '1/1', partShare: '1/1' });
  });
});

describe('the walk on a diamond', () => {
  // M1: 1 kg D and 1 kg E: D 1/2. M2: 1 kg D and 2 kg F: D 1/3. B: 2 kg M1 and 3 kg M2 and 1 kg D:
  // D = 2/6 x 1/2 + 3/6 x 1/3 + 1/6 = 1/6 + 1/6 + 1/6 = 1/2, E = 2/6 x 1/2 = 1/6, F = 3/6 x 2/3 = 1/3.
  const facts = given({
    sources: { D: 'resin', E: 'resin', F: 'resin' },
    made: ['M1 < 1 D + 1 E', 'M2 < 1 D + 2 F', 'B < 2 M1 + 3 M2 + 1 D'],
    uses: ['P1/layer-1 12 B'],
    hulls: { P1: 'H1' },
  });

  it('adds up the three paths', () => {
    expect(composition('B', facts)).toEqual({ D: '1/2', E: '1/6', F: '1/3' });
    expect(hullsWith('D', facts)[0]).toMatchObject({ kg: '6/1', placeShare: '1/2' });
    expect(lotsIn('H1', facts)).toEqual({ B: '12/1', D: '6/1', E: '2/1', F: '4/1', M1: '4/1', M2: '6/1' });
  });

  it('does not mind lots and inputs told in another order', () => {
    const turned = { ...facts, lots: [...facts.lots].reverse(), inputs: [...facts.inputs].reverse() };
    expect(composition('B', turned)).toEqual({ D: '1/2', E: '1/6', F: '1/3' });
  });
});

describe('the walk on traces', () => {
  // M1: 1 g of S in 1000 kg = 1e-6; M2: 1 kg of M1 in 1000 kg = 1e-9; M3: 999 g of M1 in 1000 kg < 1e-9.
  const facts = given({
    sources: { S: 'pigment', R: 'resin' },
    made: ['M1 < 0.001 S + 999.999 R', 'M2 < 1 M1 + 999 R', 'M3 < 0.999 M1 + 999.001 R'],
    uses: ['P2/layer-1 10 M2', 'P3/layer-1 10 M3'],
    hulls: { P2: 'H2', P3: 'H3' },
  });

  it('says trace below the floor and not at it, and gives the exact mass of both', () => {
    expect(hullsWith('S', facts).map(({ hull, kg, trace }) => ({ hull, kg, trace }))).toEqual([
      { hull: 'H2', kg: '1/100000000', trace: false },
      { hull: 'H3', kg: '999/100000000000', trace: true },
    ]);
  });
});

describe('the walk on what cannot be', () => {
  it('refuses lots made of each other', () => {
    const facts = given({ sources: { R: 'resin' }, made: ['A < 1 B', 'B < 1 A + 1 R'] });
    expect(() => walkComposition('R', facts)).toThrow('A, B');
  });

  it('refuses an input that is no lot, and a question about no lot', () => {
    expect(() => walkComposition('A', given({ sources: {}, made: ['A < 1 Z'] }))).toThrow('missing');
    expect(() => walkComposition('Z', given({ sources: { R: 'resin' } }))).toThrow('Z');
    expect(() => walkHullsWith('Z', given({ sources: { R: 'resin' } }), { floor: 0 })).toThrow('Z');
  });
});

describe('the walk on a tank of 300 fills', () => {
  // Each fill: a heel of 25 kg, 50 kg of a new delivery and 25 kg of another. What is in the first fill is quartered 299
  // times: A0 is 1/2 x 4^-299 of the last. Delivery A(n) is 1/2 x 4^-(299 - n), B(n) half of that; A0 and B0 alone made
  // up the first fill, 2 to 1, so A0 is 2/3 and not 1/2 of it.
  const fills = Array.from({ length: 300 }, (_, n) => n);
  const facts = given({
    sources: Object.fromEntries(
      fills.flatMap((n) => [
        [`A${n}`, 'resin'],
        [`B${n}`, 'resin'],
      ]),
    ),
    made: fills.map((n) => (n === 0 ? 'T0 < 50 A0 + 25 B0' : `T${n} < 25 T${n - 1} + 50 A${n} + 25 B${n}`)),
    uses: ['P1/layer-1 8 T299'],
    hulls: { P1: 'H1' },
  });

  it('gives every fraction exactly', () => {
    const found = walkComposition('T299', facts);
    expect(found.size).toBe(600);
    expect(found.get('A0')).toEqual(rational(2n, 3n * 4n ** 299n));
    expect(found.get('B100')).toEqual(rational(1n, 4n ** 200n));
    expect(sum(found.values())).toEqual(rational(1n, 1n));
  });

  it('finds the hull of the last fill with the first delivery, as a trace', () => {
    const [only] = walkHullsWith('A0', facts, { floor: 1e-9 });
    expect(only).toMatchObject({ hull: 'H1', trace: true, kg: rational(16n, 3n * 4n ** 299n) });
    expect(toNumber(only?.kg ?? rational(0n, 1n))).toBe((16 / 3) * 2 ** -598);
    expect(walkLotsIn('H1', facts)).toHaveLength(900);
  });
});
