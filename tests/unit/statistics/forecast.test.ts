import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  chanceAhead,
  claimsByAge,
  claimsByStep,
  countQuantile,
  expectedClaims,
  fitWeibull,
  forecastByAge,
  forecastClaims,
  InputInvalid,
  poissonBinomial,
  seeded,
  TooLittle,
  triangle,
} from '@hull-record/statistics';

const fit = { beta: 2, eta: 100 };

describe('the chance of a claim ahead', () => {
  it('ends with the warranty, is none after it, and counts a hull from its launch', () => {
    expect(chanceAhead(fit, 10, { horizon: 20, warrantyEnd: 25 })).toBeCloseTo(1 - Math.exp(0.01 - 0.0625), 12);
    expect(chanceAhead(fit, 30, { horizon: 20, warrantyEnd: 25 })).toBe(0);
    expect(chanceAhead(fit, -5, { horizon: 15 })).toBeCloseTo(1 - Math.exp(-0.01), 12);
    expect(chanceAhead(fit, -5, { horizon: 4 })).toBe(0);
  });

  it('keeps its digits when it is small', () => {
    expect(chanceAhead({ beta: 1, eta: 1e18 }, 5, { horizon: 1 })).toBeCloseTo(1e-18, 30);
  });

  it('by step adds up to that of all the steps', () => {
    const running = [
      { age: 5, hulls: 40 },
      { age: 60, hulls: 3 },
      { age: -4, hulls: 10 },
    ];
    const steps = claimsByStep(fit, running, { step: 6, steps: 5, warrantyEnd: 80 });
    const all = expectedClaims(fit, running, { horizon: 30, warrantyEnd: 80 });
    expect(steps.reduce((total, step) => total + step, 0)).toBeCloseTo(all, 12);
  });
});

describe('the number of claims among unlike hulls', () => {
  it('has the chances of every outcome counted one by one', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 8 }), (chances) => {
        const found = poissonBinomial(chances.map((chance) => ({ chance, hulls: 1 })));
        const counted = new Array<number>(chances.length + 1).fill(0);
        for (let set = 0; set < 2 ** chances.length; set += 1) {
          const has = chances.map((_, i) => (set >> i) & 1);
          const p = chances.reduce((all, chance, i) => all * (has[i] ? chance : 1 - chance), 1);
          const k = has.reduce((a, b) => a + b, 0);
          counted[k] = (counted[k] ?? 0) + p;
        }
        counted.forEach((p, k) => expect(found[k] ?? 0).toBeCloseTo(p, 12));
      }),
    );
  });

  it('cuts off nothing that matters when hulls are many', () => {
    const found = poissonBinomial([
      { chance: 0.002, hulls: 5000 },
      { chance: 0.5, hulls: 20 },
    ]);
    expect(found.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 13);
    expect(found.reduce((total, p, k) => total + p * k, 0)).toBeCloseTo(20, 9);
    expect(countQuantile(found, 0.5)).toBe(20);
  });
});

describe('the forecast', () => {
  const ages = [50, 150, 250, 350, 450, 550, 650, 750, 850, 950, 1050, 1150, 1250, 1350, 1450, 1550, 1650, 1850, 2050];
  const counts = [288, 148, 124, 111, 106, 99, 110, 114, 119, 127, 123, 93, 47, 41, 27, 11, 6, 1, 2];
  const running = ages.map((age, i) => ({ age, hulls: counts[i] ?? NaN }));
  const cages = fitWeibull([
    ...[230, 334, 423, 990, 1009, 1510].map((age) => ({ age, event: true })),
    ...running.map(({ age, hulls }) => ({ age, event: false, weight: hulls })),
  ]);
  const ahead = { horizon: 300 };

  it('of six bearing cages is 5.06, 2 to 9 as if all were known, and 2 to about 33 with what is not (Escobar and Meeker 1999 on why; 2 to 33 recomputed apart)', () => {
    const found = forecastClaims(cages, running, ahead, { random: seeded(1), draws: 20_000 });
    expect(found.expected).toBeCloseTo(5.0582, 3);
    expect(found.plugIn).toEqual({ lower: 2, upper: 9 });
    expect(found.withParameters.lower).toBeLessThanOrEqual(2);
    expect(Math.abs(found.withParameters.upper - 33)).toBeLessThanOrEqual(4);
  });

  it('is the same for a seed', () => {
    const again = (seed: number): unknown =>
      forecastClaims(cages, running, ahead, { random: seeded(seed), draws: 300 });
    expect(again(4)).toEqual(again(4));
  });

  it('is not made from two claims', () => {
    const two = fitWeibull([
      { age: 3, event: true },
      { age: 9, event: true },
      { age: 12, event: false, weight: 50 },
    ]);
    expect(() => forecastClaims(two, running, ahead, { random: seeded(1) })).toThrow(TooLittle);
  });
});

