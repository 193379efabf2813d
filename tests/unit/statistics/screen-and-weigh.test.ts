import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  attribute,
  exactLogRank,
  inseparable,
  candidatesOf,
  lotsOf,
  riskCells,
  screenClasses,
  SETTINGS,
  shownBy,
  weigh,
  type Judged,
} from '@hull-record/statistics';
import { smallCase } from './cases-of-hulls.js';

const lot = (name: string, hulls: readonly number[]) => ({
  lot: name,
  family: 'resin',
  hulls: Uint32Array.from(hulls),
});
const classesOf = (lots: readonly ReturnType<typeof lot>[]) => inseparable(candidatesOf(lots, [0]));

describe('the screen of classes', () => {
  it('gives each its exact p, and none below the smallest that it could have', () => {
    fc.assert(
      fc.property(smallCase, ({ hulls, judged, exposed }) => {
        const { ranked, untestable } = screenClasses(classesOf([lot('R1', [...exposed])]), riskCells(judged), 0.2);
        const [found] = [...ranked, ...untestable];
        const compared = hulls.map((each) => ({ ...each, event: each.claimed === 1 }));
        expect(found?.p).toBeCloseTo(exactLogRank(compared).pGreater, 11);
        expect(found?.smallestP).toBeLessThanOrEqual((found?.p ?? NaN) * (1 + 1e-12));
        expect(ranked.length).toBe((found?.smallestP ?? NaN) <= 0.2 ? 1 : 0);
      }),
    );
  });

  it('sets a lot in one hull of 24 with 7 claims apart, for the least its p can be is 7/24, and judges one in two: 7/92', () => {
    const judged: Judged = {
      ages: new Float64Array(24).fill(1),
      claimed: Uint8Array.from({ length: 24 }, (_, hull) => (hull < 7 ? 1 : 0)),
      strata: new Uint32Array(24),
    };
    const { ranked, untestable } = screenClasses(
      classesOf([lot('one', [0]), lot('two', [8, 9])]),
      riskCells(judged),
      0.1,
    );
    expect(untestable).toMatchObject([{ p: expect.closeTo(7 / 24, 12), smallestP: expect.closeTo(7 / 24, 12) }]);
    expect(ranked).toMatchObject([{ p: 1, smallestP: expect.closeTo(7 / 92, 12), q: 1 }]);
  });

  it('knows that one hull has one claim, however many risk sets it is in', () => {
    const judged: Judged = {
      ages: Float64Array.from({ length: 20 }, (_, hull) => (hull < 10 ? hull + 1 : 50)),
      claimed: Uint8Array.from({ length: 20 }, (_, hull) => (hull < 10 ? 1 : 0)),
      strata: new Uint32Array(20),
    };
    const { untestable } = screenClasses(classesOf([lot('one', [15])]), riskCells(judged), 0.1);
    const missed = Array.from({ length: 10 }, (_, i) => (19 - i) / (20 - i)).reduce((a, b) => a * b, 1);
    expect(untestable[0]?.smallestP).toBeCloseTo(1 - missed, 12);
  });
});

