import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  conditionalOdds,
  convolve,
  chanceFrom,
  exactOdds,
  exactTest,
  fisherExact,
  InputInvalid,
  marginsOf,
  meanOf,
  oddsLimits,
  tilt,
} from '@hull-record/statistics';
import { everyFall, smallTable } from './tables.js';

describe("Fisher's exact test", () => {
  it('counts every way in which claims can fall, one by one', () => {
    fc.assert(
      fc.property(smallTable(3), (table) => {
        const falls = everyFall(marginsOf(table));
        const share = (holds: (x: number) => boolean): number => falls.filter(holds).length / falls.length;
        const chance = (x: number): number => share((other) => other === x);
        const found = fisherExact(table);
        expect(found.pGreater).toBeCloseTo(
          share((x) => x >= table.a),
          12,
        );
        expect(found.pLess).toBeCloseTo(
          share((x) => x <= table.a),
          12,
        );
        expect(found.pObserved).toBeCloseTo(chance(table.a), 12);
        expect(found.pTwoSided).toBeCloseTo(
          share((x) => chance(x) <= chance(table.a) + 1e-9),
          12,
        );
      }),
      { numRuns: 60 },
    );
  });

  it('gives one-sided p that overlap in the observed table alone, and mid-p that add up to 1', () => {
    fc.assert(
      fc.property(smallTable(40), (table) => {
        const { pGreater, pLess, pObserved, midPGreater } = fisherExact(table);
        expect(pGreater + pLess - pObserved).toBeCloseTo(1, 10);
        expect(midPGreater + (pLess - pObserved / 2)).toBeCloseTo(1, 10);
      }),
    );
  });

  it('says of turned tables what it said of the table: exposed and others, or claims and none, change places', () => {
    fc.assert(
      fc.property(smallTable(30), ({ a, b, c, d }) => {
        const [found, turned, flipped] = [
          { a, b, c, d },
          { a, b: c, c: b, d },
          { a: c, b: d, c: a, d: b },
        ].map((table) => fisherExact(table)) as [
          ReturnType<typeof fisherExact>,
          ReturnType<typeof fisherExact>,
          ReturnType<typeof fisherExact>,
        ];
        expect(turned.pTwoSided).toBeCloseTo(found.pTwoSided, 10);
        expect(flipped.pTwoSided).toBeCloseTo(found.pTwoSided, 10);
        expect(flipped.pLess).toBeCloseTo(found.pGreater, 10);
        if (found.oddsRatio > 0 && found.oddsRatio < Infinity)
          expect(flipped.oddsRatio * found.oddsRatio).toBeCloseTo(1, 8);
      }),
    );
  });

  it('refuses a cell that is no count', () => {
    expect(() => fisherExact({ a: 1, b: 2, c: -1, d: 4 })).toThrow(InputInvalid);
    expect(() => fisherExact({ a: 1.5, b: 2, c: 1, d: 4 })).toThrow(InputInvalid);
  });

  it('keeps the digits of a tail far below 1e-16 (0 of 200 against 200 of 200: 1/C(400,200), by logarithms of factorials)', () => {
    const log = fisherExact({ a: 200, b: 0, c: 0, d: 200 }).pGreater;
    const exact = Array.from({ length: 200 }, (_, i) => (i + 1) / (201 + i)).reduce(
      (product, factor) => product * factor,
      1,
    );
    expect(log / exact).toBeCloseTo(1, 9);
  });
});

describe('conditional odds', () => {
  it('are those under which the observed number is the mean, and their limits leave a fortieth on each side', () => {
    fc.assert(
      fc.property(smallTable(25), (table) => {
        const central = convolve([marginsOf(table)]);
        const odds = conditionalOdds(central, table.a);
        const { lower, upper } = oddsLimits(central, table.a);
        if (odds > 0 && odds < Infinity) {
          expect(meanOf(tilt(central, Math.log(odds)))).toBeCloseTo(table.a, 8);
          expect(lower).toBeLessThan(odds);
          expect(upper).toBeGreaterThan(odds);
        }
        if (lower > 0) expect(chanceFrom(tilt(central, Math.log(lower)), table.a)).toBeCloseTo(0.025, 8);
      }),
    );
  });

  it('are not a number when margins allow one table only', () => {
    expect(fisherExact({ a: 0, b: 0, c: 3, d: 9 })).toMatchObject({ oddsRatio: NaN, pGreater: 1, pTwoSided: 1 });
  });
});

describe('the convolution over tables', () => {
  const tables = fc.array(smallTable(6), { minLength: 1, maxLength: 5 });

  it('is the distribution of a sum of independent counts, in whatever order the tables come', () => {
    fc.assert(
      fc.property(tables, (given) => {
        const forward = tilt(convolve(given.map(marginsOf)), 0);
        const backward = tilt(convolve([...given].reverse().map(marginsOf)), 0);
        expect(backward.low).toBe(forward.low);
        forward.values.forEach((value, i) => expect(backward.values[i]).toBeCloseTo(value, 12));
        const means = given.map(({ a, b, c, d }) => ((a + b) * (a + c)) / Math.max(1, a + b + c + d));
        expect(meanOf(forward)).toBeCloseTo(
          means.reduce((x, y) => x + y, 0),
          9,
        );
      }),
    );
  });

  it('of pairs of one exposed and one other hull is a sign test: p = P(Bin(n, 1/2) >= x)', () => {
    const pairs = [...Array(18).fill({ a: 1, b: 0, c: 0, d: 1 }), ...Array(3).fill({ a: 0, b: 1, c: 1, d: 0 })];
    const tail = [0, 1, 2, 3].reduce((total, k) => total + ([1, 21, 210, 1330][k] ?? NaN) / 2 ** 21, 0);
    expect(exactOdds(pairs).pGreater).toBeCloseTo(tail, 14);
    expect(exactOdds(pairs).oddsRatio).toBeCloseTo(6, 9);
  });

  it('holds over hundreds of tables whose ends are far below the smallest number', () => {
    const rare = Array.from({ length: 400 }, () => ({ exposed: 1, claims: 1, total: 1000 }));
    const central = convolve(rare);
    expect(central.logs.at(-1)).toBeCloseTo(-400 * Math.log(1000), 6);
    expect(exactTest(central, 400).pGreater).toBe(0);
    expect(conditionalOdds(central, 200)).toBeCloseTo(999, 5);
  });
});