describe('claims by age', () => {
  const sold = [
    { period: 0, hulls: 100, claims: [1, 2, 3] },
    { period: 1, hulls: 200, claims: [4, 2] },
    { period: 2, hulls: 50, claims: [0] },
  ];

  it('are claims over hulls that reached the age, worked out by hand: 5/350, 4/300, 3/100', () => {
    const { rates } = claimsByAge(sold, { now: 2 });
    expect(rates.map(({ rate }) => rate)).toEqual([5 / 350, 4 / 300, 3 / 100]);
    expect(rates[2]?.cumulative).toBeCloseTo(5 / 350 + 4 / 300 + 0.03, 12);
    expect(rates[2]?.se).toBeCloseTo(Math.sqrt(5 / 350 ** 2 + 4 / 300 ** 2 + 3 / 100 ** 2), 12);
  });

  it('count a hull for the part of its claims that is reported by now: 5/(100 + 200 + 25)', () => {
    const { rates } = claimsByAge(sold, { now: 2, reportedWithin: [0.5, 1] });
    expect(rates[0]?.rate).toBeCloseTo(5 / 325, 12);
    expect(rates[2]?.rate).toBeCloseTo(3 / 50, 12);
  });

  it('go on as the hulls age, and stop at the oldest age known: 200 (3/100) + 50 (4/300), and 100 hulls beyond', () => {
    const found = forecastByAge(sold, claimsByAge(sold, { now: 2 }), { now: 2 }, 1);
    expect(found).toEqual({ expected: expect.closeTo(200 * 0.03 + (50 * 4) / 300, 12), beyond: 100 });
  });

  it('foresee what is not reported yet even in no time to come', () => {
    const known = { now: 2, reportedWithin: [0.5, 1] };
    const rates = claimsByAge(sold, known);
    const late = (50 * 5) / 325 + (200 * 4) / 200 + 100 * 0.06;
    const aged = 200 * 0.06 + (50 * 4) / 200;
    const found = forecastByAge(sold, rates, known, 1).expected;
    expect(found).toBeCloseTo(late * 0.5 + aged * 0.5, 10);
  });

  it('have a dispersion about 1 when claims fall by chance alone, and more when some builds are worse', () => {
    const even = [10, 10, 10, 10].map((claims, period) => ({ period, hulls: 100, claims: [claims] }));
    const uneven = [30, 2, 5, 3].map((claims, period) => ({ period, hulls: 100, claims: [claims] }));
    expect(claimsByAge(even, { now: 3 }).dispersion).toBe(0);
    expect(claimsByAge(uneven, { now: 3 }).dispersion).toBeCloseTo((400 + 64 + 25 + 49) / 10 / 3, 10);
  });

  it('cannot be of an age that no hull has reached', () => {
    expect(() => claimsByAge([{ period: 2, hulls: 5, claims: [1, 1] }], { now: 2 })).toThrow(InputInvalid);
  });
});

describe('the triangle of months of production and in service', () => {
  const hulls = [
    { built: 0, inService: 2, monthsWatched: 2, claimMonths: [1, 1] },
    { built: 0, inService: 1, monthsWatched: 1, claimMonths: [] },
    { built: 1, inService: 3, monthsWatched: 0, claimMonths: [0] },
  ];

  it('adds the same claims and hulls along rows, columns and diagonals', () => {
    const found = triangle(hulls);
    expect(found.cells.get(0)).toEqual([
      { claims: 0, atRisk: 2 },
      { claims: 2, atRisk: 2 },
      { claims: 0, atRisk: 1 },
    ]);
    expect(found.columns).toEqual([
      { claims: 1, atRisk: 3 },
      { claims: 2, atRisk: 2 },
      { claims: 0, atRisk: 1 },
    ]);
    expect(found.rows.get(1)).toEqual({ claims: 1, atRisk: 1 });
    expect(found.diagonals.get(3)).toEqual({ claims: 3, atRisk: 2 });
    for (const sums of [[...found.rows.values()], found.columns, [...found.diagonals.values()]])
      expect(sums.reduce((total, { claims }) => total + claims, 0)).toBe(3);
  });

  it('loses no claim of a month that was not watched: it refuses', () => {
    expect(() => triangle([{ built: 0, inService: 0, monthsWatched: 1, claimMonths: [2] }])).toThrow(InputInvalid);
  });
});
