import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  alike,
  fitWeibull,
  kaplanMeier,
  meanCumulative,
  seeded,
  triangle,
  unit,
  weibayes,
  weibullLogLikelihood,
  type Built,
  type Repeated,
} from '@hull-record/statistics';

const watched = fc.record({ age: fc.integer({ min: 1, max: 20 }), event: fc.boolean() });
/** Hulls of which some were watched from a later age on. */
const entered = fc
  .record({ age: fc.integer({ min: 1, max: 20 }), event: fc.boolean(), late: fc.nat(20) })
  .map(({ age, event, late }) => ({ age, event, from: late < age ? late : 0 }));

/** The definition, hull by hull. */
const hullByHull = (hulls: readonly Repeated[]): { age: number; mean: number; se: number }[] => {
  const ages = [...new Set(hulls.flatMap(({ claims }) => claims))].sort((a, b) => a - b);
  const off = hulls.map(() => 0);
  let mean = 0;
  return ages.map((age) => {
    const isIn = ({ until, from = 0 }: Repeated): boolean => until >= age && (from === 0 || from < age);
    const atRisk = hulls.filter(isIn).length;
    const counts = hulls.map(({ claims }) => claims.filter((claim) => claim === age).length);
    const step = counts.reduce((a, b) => a + b, 0) / atRisk;
    mean += step;
    hulls.forEach((hull, i) => {
      if (isIn(hull)) off[i] = (off[i] ?? 0) + ((counts[i] ?? 0) - step) / atRisk;
    });
    return { age, mean, se: Math.sqrt(off.reduce((a, b) => a + b * b, 0)) };
  });
};

describe('hulls that are alike', () => {
  it('taken together are as many, and fit the same distribution', () => {
    fc.assert(
      fc.property(fc.array(watched, { minLength: 2, maxLength: 80 }), (hulls) => {
        const together = alike(hulls);
        expect(together.reduce((all, { weight }) => all + weight, 0)).toBe(hulls.length);
        expect(new Set(together.map(({ age, event }) => `${age} ${event}`)).size).toBe(together.length);
        if (new Set(hulls.filter(({ event }) => event).map(({ age }) => age)).size < 2) return;
        const [one, all] = [fitWeibull(hulls), fitWeibull(together)];
        expect(all.beta / one.beta).toBeCloseTo(1, 8);
        expect(all.eta / one.eta).toBeCloseTo(1, 8);
        expect(all.logLikelihood).toBeCloseTo(one.logLikelihood, 6);
      }),
    );
  });

  it('that were watched from later ages on have the likelihood of each over its chance to come so far', () => {
    fc.assert(
      fc.property(fc.array(entered, { minLength: 2, maxLength: 60 }), (hulls) => {
        const together = alike(hulls);
        const late = hulls.filter(({ from }) => from > 0).length;
        expect(together.reduce((all, { weight }) => all + weight, 0)).toBe(hulls.length - late);
        const of = (beta: number, eta: number): number =>
          hulls.reduce((total, { age, event, from }) => {
            const density = event ? Math.log(beta / eta) + (beta - 1) * Math.log(age / eta) : 0;
            return total + density - (age / eta) ** beta + (from / eta) ** beta;
          }, 0);
        expect(weibullLogLikelihood(together, { beta: 1.5, eta: 9 })).toBeCloseTo(of(1.5, 9), 8);
        const claims = hulls.filter(({ event }) => event).length;
        const years = hulls.reduce((total, { age, from }) => total + age - from, 0);
        if (claims > 0) expect(weibayes(together, 1).best?.eta).toBeCloseTo(years / claims, 9);
      }),
    );
  });

  it('give back the distribution that hulls were drawn from, of those alone that came to a later age', () => {
    const random = seeded(11);
    const hulls = Array.from({ length: 30_000 }, () => ({
      age: 10 * (-Math.log(1 - unit(random))) ** (1 / 2),
      from: 8 * unit(random),
      event: true,
    })).filter(({ age, from }) => from < age);
    const { beta, eta } = fitWeibull(alike(hulls));
    expect(hulls.length).toBeLessThan(25_000);
    expect(Math.abs(beta - 2)).toBeLessThan(0.05);
    expect(Math.abs(eta - 10)).toBeLessThan(0.15);
    const half = kaplanMeier(hulls).find(({ age }) => age >= 10 * Math.log(2) ** 0.5);
    expect(Math.abs((half?.survival ?? NaN) - 0.5)).toBeLessThan(0.02);
  });

  it('have the mean cumulative number of claims, and its error, that each by itself gives', () => {
    const hull = fc
      .record({
        until: fc.integer({ min: 0, max: 12 }),
        claims: fc.array(fc.nat(12), { maxLength: 3 }),
        late: fc.nat(12),
      })
      .map(({ until, claims, late }) => {
        const from = late < until ? late : 0;
        return { until, from, claims: claims.filter((claim) => claim <= until && (from === 0 || claim > from)) };
      });
    fc.assert(
      fc.property(fc.array(hull, { maxLength: 60 }), (hulls) => {
        const found = meanCumulative(hulls);
        const expected = hullByHull(hulls);
        expect(found.map(({ age }) => age)).toEqual(expected.map(({ age }) => age));
        found.forEach(({ mean, se }, i) => {
          expect(mean).toBeCloseTo(expected[i]?.mean ?? NaN, 12);
          expect(se).toBeCloseTo(expected[i]?.se ?? NaN, 12);
        });
      }),
    );
  });

  it('stand in each cell of the triangle that they were watched through', () => {
    const month = fc.integer({ min: 0, max: 5 });
    const built: fc.Arbitrary<Built> = fc
      .record({ built: month, inService: month, monthsWatched: month, claimMonths: fc.array(month, { maxLength: 2 }) })
      .map((one) => ({ ...one, claimMonths: one.claimMonths.filter((claim) => claim <= one.monthsWatched) }));
    fc.assert(
      fc.property(fc.array(built, { maxLength: 40 }), (hulls) => {
        const { cells, rows, columns, diagonals } = triangle(hulls);
        for (const [of, row] of cells)
          row.forEach((cell, at) => {
            const own = hulls.filter((hull) => hull.built === of);
            expect(cell.atRisk).toBe(own.filter(({ monthsWatched }) => monthsWatched >= at).length);
            expect(cell.claims).toBe(
              own.flatMap(({ claimMonths }) => claimMonths).filter((claim) => claim === at).length,
            );
          });
        const claims = hulls.reduce((all, { claimMonths }) => all + claimMonths.length, 0);
        for (const along of [[...rows.values()], columns, [...diagonals.values()]])
          expect(along.reduce((all, cell) => all + cell.claims, 0)).toBe(claims);
      }),
    );
  });
});
