import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  acceptedByFaults,
  acceptedOfLot,
  acceptedOfProcess,
  codeLetter,
  crossedStudy,
  InputInvalid,
  normal,
  normalPlan,
  rangeStudy,
  seeded,
  zeroBadSample,
} from '@hull-record/statistics';

describe('acceptance sampling', () => {
  it.each([
    [0.01, 0.9397],
    [0.02, 0.7366],
    [0.05, 0.1721],
  ])(
    'accepts with n 89, c 2 a process of %d bad with chance %d (Montgomery, table 15.2, from memory)',
    (share, chance) => {
      expect(acceptedOfProcess({ n: 89, accept: 2 }, share)).toBeCloseTo(chance, 4);
    },
  );

  it('accepts with n 52, c 3 by the curve of NIST/SEMATECH 6.2.3.2 (from memory: .998 .980 .930 at 1, 2, 3 %)', () => {
    for (const [share, chance] of [
      [0.01, 0.998],
      [0.02, 0.98],
      [0.03, 0.93],
    ] as const)
      expect(acceptedOfProcess({ n: 52, accept: 3 }, share)).toBeCloseTo(chance, 3);
  });

  it('needs 59 good ones to know with 95 % that at most 5 % are bad, and accepts 5 % bad with less than a twentieth', () => {
    expect(zeroBadSample(0.05, 0.95)).toBe(59);
    expect(acceptedOfProcess({ n: 59, accept: 0 }, 0.05)).toBeLessThan(0.05);
    expect(acceptedOfProcess({ n: 58, accept: 0 }, 0.05)).toBeGreaterThan(0.05);
  });

  it('of a large lot is nearly that of a process, and of a rare fault that of Poisson', () => {
    const plan = { n: 50, accept: 1 };
    expect(acceptedOfLot(plan, { total: 1_000_000, bad: 20_000 })).toBeCloseTo(acceptedOfProcess(plan, 0.02), 4);
    expect(acceptedByFaults({ n: 5000, accept: 3 }, 0.0004)).toBeCloseTo(
      acceptedOfProcess({ n: 5000, accept: 3 }, 0.0004),
      3,
    );
  });

  it('never accepts when more are bad than can be missed', () => {
    expect(acceptedOfLot({ n: 8, accept: 2 }, { total: 10, bad: 5 })).toBe(0);
    expect(acceptedOfLot({ n: 10, accept: 5 }, { total: 10, bad: 5 })).toBe(1);
  });
});

describe('the tables of inspection', () => {
  it('give lots of 501 to 1200 the letters G, J and K at levels I, II and III', () => {
    for (const lot of [501, 1200])
      expect((['I', 'II', 'III'] as const).map((level) => codeLetter(lot, level).letter)).toEqual(['G', 'J', 'K']);
    expect(codeLetter(1201, 'II')).toEqual({ letter: 'K', n: 125 });
    expect(codeLetter(10_000_000, 'II')).toEqual({ letter: 'Q', n: 1250 });
  });

  it('lead at an arrow to the plan of another letter, with its own sample', () => {
    expect(normalPlan('J', 0.65)).toEqual({ n: 80, accept: 1 });
    expect(normalPlan('A', 1)).toEqual({ n: 13, accept: 0 });
    expect(normalPlan('G', 1)).toEqual({ n: 50, accept: 1 });
    expect(normalPlan('F', 1)).toEqual({ n: 13, accept: 0 });
    expect(normalPlan('R', 6.5)).toEqual({ n: 200, accept: 21 });
  });

  it('accept good lots mostly: a process at the limit with chance 0.84 or more, whatever the plan has to sample', () => {
    const letters = fc.constantFrom(...'CDEFGHJKLMN');
    fc.assert(
      fc.property(letters, fc.constantFrom(0.65, 1, 1.5, 2.5, 4), (letter, limit) => {
        expect(acceptedOfProcess(normalPlan(letter, limit), limit / 100)).toBeGreaterThan(0.84);
      }),
    );
  });

  it('know no letter I, no limit in between and no lot of one', () => {
    expect(() => normalPlan('I', 1)).toThrow(InputInvalid);
    expect(() => normalPlan('J', 0.7)).toThrow(InputInvalid);
    expect(() => codeLetter(1, 'II')).toThrow(InputInvalid);
  });
});

describe('a study of a gauge', () => {
  const random = seeded(8);
  const parts = Array.from({ length: 10 }, () => 10 * normal(random));
  const biases = [0, 0.5, -0.5, 1, -1, 0.2];
  const readings = biases.map((bias) => [0, 1, 2].map(() => parts.map((part) => part + bias + 0.3 * normal(random))));

  it('finds what was put in: repeatability 0.3, operators 0.7, parts', () => {
    const found = crossedStudy(readings);
    expect(Math.abs(found.repeatability - 0.3)).toBeLessThan(0.05);
    expect(Math.abs(found.reproducibility - 0.7)).toBeLessThan(0.15);
    expect(Math.abs(rangeStudy(readings).repeatability - 0.3)).toBeLessThan(0.05);
  });

  it('splits the squares without rest', () => {
    const { squares } = crossedStudy(readings);
    const all = readings.flat(2);
    const mean = all.reduce((a, b) => a + b, 0) / all.length;
    const total = all.reduce((sum, value) => sum + (value - mean) ** 2, 0);
    expect(Object.values(squares).reduce((a: number, b: number) => a + b, 0)).toBeCloseTo(total, 8);
  });

  it('keeps the interplay of operators and parts apart when there is one', () => {
    const uneven = readings.map((own, o) =>
      own.map((trial) => trial.map((value, p) => value + (o === 0 && p < 5 ? 5 : 0))),
    );
    expect(crossedStudy(uneven).pooled).toBe(false);
  });

  it('needs every operator to measure every part, twice at least', () => {
    expect(() => crossedStudy([[[1, 2]], [[1, 2]]])).toThrow(InputInvalid);
    expect(() =>
      crossedStudy([
        [[1, 2], [1]],
        [
          [1, 2],
          [1, 2],
        ],
      ]),
    ).toThrow(InputInvalid);
  });
});
