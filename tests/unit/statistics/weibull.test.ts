import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  fitLimitedFailure,
  fitWeibull,
  InputInvalid,
  logLimits,
  medianRankLine,
  medianRanks,
  seeded,
  TooLittle,
  unit,
  weibayes,
  weibullAge,
  weibullLogLikelihood,
  type Weighted,
} from '@hull-record/statistics';

const age = fc.double({ min: 0.5, max: 500, noNaN: true });
const sample = fc
  .tuple(fc.uniqueArray(age, { minLength: 3, maxLength: 15 }), fc.array(age, { maxLength: 20 }))
  .filter(([claims]) => Math.max(...claims) / Math.min(...claims) > 1.01)
  .map(([claims, running]): readonly Required<Weighted>[] => [
    ...claims.map((t) => ({ age: t, event: true, weight: 1 })),
    ...running.map((t) => ({ age: t, event: false, weight: 1 })),
  ]);

describe('the Weibull fit', () => {
  it('is where the likelihood is highest: a step to any side loses', () => {
    fc.assert(
      fc.property(sample, (hulls) => {
        const fit = fitWeibull(hulls);
        for (const [byBeta, byEta] of [
          [1.01, 1],
          [0.99, 1],
          [1, 1.01],
          [1, 0.99],
          [1.01, 0.99],
          [0.99, 1.01],
        ] as const) {
          const moved = { beta: fit.beta * byBeta, eta: fit.eta * byEta };
          expect(weibullLogLikelihood(hulls, moved)).toBeLessThan(fit.logLikelihood);
        }
      }),
    );
  });

  it('has a score of nothing in both parameters, by differences', () => {
    fc.assert(
      fc.property(sample, (hulls) => {
        const fit = fitWeibull(hulls);
        const step = 1e-5;
        const slope = (b: number, e: number): number => {
          const at = (sign: number): number =>
            weibullLogLikelihood(hulls, { beta: fit.beta * Math.exp(sign * b), eta: fit.eta * Math.exp(sign * e) });
          return (at(1) - at(-1)) / (2 * step);
        };
        expect(Math.abs(slope(step, 0))).toBeLessThan(1e-4 * hulls.length * (1 + fit.beta));
        expect(Math.abs(slope(0, step))).toBeLessThan(1e-4 * hulls.length * (1 + fit.beta));
      }),
    );
  });

  it('moves with the unit of time: the shape stays, the scale is multiplied', () => {
    fc.assert(
      fc.property(sample, fc.double({ min: 0.01, max: 100, noNaN: true }), (hulls, times) => {
        const [one, other] = [fitWeibull(hulls), fitWeibull(hulls.map((each) => ({ ...each, age: each.age * times })))];
        expect(other.beta / one.beta).toBeCloseTo(1, 8);
        expect(other.eta / (one.eta * times)).toBeCloseTo(1, 8);
      }),
    );
  });

  it('takes a weight for so many hulls alike, and nothing from hulls of age 0', () => {
    const hulls = [
      { age: 3, event: true },
      { age: 5, event: true },
      { age: 8, event: false },
    ];
    const weighted = fitWeibull(hulls.map((each, i) => ({ ...each, weight: i + 1 })));
    const repeated = fitWeibull([
      ...hulls.flatMap((each, i) => Array.from({ length: i + 1 }, () => each)),
      { age: 0, event: false },
    ]);
    expect(weighted.beta).toBeCloseTo(repeated.beta, 12);
    expect(weighted.covariance.logEta).toBeCloseTo(repeated.covariance.logEta, 12);
  });

  it('needs claims at two ages, and ages that can be', () => {
    expect(() =>
      fitWeibull([
        { age: 3, event: true },
        { age: 3, event: true },
        { age: 9, event: false },
      ]),
    ).toThrow(TooLittle);
    expect(() =>
      fitWeibull([
        { age: 0, event: true },
        { age: 3, event: true },
      ]),
    ).toThrow(InputInvalid);
    expect(() => fitWeibull([{ age: 1, event: true, weight: -1 }])).toThrow(InputInvalid);
  });

  it('has limits on the log scale: above 0, and farther above the estimate than below it', () => {
    fc.assert(
      fc.property(sample, (hulls) => {
        const { beta, covariance } = fitWeibull(hulls);
        const { lower, upper } = logLimits(beta, covariance.logBeta);
        expect(lower).toBeGreaterThan(0);
        expect(upper - beta).toBeGreaterThan(beta - lower);
        expect((lower * upper) / beta ** 2).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('Weibayes', () => {
  it('with the shape of the fit has the scale of the fit', () => {
    fc.assert(
      fc.property(sample, (hulls) => {
        const fit = fitWeibull(hulls);
        expect((weibayes(hulls, fit.beta).best?.eta ?? NaN) / fit.eta).toBeCloseTo(1, 9);
      }),
    );
  });

  it('without a claim has a bound that rests on 2.9957 (half the 95 % chi-square of 2 degrees of freedom)', () => {
    const hulls = [10, 20, 30].map((t) => ({ age: t, event: false }));
    expect(weibayes(hulls, 2)).toEqual({
      best: null,
      bound: { beta: 2, eta: expect.closeTo(Math.sqrt(1400 / 2.995732), 4) },
    });
  });
});

describe('median ranks', () => {
  it('without suspensions are the plain ranks', () => {
    const points = medianRanks([4, 2, 9].map((t) => ({ age: t, event: true })));
    expect(points.map(({ age: t, rank }) => [t, rank])).toEqual([
      [2, 1],
      [4, 2],
      [9, 3],
    ]);
    expect(() => medianRankLine(points.slice(0, 1))).toThrow(TooLittle);
  });

  it('count a claim before a suspension at the same age', () => {
    const tied = [
      { age: 4, event: false },
      { age: 4, event: true },
      { age: 9, event: true },
    ];
    expect(medianRanks(tied).map(({ rank }) => rank)).toEqual([1, 2.5]);
  });

  it('on a straight line give it back', () => {
    const n = 9;
    const on = { beta: 1.7, eta: 40 };
    const points = Array.from({ length: n }, (_, i) => (i + 0.7) / (n + 0.4)).map((share) => ({
      share,
      rank: NaN,
      age: weibullAge(on, share),
    }));
    expect(medianRankLine(points)).toEqual({
      beta: expect.closeTo(1.7, 10),
      eta: expect.closeTo(40, 8),
      rSquared: expect.closeTo(1, 10),
    });
  });
});

describe('the limited-failure fit', () => {
  /** 60 bad hulls of 600, all watched far past their failures. */
  const random = seeded(5);
  const bad = { beta: 2, eta: 100 };
  const mixed: Weighted[] = [
    ...Array.from({ length: 60 }, () => ({ age: weibullAge(bad, unit(random)), event: true })),
    { age: 1000, event: false, weight: 540 },
  ];

  it('finds the bad part, where a plain fit is fooled', () => {
    const [limited, plain] = [fitLimitedFailure(mixed), fitWeibull(mixed)];
    expect(limited.share).toBeCloseTo(0.1, 3);
    expect(Math.abs(limited.beta - 2)).toBeLessThan(0.5);
    expect(limited.aic).toBe(6 - 2 * limited.logLikelihood);
    expect(limited.aic).toBeLessThan(plain.aic - 10);
    expect(plain.beta).toBeLessThan(1);
  });

  it('gives no better word than the plain fit when all fail', () => {
    const all = mixed.slice(0, 60);
    expect(fitLimitedFailure(all).logLikelihood).toBeCloseTo(fitWeibull(all).logLikelihood, 3);
  });
});
