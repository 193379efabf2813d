import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  adjustedP,
  chanceFrom,
  convolve,
  doseTrend,
  exactLogRank,
  logRank,
  riskCells,
  riskTables,
  seeded,
  smallestByChance,
  tailChances,
  tally,
  tilt,
  marginsOf,
  type Compared,
} from '@hull-record/statistics';
import { smallCase } from './cases-of-hulls.js';

type Hulls = readonly { age: number; claimed: number; stratum: number; exposed: boolean; from: number }[];

const compared = (hulls: Hulls): Compared[] => hulls.map(({ claimed, ...hull }) => ({ ...hull, event: claimed === 1 }));

describe('the log-rank test over risk cells', () => {
  it('is the log-rank test of the hulls, taken one by one', () => {
    fc.assert(
      fc.property(smallCase, ({ hulls, judged, exposed }) => {
        const cells = riskCells(judged);
        const found = tally(exposed, cells);
        const plain = logRank(compared(hulls));
        expect(found.observed).toBe(plain.observed);
        expect(found.expected).toBeCloseTo(plain.expected, 10);
        expect(found.variance).toBeCloseTo(plain.variance, 10);
      }),
    );
  });

  it('has the exact tail of the convolution over the same tables, for every number of claims', () => {
    fc.assert(
      fc.property(smallCase, ({ hulls, judged, exposed }) => {
        const cells = riskCells(judged);
        const found = tally(exposed, cells);
        const chances = tilt(convolve(riskTables(compared(hulls)).map(marginsOf)), 0);
        const most = hulls.filter(({ claimed }) => claimed === 1).length;
        const tails = tailChances(found.exposed, cells, most);
        tails.forEach((tail, k) => expect(tail).toBeCloseTo(chanceFrom(chances, k), 11));
        expect(tailChances(found.exposed, cells, found.observed).at(-1)).toBeCloseTo(
          exactLogRank(compared(hulls)).pGreater,
          11,
        );
      }),
    );
  });

  it('keeps the digits of a tail where one less the rest would have none: 30 claims on 30 exposed of 3000', () => {
    const judged = {
      ages: Float64Array.from({ length: 3000 }, (_, hull) => (hull < 30 ? hull + 1 : 100)),
      claimed: Uint8Array.from({ length: 3000 }, (_, hull) => (hull < 30 ? 1 : 0)),
      strata: new Uint32Array(3000),
    };
    const cells = riskCells(judged);
    const { exposed } = tally(
      Uint32Array.from({ length: 30 }, (_, hull) => hull),
      cells,
    );
    const product = Array.from({ length: 30 }, (_, i) => (30 - i) / (3000 - i)).reduce((a, b) => a * b, 1);
    expect((tailChances(exposed, cells, 30).at(-1) ?? NaN) / product).toBeCloseTo(1, 10);
    expect(product).toBeLessThan(1e-70);
  });
});

describe('worlds by chance', () => {
  const hulls = Array.from({ length: 60 }, (_, i) => ({
    age: 1 + (i % 2),
    claimed: i % 5 === 0 ? 1 : 0,
    stratum: i % 2,
    exposed: i % 3 === 0,
  }));
  const judged = {
    ages: Float64Array.from(hulls, ({ age }) => age),
    claimed: Uint8Array.from(hulls, ({ claimed }) => claimed),
    strata: Uint32Array.from(hulls, ({ stratum }) => stratum),
  };
  const cells = riskCells(judged);
  /** The same, a fourth of the hulls watched from a later age on. */
  const later = riskCells({ ...judged, from: Float64Array.from(hulls, (_, i) => (i % 4 === 0 ? 0.5 + (i % 2) : 0)) });
  const exposed = Uint32Array.from([...hulls.keys()].filter((i) => i % 3 === 0));
  const suspect = { members: [], hulls: exposed };
  const throwing = (seed: number, over = cells): Float64Array =>
    smallestByChance([suspect], over, { random: seeded(seed), worlds: 4000 });

  it.each([
    ['from the start', cells],
    ['some of them later', later],
  ])('give one class, watched %s, as often a p as small as that p says, within four standard errors', (_how, over) => {
    const smallest = throwing(1, over);
    const tails = tailChances(tally(exposed, over).exposed, over, 12);
    for (const p of tails) {
      const share = smallest.filter((each) => each <= p * (1 + 1e-9)).length / 4000;
      expect(Math.abs(share - p)).toBeLessThanOrEqual(4 * Math.sqrt((p * (1 - p)) / 4000));
    }
  });

  it('are the same for a seed, and others for another', () => {
    expect(throwing(2)).toEqual(throwing(2));
    expect(throwing(2)).not.toEqual(throwing(3));
  });

  it('correct a p for the best of many: never below it by more than chance, never 0', () => {
    expect(adjustedP(0, new Float64Array(999).fill(0.5))).toBe(0.001);
    expect(adjustedP(0.5, new Float64Array(999).fill(0.5))).toBe(1);
    const others = Array.from({ length: 8 }, (_, k) => ({ members: [], hulls: exposed.map((hull) => hull + (k % 3)) }));
    const many = smallestByChance([suspect, ...others], cells, { random: seeded(1), worlds: 4000 });
    const one = throwing(1);
    many.forEach((p, world) => expect(p).toBeLessThanOrEqual(one[world] as number));
  });
});

describe('the trend with share', () => {
  it('of two shares is the log-rank test among the exposed', () => {
    fc.assert(
      fc.property(smallCase, ({ hulls, judged, exposed }) => {
        const shares = Float64Array.from(exposed, (hull) => (hull % 2 ? 1 : 0.2));
        const found = doseTrend(exposed, shares, judged, riskCells(judged));
        const among = [...exposed].map((hull) => ({
          ...(hulls[hull] as (typeof hulls)[number]),
          exposed: hull % 2 === 1,
        }));
        const plain = logRank(compared(among));
        if (plain.variance > 1e-9) expect(found?.z).toBeCloseTo(plain.z, 8);
        else expect(found).toBeNull();
      }),
    );
  });

  it('rises with share when claims do, and is null when all shares are alike', () => {
    const judged = {
      ages: new Float64Array(100).fill(5),
      claimed: Uint8Array.from({ length: 100 }, (_, i) => (i >= 80 ? 1 : 0)),
      strata: new Uint32Array(100),
    };
    const all = Uint32Array.from({ length: 100 }, (_, i) => i);
    const cells = riskCells(judged);
    expect(
      doseTrend(
        all,
        Float64Array.from(all, (i) => i / 100),
        judged,
        cells,
      )?.p,
    ).toBeLessThan(1e-8);
    expect(
      doseTrend(
        all,
        Float64Array.from(all, (i) => 1 - i / 100),
        judged,
        cells,
      )?.p,
    ).toBeGreaterThan(0.999);
    expect(doseTrend(all, new Float64Array(100).fill(0.4), judged, cells)).toBeNull();
  });
});
