import { z } from 'zod';
import * as statistics from '@hull-record/statistics';
import { anyNumber, check } from '../check.js';
import { ends } from './statistics-tables.js';

const numbers = z.array(anyNumber);
const watched = { time: numbers, event: numbers };
const compared = { ...watched, group_6MP: numbers, pair: numbers };

type Given = z.output<z.ZodObject<typeof compared>>;
const hullsOf = (given: Given, paired: boolean): readonly statistics.Compared[] =>
  given.time.map((age, i) => ({
    age,
    event: given.event[i] === 1,
    exposed: given.group_6MP[i] === 1,
    stratum: paired ? (given.pair[i] ?? NaN) : 0,
  }));

const fitted = (event: readonly number[], censored: readonly number[]): statistics.WeibullFit =>
  statistics.fitWeibull([
    ...event.map((age) => ({ age, event: true })),
    ...censored.map((age) => ({ age, event: false })),
  ]);

/** Checks of survival. */
const SURVIVAL = {
  kaplan_meier: check('statistics', 'share without an event by age', watched, ({ time, event }) => {
    const steps = statistics.kaplanMeier(time.map((age, i) => ({ age, event: event[i] === 1 })));
    const at = (age: number): statistics.SurvivalStep =>
      steps.find((step) => step.age === age) as statistics.SurvivalStep;
    return {
      times: steps.map(({ age }) => age),
      at_risk: steps.map(({ atRisk }) => atRisk),
      S: steps.map(({ survival }) => survival),
      se_greenwood: steps.map(({ se }) => se),
      nelson_aalen: steps.map(({ hazard }) => hazard),
      ci95_loglog_at_6: ends(at(6).band),
      ci95_log_at_23: ends(statistics.logBand(at(23))),
      median: statistics.ageAtSurvival(steps, 0.5),
    };
  }),
  logrank: check('statistics', 'log-rank test, also by pair', compared, (given) => {
    const [plain, paired] = [false, true].map((by) => statistics.logRank(hullsOf(given, by)));
    return {
      chisq: plain?.chiSquare,
      p: plain?.p,
      O_6MP: plain?.observed,
      E_6MP: plain?.expected,
      V: plain?.variance,
      stratified_by_pair_chisq: paired?.chiSquare,
      stratified_p: paired?.p,
    };
  }),
  exact_conditional_logrank: check('statistics', 'exact log-rank test, also by pair', compared, (given) => {
    const [plain, paired] = [false, true].map((by) => statistics.exactLogRank(hullsOf(given, by)));
    return {
      p_less_6MP: plain?.pLess,
      p_two_sided_minlik: plain?.pTwoSided,
      hazard_odds_ratio_conditional_mle: plain?.oddsRatio,
      ci95_exact: plain && ends(plain.limits),
      paired_p_less: paired?.pLess,
      paired_p_two_sided: paired?.pTwoSided,
    };
  }),
  mean_cumulative_function: check(
    'statistics',
    'mean number of events a unit; status 0 ends its watching',
    { id: numbers, time: numbers, status: numbers },
    ({ id, time, status }) => {
      const units = [...new Set(id)].map((unit) => {
        const rows = id.flatMap((each, i) => (each === unit ? [{ age: time[i] ?? NaN, event: status[i] === 1 }] : []));
        const ages = (event: boolean): number[] => rows.filter((row) => row.event === event).map(({ age }) => age);
        return { claims: ages(true), until: Math.max(...ages(false)) };
      });
      const steps = statistics.meanCumulative(units);
      const at = (age: number): statistics.MeanCumulative => statistics.meanAt(steps, age) as statistics.MeanCumulative;
      return {
        n_units: units.length,
        n_events: units.flatMap(({ claims }) => claims).length,
        ...Object.fromEntries([61, 139, 202, 404, 653].map((age) => [`mcf_${age}`, at(age).mean])),
        ...Object.fromEntries([404, 653].map((age) => [`se_${age}`, at(age).se])),
        se_lawless_nadeau_61: at(61).se,
      };
    },
  ),
} as const;

/** Checks of the Weibull distribution and of forecasts. */
const WEIBULL = {
  weibull_mle: check(
    'statistics',
    'likelihood fit of a Weibull distribution',
    { event: numbers, censored: numbers },
    (given) => {
      const fit = fitted(given.event, given.censored);
      const moments = statistics.weibullMoments(fit);
      return {
        ...fit,
        loglik: fit.logLikelihood,
        mean: moments.mean,
        sd: moments.deviation,
        se_log_eta: Math.sqrt(fit.covariance.logEta),
        se_log_beta: Math.sqrt(fit.covariance.logBeta),
        t10: statistics.weibullAge(fit, 0.1),
        t50: statistics.weibullAge(fit, 0.5),
      };
    },
  ),
  weibull_mrr_x_on_y_benard: check(
    'statistics',
    'median ranks and their line',
    { event: numbers, censored: numbers },
    ({ event, censored }) => {
      const points = statistics.medianRanks([
        ...event.map((age) => ({ age, event: true })),
        ...censored.map((age) => ({ age, event: false })),
      ]);
      const line = statistics.medianRankLine(points);
      const fit = fitted(event, censored);
      return {
        ...line,
        r2: line.rSquared,
        adjusted_ranks: points.map(({ rank }) => rank),
        median_ranks: points.map(({ share }) => share),
        mle_for_contrast: [fit.beta, fit.eta],
      };
    },
  ),
  weibull_limited_failure_population: check(
    'statistics',
    'fit of a population of which only a part fails',
    { event: numbers, censored_at: anyNumber, n_censored: anyNumber },
    (given) => {
      const fit = statistics.fitLimitedFailure([
        ...given.event.map((age) => ({ age, event: true })),
        { age: given.censored_at, event: false, weight: given.n_censored },
      ]);
      return { mu: Math.log(fit.eta), sigma: 1 / fit.beta, p: fit.share, nll: -fit.logLikelihood };
    },
  ),
  'weibull_mle+forecast': check(
    'statistics',
    'likelihood fit and the failures to come',
    { failures: numbers, running_age: numbers, running_count: numbers, horizon: anyNumber },
    ({ failures, running_age, running_count, horizon }) => {
      const running = running_age.map((age, i) => ({ age, hulls: running_count[i] ?? NaN }));
      const units = [
        ...failures.map((age) => ({ age, event: true })),
        ...running.map(({ age, hulls }) => ({ age, event: false, weight: hulls })),
      ];
      const fit = statistics.fitWeibull(units);
      const chances = statistics.poissonBinomial(
        running.map(({ age, hulls }) => ({ hulls, chance: statistics.chanceAhead(fit, age, { horizon }) })),
      );
      let total = 0;
      const fixed = (beta: number): number =>
        statistics.expectedClaims(statistics.weibayes(units, beta).best as statistics.Weibull, running, { horizon });
      return {
        ...fit,
        loglik: fit.logLikelihood,
        expected_failures_next_300h: statistics.expectedClaims(fit, running, { horizon }),
        poisson_binomial_cdf_0_to_4: [...chances.slice(0, 5)].map((chance) => (total += chance)),
        naive_90pct_prediction_interval: [0.05, 0.95].map((share) => statistics.countQuantile(chances, share)),
        'expected_if_beta_fixed_1.5': fixed(1.5),
        expected_if_beta_fixed_2: fixed(2),
        expected_if_beta_fixed_3: fixed(3),
      };
    },
  ),
} as const;

/** Checks of ages at events. */
export const STATISTICS_OF_AGES = { ...SURVIVAL, ...WEIBULL } as const;
