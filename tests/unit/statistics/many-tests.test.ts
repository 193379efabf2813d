import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { benjaminiHochberg, benjaminiYekutieli, bonferroni, holm, taroneScreen } from '@hull-record/statistics';

const ps = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 30 });
const METHODS = { bonferroni, holm, benjaminiHochberg, benjaminiYekutieli };

describe.each(Object.entries(METHODS))('p corrected by %s', (_name, adjust) => {
  it('keep the order of the p, are no smaller and at most 1', () => {
    fc.assert(
      fc.property(ps, (given) => {
        const found = adjust(given);
        given.forEach((p, i) => {
          expect(found[i]).toBeGreaterThanOrEqual(p);
          expect(found[i]).toBeLessThanOrEqual(1);
          given.forEach((other, j) => {
            if (p < other) expect(found[i]).toBeLessThanOrEqual(found[j] as number);
          });
        });
      }),
    );
  });

  it('come in the order of the input', () => {
    fc.assert(
      fc.property(ps, (given) => {
        expect(adjust([...given].reverse())).toEqual([...adjust(given)].reverse());
      }),
    );
  });
});

describe('corrections beside each other', () => {
  it('go from Benjamini-Hochberg by Holm to Bonferroni', () => {
    fc.assert(
      fc.property(ps, (given) => {
        const [bh, by_holm, all] = [benjaminiHochberg(given), holm(given), bonferroni(given)];
        given.forEach((_, i) => {
          expect(bh[i]).toBeLessThanOrEqual((by_holm[i] as number) * (1 + 1e-12));
          expect(by_holm[i]).toBeLessThanOrEqual(all[i] as number);
        });
      }),
    );
  });

  it('reject by Benjamini-Hochberg up to the largest i with p(i) <= i alpha / m, as its definition says', () => {
    fc.assert(
      fc.property(ps, fc.double({ min: 0.01, max: 0.3, noNaN: true }), (given, alpha) => {
        const ordered = [...given].sort((a, b) => a - b);
        const last = ordered.findLastIndex((p, i) => (p * given.length) / (i + 1) <= alpha);
        expect(benjaminiHochberg(given).filter((q) => q <= alpha)).toHaveLength(last + 1);
      }),
    );
  });
});

describe("Tarone's screen", () => {
  it('leaves out tests that cannot reach significance, and does not count them', () => {
    expect(taroneScreen([0.0001, 0.2, 0.3, 0.5], 0.05)).toEqual({ k: 1, testable: [true, false, false, false] });
    expect(taroneScreen([0.0001, 0.02, 0.04, 0.5], 0.05)).toEqual({ k: 2, testable: [true, true, false, false] });
  });

  it('takes the smallest k with at most k tests that can reach alpha / k', () => {
    fc.assert(
      fc.property(ps, (smallest) => {
        const reached = (k: number): number => smallest.filter((p) => p <= 0.05 / k).length;
        const { k, testable } = taroneScreen(smallest, 0.05);
        expect(reached(k)).toBeLessThanOrEqual(k);
        for (let smaller = 1; smaller < k; smaller += 1) expect(reached(smaller)).toBeGreaterThan(smaller);
        expect(testable.filter(Boolean)).toHaveLength(reached(k));
      }),
    );
  });
});
