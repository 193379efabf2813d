import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  candidatesOf,
  greedyCover,
  hypotheses,
  inseparable,
  InputInvalid,
  lotsOf,
  optionsOf,
  overlap,
  posterior,
  requireCase,
  riskCells,
  strengthOf,
  suspectOf,
  verdictOf,
  LINES,
  type Judged,
} from '@hull-record/statistics';

const exposure = (lot: string, hulls: readonly number[], shares?: readonly number[]) => ({
  lot,
  family: 'resin',
  hulls: Uint32Array.from(hulls),
  ...(shares ? { shares: Float64Array.from(shares) } : {}),
});

describe('candidates', () => {
  it('are a lot at each share threshold that leaves other hulls than the one before', () => {
    const found = candidatesOf([exposure('R1', [1, 4, 7], [0.01, 0.3, 1]), exposure('G1', [2])], [0.5, 0, 0.05, 0.2]);
    expect(found.map(({ lot, fromShare, hulls }) => [lot, fromShare, [...hulls]])).toEqual([
      ['R1', 0, [1, 4, 7]],
      ['R1', 0.05, [4, 7]],
      ['R1', 0.5, [7]],
      ['G1', 0, [2]],
    ]);
  });

  it('in the same hulls are one class, whatever they are called and in whatever order they come', () => {
    const sets = fc.array(fc.uniqueArray(fc.nat({ max: 5 }), { maxLength: 5 }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(sets, (given) => {
        const exposures = given.map((hulls, i) =>
          exposure(
            `lot ${i}`,
            [...hulls].sort((a, b) => a - b),
          ),
        );
        const grouped = (list: typeof exposures): Set<string> =>
          new Set(
            inseparable(candidatesOf(list, [0])).map((each) => `${[...each.hulls]}: ${[...lotsOf(each)].sort()}`),
          );
        const found = grouped(exposures);
        expect(found.size).toBe(new Set(exposures.map(({ hulls }) => hulls.join())).size);
        expect(grouped([...exposures].reverse())).toEqual(found);
      }),
    );
  });

  it('overlap by hulls in both over hulls in either', () => {
    const sets = fc.uniqueArray(fc.nat({ max: 20 }), { minLength: 1, maxLength: 15 });
    fc.assert(
      fc.property(sets, sets, (a, b) => {
        const sorted = (set: number[]): Uint32Array => Uint32Array.from(set).sort();
        const both = a.filter((hull) => b.includes(hull)).length;
        expect(overlap(sorted(a), sorted(b))).toBeCloseTo(both / (a.length + b.length - both), 12);
      }),
    );
  });

  it('must name hulls that are there, rising and once', () => {
    const judged = { ages: new Float64Array(3), claimed: new Uint8Array(3), strata: new Uint32Array(3) };
    for (const hulls of [[3], [1, 1], [2, 1]])
      expect(() => requireCase(judged, [exposure('R1', hulls)])).toThrow(InputInvalid);
    expect(() => requireCase(judged, [exposure('R1', [1, 2], [1])])).toThrow(InputInvalid);
    expect(() => requireCase({ ...judged, ages: new Float64Array(2) }, [])).toThrow(InputInvalid);
    expect(() => requireCase({ ...judged, ages: Float64Array.of(1, NaN, 2) }, [])).toThrow(InputInvalid);
    expect(() => requireCase(judged, [exposure('R1', [0, 2])])).not.toThrow();
  });
});

describe('the posterior', () => {
  const few = fc.record({
    claimed: fc.array(fc.boolean(), { minLength: 3, maxLength: 8 }),
    lots: fc.array(fc.uniqueArray(fc.nat({ max: 7 }), { maxLength: 8 }), { minLength: 1, maxLength: 4 }),
    theta: fc.double({ min: 0.05, max: 0.9, noNaN: true }),
    leak: fc.double({ min: 0.01, max: 0.5, noNaN: true }),
    prior: fc.double({ min: 0.01, max: 0.4, noNaN: true }),
  });

  /** Every set of bad lots, hull by hull, straight from the words of the model. */
  const byHand = (
    claimed: readonly boolean[],
    lots: readonly (readonly number[])[],
    { theta, leak, prior }: { theta: number; leak: number; prior: number },
  ): number[] => {
    const weights = Array.from({ length: 2 ** lots.length }, (_, set) => {
      const bad = lots.filter((_lot, i) => (set >> i) & 1);
      const before = prior ** bad.length * (1 - prior) ** (lots.length - bad.length);
      return claimed.reduce((all, claim, hull) => {
        const spared = (1 - leak) * (1 - theta) ** bad.filter((own) => own.includes(hull)).length;
        return all * (claim ? 1 - spared : spared);
      }, before);
    });
    const total = weights.reduce((a, b) => a + b, 0);
    return lots.map((_, i) => weights.reduce((all, weight, set) => all + ((set >> i) & 1 ? weight : 0), 0) / total);
  };

  it('is that of every set of bad lots weighed one by one', () => {
    fc.assert(
      fc.property(few, ({ claimed, lots, ...model }) => {
        const inside = lots.map((own) => own.filter((hull) => hull < claimed.length).sort((a, b) => a - b));
        const places = Int32Array.from(
          claimed.map((claim, i) => (claim ? claimed.slice(0, i).filter(Boolean).length : -1)),
        );
        const classes = inseparable(
          candidatesOf(
            inside.map((own, i) => exposure(`${i}`, own)),
            [0],
          ),
        );
        const seen = {
          places,
          shown: { by: new Float64Array(claimed.length).fill(1), before: null },
          theta: model.theta,
        };
        const options = optionsOf(
          classes.map((each) => suspectOf(each, seen)),
          lots.length,
        );
        const leaks = new Float64Array(claimed.filter(Boolean).length).fill(model.leak);
        const reach = { mostBad: lots.length, beam: Infinity, logOdds: 0 };
        const found = posterior(options, [{ hypotheses: hypotheses(options, leaks, reach), log: 0 }], model.prior);
        const expected = byHand(claimed, inside, model);
        classes.forEach((each, i) => {
          for (const lot of lotsOf(each))
            expect((found.badLots[i] as number) / lotsOf(each).length).toBeCloseTo(expected[Number(lot)] as number, 9);
        });
      }),
    );
  });

  it('finds the same sets by the best ones alone when the best are all there are', () => {
    const suspects = Array.from({ length: 5 }, (_, i) => ({
      lots: 1,
      claims: Uint32Array.of(i % 4),
      spared: Float64Array.of(0.3 + i / 10),
      sparedClean: i - 5,
    }));
    const options = optionsOf(suspects, 3);
    const leaks = new Float64Array(4).fill(0.1);
    const all = hypotheses(options, leaks, { mostBad: 3, beam: Infinity, logOdds: -2 }).listed();
    const beamed = hypotheses(options, leaks, { mostBad: 3, beam: 8, logOdds: -2 }).listed();
    expect(all).toHaveLength(1 + 5 + 10 + 10);
    const keys = (sets: typeof all): string[] => sets.map(({ options: own }) => [...own].sort().join());
    // Two pairs are not grown from, and every triple has a pair that is.
    expect(new Set(keys(beamed)).size).toBe(26);
    expect(beamed).toHaveLength(26);
    expect(keys(all)).toEqual(expect.arrayContaining(keys(beamed)));
    for (const set of beamed) {
      const same = all.find(({ options: own }) => own.join() === [...set.options].sort().join());
      expect(set.logLikelihood).toBeCloseTo(same?.logLikelihood ?? NaN, 10);
    }
  });
});

describe('the greedy cover', () => {
  const judged: Judged = {
    ages: new Float64Array(12).fill(1),
    claimed: Uint8Array.from({ length: 12 }, (_, hull) => (hull < 6 ? 1 : 0)),
    strata: new Uint32Array(12),
  };
  const cover = (sets: readonly (readonly number[])[]) =>
    greedyCover(
      sets.map((hulls) => ({ members: [], hulls: Uint32Array.from(hulls) })),
      judged,
      riskCells(judged),
    );

  it('takes what explains most for its cost, shows the runner-up, and leaves single claims as background', () => {
    const found = cover([
      [0, 1, 2, 3],
      [0, 1, 2, 6, 7, 8, 9],
      [4, 10],
      [3, 4],
    ]);
    expect(found.steps).toEqual([{ taken: 0, gain: 4, runnerUp: { place: 3, gain: 2 }, tie: false }]);
    expect(found.unexplained).toEqual([4, 5]);
  });

  it('calls it a tie when another explains as many within one hull', () => {
    expect(
      cover([
        [0, 1, 2],
        [1, 2, 3, 4],
      ]).steps[0],
    ).toEqual({ taken: 1, gain: 4, runnerUp: { place: 0, gain: 3 }, tie: true });
  });

  it('does not take what is everywhere before what is where the claims are', () => {
    expect(cover([[...Array(12).keys()], [0, 1, 2, 3, 4]]).steps.map(({ taken }) => taken)).toEqual([1]);
  });
});

describe('the words', () => {
  it.each([
    [{ q: 0.009, lowerOdds: 2.1, leastPosterior: 0.91 }, 'strong'],
    [{ q: 0.01, lowerOdds: 2.1, leastPosterior: 0.91 }, 'suggestive'],
    [{ q: 0.009, lowerOdds: 2, leastPosterior: 0.91 }, 'suggestive'],
    [{ q: 0.009, lowerOdds: 2.1, leastPosterior: 0.9 }, 'suggestive'],
    [{ q: 0.009, lowerOdds: 2.1, leastPosterior: null }, 'suggestive'],
    [{ q: 0.0999, lowerOdds: 0.5, leastPosterior: 0 }, 'suggestive'],
    [{ q: 0.1, lowerOdds: 9, leastPosterior: 1 }, 'none'],
  ] as const)('for %j are %s', (standing, strength) => {
    expect(strengthOf(standing, LINES)).toBe(strength);
  });

  it.each([
    ['none', { lots: 3, nearlySame: 1, leaderChanges: true, split: false }, 'no lot stands out'],
    ['strong', { lots: 1, nearlySame: 0, leaderChanges: false, split: false }, 'strong'],
    ['suggestive', { lots: 1, nearlySame: 0, leaderChanges: false, split: false }, 'suggestive'],
    ['strong', { lots: 2, nearlySame: 0, leaderChanges: false, split: false }, 'the data cannot say which'],
    ['strong', { lots: 1, nearlySame: 1, leaderChanges: false, split: false }, 'the data cannot say which'],
    ['suggestive', { lots: 1, nearlySame: 0, leaderChanges: true, split: false }, 'the data cannot say which'],
    ['suggestive', { lots: 1, nearlySame: 0, leaderChanges: false, split: true }, 'the data cannot say which'],
  ] as const)('%s with %j come to: %s', (strength, doubt, verdict) => {
    expect(verdictOf(strength, doubt)).toBe(verdict);
  });
});
