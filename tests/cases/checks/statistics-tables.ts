import { z } from 'zod';
import * as statistics from '@hull-record/statistics';
import { anyNumber, check } from '../check.js';

/** A table as rows: exposed with and without a claim, then the others. */
const pair = z.tuple([anyNumber, anyNumber]);
export const table = z.tuple([pair, pair]).transform(([[a, b], [c, d]]) => ({ a, b, c, d }));
export const ends = ({ lower, upper }: statistics.Limits): readonly number[] => [lower, upper];

const exact = (tables: readonly statistics.Table[]): object => {
  const found = statistics.exactOdds(tables);
  const oneSided = ends(statistics.exactOdds(tables, 0.9).limits);
  return {
    p_greater: found.pGreater,
    p_less: found.pLess,
    p_two_sided: found.pTwoSided,
    p_observed_table: found.pObserved,
    midp_greater: found.midPGreater,
    midp_two_sided_minlik: found.midPTwoSided,
    midp_two_sided_doubling: found.midPDoubled,
    or_conditional_mle: found.oddsRatio,
    ci95_exact: ends(found.limits),
    ci95_two_sided_exact: ends(found.limits),
    ci99_exact: ends(statistics.exactOdds(tables, 0.99).limits),
    lower95_one_sided: oneSided[0],
    upper95_one_sided: oneSided[1],
    S: found.observed,
  };
};

/** Checks of tables of counts and of many tests. */
export const STATISTICS_OF_TABLES = {
  fisher_exact: check('statistics', "Fisher's exact test of one table", { table }, (given) => ({
    ...exact([given.table]),
    or_sample: (given.table.a * given.table.d) / (given.table.b * given.table.c),
  })),
  mantel_haenszel_exact: check(
    'statistics',
    'exact stratified test of tables',
    { tables: z.array(table) },
    ({ tables }) => exact(tables),
  ),
  mantel_haenszel: check('statistics', 'stratified test of tables', { tables: z.array(table) }, ({ tables }) => {
    const found = statistics.mantelHaenszel(tables);
    const alike = statistics.breslowDay(tables, found.ratio);
    return {
      chisq_corrected: found.chiSquare,
      p_corrected: found.p,
      chisq_uncorrected: found.chiSquareUncorrected,
      or_mh: found.ratio,
      ci95: ends(found),
      breslow_day: alike.breslowDay.chiSquare,
      breslow_day_p: alike.breslowDay.p,
      tarone: alike.tarone.chiSquare,
      woolf_no_correction_chisq: statistics.woolf(tables, 0).chiSquare,
      woolf_no_correction_p: statistics.woolf(tables, 0).p,
      woolf_plus_half_p: statistics.woolf(tables, 0.5).p,
    };
  }),
  relative_risk_katz: check(
    'statistics',
    'risk ratio and sample odds ratio',
    { exposed_cases: anyNumber, exposed_total: anyNumber, control_cases: anyNumber, control_total: anyNumber },
    (given) => {
      const counts = {
        a: given.exposed_cases,
        b: given.exposed_total - given.exposed_cases,
        c: given.control_cases,
        d: given.control_total - given.control_cases,
      };
      const [risk, odds] = [statistics.riskRatio(counts), statistics.sampleOdds(counts)];
      return { rr: risk?.ratio, ci95: risk && ends(risk), or_sample: odds.ratio, or_wald_ci95: ends(odds) };
    },
  ),
  poisson_rate_ratio_exact: check('statistics', 'ratio of two rates', { x: pair, T: pair }, ({ x, T }) => {
    const found = statistics.rateRatio({ claims: x[0], time: T[0] }, { claims: x[1], time: T[1] });
    return { p_two_sided: found.pTwoSided, rate_ratio: found.ratio, ci95: ends(found) };
  }),
  poisson_exact_ci: check('statistics', 'limits of a Poisson mean', { k: anyNumber }, ({ k }) => ({
    ci95: ends(statistics.poissonLimits(k)),
  })),
  binomial_exact: check(
    'statistics',
    'exact test and limits of a probability',
    { x: anyNumber, n: anyNumber, p0: anyNumber },
    ({ x, n, p0 }) => ({
      p_two_sided: statistics.binomialTest(x, n, p0).pTwoSided,
      ci95: ends(statistics.binomialLimits(x, n)),
    }),
  ),
  cochran_armitage: check(
    'statistics',
    'trend of proportions with a score',
    { x: z.array(anyNumber), n: z.array(anyNumber), scores: z.array(anyNumber) },
    ({ x, n, scores }) => {
      const found = statistics.trendTest(
        scores.map((score, i) => ({ score, claims: x[i] ?? NaN, hulls: n[i] ?? NaN })),
      );
      return { chisq: found.chiSquare, p: found.p };
    },
  ),
  p_adjust: check('statistics', 'p values corrected for many tests', { p: z.array(anyNumber) }, ({ p }) => {
    const rejected = (ps: readonly number[]): number => ps.filter((each) => each <= 0.05).length;
    const BH = statistics.benjaminiHochberg(p);
    return {
      BH,
      holm: statistics.holm(p),
      BY: statistics.benjaminiYekutieli(p),
      'n_rejected_BH_0.05': rejected(BH),
      'n_rejected_bonferroni_0.05': rejected(statistics.bonferroni(p)),
    };
  }),
} as const;
