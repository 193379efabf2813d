import type { GroupForecast } from '@hull-record/contracts';
import {
  alike,
  claimsByStep,
  expectedClaims,
  forecastSteps,
  medianRankLine,
  medianRanks,
  FEWEST_CLAIMS,
  fitLimitedFailure,
  fitWeibull,
  forecastClaims,
  kaplanMeier,
  meanCumulative,
  StatisticsError,
  weibayes,
  type Random,
  type Running,
  type Watched,
  type Weighted,
} from '@hull-record/statistics';
import type { JudgedHull } from '../inputs/case-inputs.js';

export const MONTH_DAYS = 365.25 / 12;
export const MONTHS_AHEAD = 12;
/** Shapes that are gone through when claims are too few to tell one: from chance failures to ageing; a choice of ours. */
const SHAPES = [1, 1.5, 2, 3, 4] as const;

interface GroupAhead {
  readonly random: Random;
  readonly warrantyCapDays: number | null;
}

/** What is known of a group of hulls by age, and how many first claims to expect in the months ahead. */
export const forecastGroup = (
  group: string,
  hulls: readonly JudgedHull[],
  { random, warrantyCapDays }: GroupAhead,
): GroupForecast => {
  const watched = hulls.map(({ age, from, claimed }) => ({ age, from, event: claimed }));
  const together = alike(watched);
  const running = alike(hulls.filter((hull) => hull.running).map(({ age }) => ({ age, event: false }))).map(
    ({ age, weight }): Running => ({ age, hulls: weight }),
  );
  const cap = warrantyCapDays === null ? {} : { warrantyEnd: warrantyCapDays };
  const ahead = { horizon: MONTHS_AHEAD * MONTH_DAYS, ...cap };
  const withClaim = watched.filter(({ event }) => event).length;
  const fit = withClaim < FEWEST_CLAIMS ? null : tried(() => fitWeibull(together));
  const known = {
    ...{ group, hulls: hulls.length, withClaim },
    curve: kaplanMeier(watched).map(({ age, atRisk, survival, band }) => ({
      ...{ days: age, atRisk, without: survival, lower: band.lower, upper: band.upper },
    })),
    meanClaims: meanCumulative(hulls.map(({ claimAges, from, until }) => ({ claims: claimAges, from, until }))).map(
      ({ age, ...step }) => ({ days: age, ...step }),
    ),
  };
  if (!fit) return { ...known, ...tooFew(together, running, ahead, withClaim) };
  const { expected, plugIn, withParameters } = forecastClaims(fit, running, ahead, { random });
  const months = { step: MONTH_DAYS, steps: MONTHS_AHEAD, ...cap };
  const limited = limitedOf(together);
  return {
    ...known,
    weibull: { shape: fit.beta, scaleDays: fit.eta, aic: fit.aic, limited },
    ...{ expected, interval: withParameters, plugIn, range: null },
    byMonth: [...claimsByStep(fit, running, months)],
    byMonthIntervals: [...forecastSteps(fit, running, months, { random })],
    medianRanks: plottedLine(watched),
    sentence: `${withClaim} of ${hulls.length} hulls have a claim; within ${MONTHS_AHEAD} months ${expected.toFixed(1)} more first claims are expected, ${withParameters.lower} to ${withParameters.upper} with 90 % (parameters uncertain).${limited && limited.aic < fit.aic ? MIXED : ''}`,
  };
};

/** Said where a fit with sound hulls among them is better. */
const MIXED = ' That only a part of them carries the flaw fits better, and then this number runs too high.';

/** A line to be drawn; where hulls were watched from later ages on, ranks do not tell shares. */
const plottedLine = (hulls: readonly Watched[]): GroupForecast['medianRanks'] => {
  if (hulls.some(({ from = 0 }) => from > 0)) return null;
  const points = medianRanks(hulls);
  if (new Set(points.map(({ age }) => age)).size < 2) return null;
  const { beta, eta } = medianRankLine(points);
  return { shape: beta, scaleDays: eta };
};

const tried = <T>(work: () => T): T | null => {
  try {
    return work();
  } catch (error) {
    if (error instanceof StatisticsError) return null;
    throw error;
  }
};

const limitedOf = (watched: readonly Weighted[]) => {
  const limited = tried(() => fitLimitedFailure(watched));
  const figures = limited && [limited.share, limited.beta, limited.eta, limited.aic];
  if (!limited || !figures?.every(Number.isFinite)) return null;
  return { share: limited.share, shape: limited.beta, scaleDays: limited.eta, aic: limited.aic };
};

const tooFewWords = (withClaim: number): string => {
  if (withClaim >= FEWEST_CLAIMS) return `${withClaim} claims, too close in age, do not do`;
  return withClaim === 1 ? '1 claim is too little' : `${withClaim} claims are too few`;
};

/** Fewer than three claims, or all at one age: a range over shapes, from the best fit to its 95 % bound. */
const tooFew = (
  watched: readonly Weighted[],
  running: readonly Running[],
  ahead: { readonly horizon: number; readonly warrantyEnd?: number },
  withClaim: number,
): Omit<GroupForecast, 'group' | 'hulls' | 'withClaim' | 'curve' | 'meanClaims'> => {
  const fits = SHAPES.map((shape) => weibayes(watched, shape));
  const lower = Math.min(...fits.map(({ best }) => (best ? expectedClaims(best, running, ahead) : 0)));
  const upper = Math.max(...fits.map(({ bound }) => expectedClaims(bound, running, ahead)));
  return {
    ...{ weibull: null, expected: null, interval: null, plugIn: null, byMonth: [], byMonthIntervals: [] },
    medianRanks: null,
    range: { lower, upper, shapes: [...SHAPES] },
    sentence: `${tooFewWords(withClaim)} for one number: between ${lower.toFixed(1)} and ${upper.toFixed(1)} more within ${MONTHS_AHEAD} months, by shapes from ${SHAPES[0]} to ${SHAPES.at(-1)}.`,
  };
};