describe('the posterior over assumptions', () => {
  const judged: Judged = {
    ages: Float64Array.of(3, 5, 8, 8, 8, 8, 4, 6, 8, 8),
    claimed: Uint8Array.of(1, 1, 0, 0, 0, 0, 1, 0, 0, 0),
    strata: Uint32Array.of(0, 0, 0, 0, 0, 0, 1, 1, 1, 1),
  };
  const lots = [
    [0, 1, 2],
    [1, 3, 6],
  ];
  const model = { thetas: [0.2, 0.7], backgrounds: [0.3], priors: [0.1], unrecorded: 0.2, mostBad: 2, beam: 10 };
  const cells = riskCells(judged);
  const classes = classesOf(lots.map((hulls, i) => lot(`${i}`, hulls)));

  /** Nelson-Aalen over all hulls, by hand: claims at 3, 4 and 5 of 10, 9 and 8 at risk. */
  const byAge = (hull: number): number =>
    [3, 4, 5].reduce((sum, age, i) => sum + ((judged.ages[hull] ?? NaN) >= age ? 1 / (10 - i) : 0), 0);
  const inStratum = [0, 1].map((stratum) => {
    const own = [...judged.ages.keys()].filter((hull) => judged.strata[hull] === stratum);
    const claims = own.filter((hull) => judged.claimed[hull] === 1).length;
    return { claims, expected: own.reduce((sum, hull) => sum + byAge(hull), 0) };
  });
  const factorOf = (stratum: number): number =>
    ((inStratum[stratum]?.claims ?? NaN) + 1) / ((inStratum[stratum]?.expected ?? NaN) + 1);
  /** Of two claims and of one, and of three in all: geometric over Poisson at the factor used. */
  const ratio = (claims: number, expected: number): number => {
    const factor = (claims + 1) / (expected + 1);
    const ways = claims === 3 ? 6 : claims;
    return ways / (1 + expected) ** (claims + 1) / (factor ** claims * Math.exp(-factor * expected));
  };
  const price =
    inStratum.map(({ claims, expected }) => ratio(claims, expected)).reduce((a, b) => a * b, 1) / ratio(3, 3);

  /** Straight from the words of the model: every chance of showing, world and set of bad lots, hull by hull. */
  const byHand = ({ thetas, backgrounds, priors, unrecorded }: typeof model) => {
    const [shown, prior, background] = [shownBy(judged, cells), priors[0] ?? NaN, backgrounds[0] ?? NaN];
    const all = thetas.flatMap((theta) =>
      [0, 1].flatMap((world) =>
        [0, 1, 2, 3].map((set) => {
          const bad = lots.filter((_, i) => (set >> i) & 1);
          const chance = world ? unrecorded * price : 1 - unrecorded;
          const before = chance * prior ** bad.length * (1 - prior) ** (2 - bad.length);
          const weight = [...judged.ages.keys()].reduce((product, hull) => {
            const leak = Math.exp(-(world ? factorOf(judged.strata[hull] ?? NaN) : background) * byAge(hull));
            const spared =
              leak * (1 - theta * (shown.by[hull] ?? NaN)) ** bad.filter((own) => own.includes(hull)).length;
            return product * (judged.claimed[hull] ? 1 - spared : spared);
          }, before);
          return { theta, world, set, weight };
        }),
      ),
    );
    const total = all.reduce((sum, { weight }) => sum + weight, 0);
    return (holds: (each: (typeof all)[number]) => boolean): number =>
      all.filter(holds).reduce((sum, { weight }) => sum + weight, 0) / total;
  };

  it.each([
    ['as set', model],
    ['with something unrecorded more likely', { ...model, unrecorded: 0.9 }],
    ['without anything unrecorded', { ...model, unrecorded: 0 }],
  ])('is that of all sets, worlds and chances of showing, weighed one by one: %s', (_name, given) => {
    const [found] = weigh(classes, judged, cells, given);
    const chance = byHand(given);
    expect(found?.classes[0]).toBeCloseTo(
      chance(({ set }) => (set & 1) === 1),
      10,
    );
    expect(found?.classes[1]).toBeCloseTo(
      chance(({ set }) => (set & 2) === 2),
      10,
    );
    expect(found?.none).toBeCloseTo(
      chance(({ set }) => set === 0),
      10,
    );
    expect(found?.unrecorded).toBeCloseTo(
      chance(({ world }) => world === 1),
      10,
    );
    expect(found?.thetas[1]).toBeCloseTo(
      chance(({ theta }) => theta === 0.7),
      10,
    );
  });
});

describe('two lots that share the claims and not the other hulls', () => {
  const claims = 14;
  const judged: Judged = {
    ages: Float64Array.from({ length: 400 }, (_, hull) =>
      hull < claims || hull >= 392 ? 100 + 20 * (hull % 37) : 1000,
    ),
    claimed: Uint8Array.from({ length: 400 }, (_, hull) => (hull < claims || hull >= 392 ? 1 : 0)),
    strata: new Uint32Array(400),
  };
  const range = (from: number, to: number): number[] => Array.from({ length: to - from }, (_, i) => from + i);
  const two = [lot('A', range(0, 35)), lot('B', [...range(0, 30), ...range(35, 40)])];

  it('cannot be told apart though a tenth and more of their hulls differ: the data cannot say which', () => {
    const found = attribute(judged, two, { ...SETTINGS, worlds: 0 });
    expect(found.rows.map(({ suspect, nearlySame }) => [lotsOf(suspect)[0], nearlySame.length])).toEqual([
      ['A', 0],
      ['B', 0],
    ]);
    expect(found.rows[0]?.q).toBeLessThan(1e-6);
    expect(found.rows[0]?.posterior?.most).toBeLessThan(0.9);
    expect(found.verdict).toBe('the data cannot say which');
  });
});
