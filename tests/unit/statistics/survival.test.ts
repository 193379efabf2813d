import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  ageAtSurvival,
  exactLogRank,
  InputInvalid,
  kaplanMeier,
  logRank,
  meanAt,
  meanCumulative,
  riskSets,
  type Compared,
} from '@hull-record/statistics';

const hull = fc.record({ age: fc.nat({ max: 12 }), event: fc.boolean() });
const hulls = fc.array(hull, { minLength: 1, maxLength: 40 });
const compared = fc.array(
  fc.record({ age: fc.nat({ max: 12 }), event: fc.boolean(), exposed: fc.boolean(), stratum: fc.nat({ max: 2 }) }),
  { minLength: 6, maxLength: 40 },
);

describe('the share without a claim', () => {
  it('is the product over ages of those who came through, counted one by one', () => {
    fc.assert(
      fc.property(hulls, (given) => {
        let survival = 1;
        const expected = [...new Set(given.filter(({ event }) => event).map(({ age }) => age))]
          .sort((a, b) => a - b)
          .map((age) => {
            const atRisk = given.filter((each) => each.age >= age).length;
            const events = given.filter((each) => each.age === age && each.event).length;
            survival *= (atRisk - events) / atRisk;
            return { age, atRisk, events, survival: expect.closeTo(survival, 12) };
          });
        expect(kaplanMeier(given)).toMatchObject(expected);
      }),
    );
  });

  it('without anybody lost is the share of hulls, and Greenwood the error of a proportion', () => {
    const steps = kaplanMeier([1, 2, 3, 4, 5].map((age) => ({ age, event: true })));
    expect(steps.map(({ survival }) => survival)).toEqual([0.8, 0.6, 0.4, 0.2, 0].map((s) => expect.closeTo(s, 12)));
    expect(steps[1]?.se).toBeCloseTo(Math.sqrt((0.6 * 0.4) / 5), 12);
    expect(steps[4]).toMatchObject({ band: { lower: 0, upper: 0 }, se: NaN });
  });

  it('falls, inside a band between 0 and 1, while the hazard rises', () => {
    fc.assert(
      fc.property(hulls, (given) => {
        const steps = kaplanMeier(given);
        steps.forEach(({ survival, band, hazard }, i) => {
          expect(band.lower).toBeGreaterThanOrEqual(0);
          expect(band.upper).toBeLessThanOrEqual(1);
          expect(band.lower).toBeLessThanOrEqual(survival);
          expect(band.upper).toBeGreaterThanOrEqual(survival);
          expect(survival).toBeLessThan(steps[i - 1]?.survival ?? 1);
          expect(Math.exp(-hazard)).toBeGreaterThanOrEqual(survival);
        });
      }),
    );
  });

  it('counts a claim before an end of watching at the same age', () => {
    expect(
      riskSets([
        { age: 5, event: false },
        { age: 5, event: true },
      ]),
    ).toEqual([{ age: 5, atRisk: 2, events: 1 }]);
  });

  it('has no median while more than half are without a claim', () => {
    const steps = kaplanMeier([
      { age: 1, event: true },
      { age: 2, event: false },
      { age: 3, event: false },
    ]);
    expect(ageAtSurvival(steps, 0.5)).toBeNull();
    expect(ageAtSurvival(steps, 0.7)).toBe(1);
  });

  it.each([-1, NaN, Infinity])('cannot be taken of an age of %d', (age) => {
    expect(() => kaplanMeier([{ age, event: true }])).toThrow(InputInvalid);
  });
});

describe('the log-rank test', () => {
  const flip = (given: readonly Compared[]): readonly Compared[] =>
    given.map((each) => ({ ...each, exposed: !each.exposed }));

  it('says the same of the exposed as of the others, with the sign turned', () => {
    fc.assert(
      fc.property(compared, (given) => {
        const [one, other] = [logRank(given), logRank(flip(given))];
        expect(one.observed - one.expected).toBeCloseTo(-(other.observed - other.expected), 9);
        expect(one.variance).toBeCloseTo(other.variance, 9);
        expect(exactLogRank(given).pGreater).toBeCloseTo(exactLogRank(flip(given)).pLess, 9);
      }),
    );
  });

  it('adds up over strata before squaring, and hangs on the order of ages alone', () => {
    fc.assert(
      fc.property(compared, (given) => {
        const whole = logRank(given);
        const parts = [0, 1, 2].map((stratum) => logRank(given.filter((each) => each.stratum === stratum)));
        expect(whole.expected).toBeCloseTo(
          parts.reduce((total, part) => total + part.expected, 0),
          9,
        );
        const stretched = given.map((each) => ({ ...each, age: each.age ** 2 + 1 }));
        expect(logRank(stretched).expected).toBeCloseTo(whole.expected, 9);
      }),
    );
  });

  it('of hulls watched equally long is the test of their table', () => {
    const given = [3, 1, 1, 3].flatMap((count, i) =>
      Array.from({ length: count }, () => ({ age: 1, event: i % 2 === 0, exposed: i < 2 })),
    );
    expect(exactLogRank(given).pGreater).toBeCloseTo(17 / 70, 12);
  });
});

describe('the mean number of claims', () => {
  it('without anybody lost is the plain mean, and its error that of a mean', () => {
    const given = [[1, 2, 2], [], [4], [1]].map((claims) => ({ claims, until: 9 }));
    const end = meanAt(meanCumulative(given), 9);
    const spread = [3, 0, 1, 1].reduce((total, count) => total + (count - 1.25) ** 2, 0);
    expect(end?.mean).toBeCloseTo(5 / 4, 12);
    expect(end?.se).toBeCloseTo(Math.sqrt(spread) / 4, 12);
    expect(meanAt(meanCumulative(given), 0.5)).toBeNull();
  });

  it('of hulls with one claim at most, that stay watched, never passes their number', () => {
    const given = [
      { claims: [3], until: 3 },
      { claims: [], until: 5 },
    ];
    expect(meanCumulative(given)).toEqual([{ age: 3, atRisk: 2, mean: 0.5, se: expect.closeTo(0.3535533906, 9) }]);
  });
});
