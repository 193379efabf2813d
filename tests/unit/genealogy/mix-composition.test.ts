import { describe, expect, it } from '@jest/globals';
import { FLOOR, MassInvalid, MassMissing, mixComposition, receivedComposition } from '@hull-record/genealogy';
import type { Composition, Ingredient } from '@hull-record/genealogy';
import fc from 'fast-check';

const of = (kg: number, source: string, role = 'resin'): Ingredient => ({
  kg,
  composition: receivedComposition(source, role),
});
const total = (composition: Composition): number => composition.reduce((sum, { fraction }) => sum + fraction, 0);

const ingredient = fc.record({
  kg: fc.double({ min: 1e-3, max: 1e4, noNaN: true }),
  composition: fc
    .array(fc.tuple(fc.constantFrom('a', 'b', 'c', 'd'), fc.integer({ min: 1, max: 1e6 })), {
      minLength: 1,
      maxLength: 6,
    })
    .map((parts) => mixComposition(parts.map(([source, kg]) => of(kg, source, source < 'c' ? 'resin' : 'glass')))),
});

describe('a received lot', () => {
  it('is made of itself', () => {
    expect(receivedComposition('R1', 'resin')).toEqual([{ source: 'R1', role: 'resin', fraction: 1 }]);
  });
});

describe('a mixture', () => {
  it('holds of each source the share of its mass: 6 kg and 2 kg make three quarters and one', () => {
    expect(mixComposition([of(6, 'R1'), of(2, 'R2')])).toEqual([
      { source: 'R1', role: 'resin', fraction: 0.75 },
      { source: 'R2', role: 'resin', fraction: 0.25 },
    ]);
  });

  it('adds up a source that came by several ways: half of 20 kg and all of 30 kg are 40 of 50 kg', () => {
    const heel = mixComposition([of(1, 'A'), of(1, 'B')]);
    expect(mixComposition([{ kg: 20, composition: heel }, of(30, 'A')])).toEqual([
      { source: 'A', role: 'resin', fraction: 0.8 },
      { source: 'B', role: 'resin', fraction: 0.2 },
    ]);
  });

  it('is listed by role, then source, with the remainder of each role last', () => {
    const inputs = [
      of(1, 'Z'),
      of(1, 'A'),
      of(1, 'K', 'catalyst'),
      of(1e-12, 'B'),
      of(1e-12, 'J', 'catalyst'),
      of(1e-12, 'P', 'pigment'),
    ];
    expect(mixComposition(inputs).map(({ role, source }) => [role, source])).toEqual([
      ['catalyst', 'K'],
      ['catalyst', null],
      ['pigment', null],
      ['resin', 'A'],
      ['resin', 'Z'],
      ['resin', null],
    ]);
  });

  it('takes nothing from an input of 0 kg', () => {
    expect(mixComposition([of(5, 'R1'), of(0, 'R2'), of(0, 'C', 'catalyst')])).toEqual(
      receivedComposition('R1', 'resin'),
    );
  });

  it.each([-1, NaN, Infinity])('refuses an input of %d kg', (kg) => {
    expect(() => mixComposition([of(5, 'R1'), of(kg, 'R2')])).toThrow(MassInvalid);
  });

  it.each([
    ['of no inputs', []],
    ['of inputs that weigh nothing', [of(0, 'R1')]],
    ['of more than a number can hold', [of(1e308, 'R1'), of(1e308, 'R2')]],
  ])('%s has no composition', (_what, inputs) => {
    expect(() => mixComposition(inputs)).toThrow(MassMissing);
  });

  it('is the same to the last bit in whatever order its inputs come', () => {
    const shuffled = fc
      .array(ingredient, { minLength: 2, maxLength: 8 })
      .chain((inputs) => fc.tuple(fc.constant(inputs), fc.shuffledSubarray(inputs, { minLength: inputs.length })));
    fc.assert(
      fc.property(shuffled, ([inputs, turned]) => {
        expect(mixComposition(turned)).toEqual(mixComposition(inputs));
      }),
    );
  });

  it('sums to 1 within 1e-12, whatever the floor', () => {
    const floor = fc.constantFrom(FLOOR, 0, 1e-3, 0.3);
    fc.assert(
      fc.property(fc.array(ingredient, { minLength: 1, maxLength: 8 }), floor, (inputs, least) => {
        expect(Math.abs(total(mixComposition(inputs, least)) - 1)).toBeLessThanOrEqual(1e-12);
      }),
    );
  });
});

describe('the floor', () => {
  it('sends a source below it to the remainder of its role, and keeps one above', () => {
    const mixture = mixComposition([of(1000, 'R'), of(0.9e-6, 'S', 'pigment'), of(1.1e-6, 'T', 'pigment')]);
    expect(mixture.map(({ source }) => source)).toEqual(['T', null, 'R']);
    expect(mixture[1]?.fraction).toBeCloseTo(0.9e-9, 16);
  });

  it('keeps a source that is exactly at it', () => {
    expect(mixComposition([of(3, 'R'), of(1, 'S')], 0.25).map(({ source }) => source)).toEqual(['R', 'S']);
  });

  it('judges the sum of a source, not each way it came', () => {
    expect(mixComposition([of(8, 'R'), of(1, 'S'), of(1, 'S')], 0.15).map(({ source }) => source)).toEqual(['R', 'S']);
  });

  it('never brings a remainder back under a name, however large it grows', () => {
    const cut = mixComposition([of(9, 'R'), of(1, 'S')], 0.2);
    expect(mixComposition([{ kg: 1, composition: cut }], 0)).toEqual([
      { source: 'R', role: 'resin', fraction: 0.9 },
      { source: null, role: 'resin', fraction: 0.1 },
    ]);
  });

  it('has one remainder per role, of what was there and what is added', () => {
    const tank = mixComposition([of(8, 'R'), of(2, 'S')], 0.25);
    expect(mixComposition([{ kg: 9, composition: tank }, of(1, 'late')], 0.15)).toEqual([
      { source: 'R', role: 'resin', fraction: expect.closeTo(0.72, 15) },
      { source: null, role: 'resin', fraction: expect.closeTo(0.28, 15) },
    ]);
  });

  it('lets any input below it land in the remainder, which grows by that much', () => {
    const below = fc.double({ min: 1e-7, max: 0.99e-6, noNaN: true });
    fc.assert(
      fc.property(ingredient, below, ({ composition }, kg) => {
        const mixture = mixComposition([{ kg: 1000, composition }, of(kg, 'late', 'pigment')]);
        expect(mixture.some(({ source }) => source === 'late')).toBe(false);
        expect(mixture.find(({ role }) => role === 'pigment')).toEqual({
          source: null,
          role: 'pigment',
          fraction: kg / (1000 + kg),
        });
      }),
    );
  });
});
