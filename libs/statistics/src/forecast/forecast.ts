import { TooLittle } from '../errors.js';
import { at, type Limits } from '../numbers.js';
import { sum } from '../numbers.js';
import { binomialCount, normal } from '../random/draws.js';
import type { Random } from '../random/xoshiro.js';
import type { WeibullFit } from '../weibull/fit.js';
import { chanceAhead, claimsByStep, expectedClaims, type Ahead, type Running } from './chances.js';
import { countQuantile, poissonBinomial } from './poisson-binomial.js';

/** How many first claims to expect. */
export interface Forecast {
  readonly expected: number;
  /** As if the fitted parameters were the true ones: too narrow, shown beside the other. */
  readonly plugIn: Limits;
  /** With the uncertainty of the parameters: the one to plan by. */
  readonly withParameters: Limits;
}

/** Claims below which a single forecast is not made: use weibayes over a range of shapes. */
export const FEWEST_CLAIMS = 3;

/**
 * The number of first claims within the time ahead, with an interval of `level` that knows how little is known.
 *
 * Parameters are drawn from the asymptotic normal of (log eta, log beta), the claims of each draw from a binomial count of the
 * hulls that are left at their mean chance, which is never above them and varies no less than they do; limits are the (1 - level)/2 and (1 + level)/2 counts (Escobar and Meeker 1999 on why the plug-in one is too narrow).
 * Throws TooLittle with fewer than FEWEST_CLAIMS claims behind the fit.
 */
export const forecastClaims = (
  fit: WeibullFit,
  running: readonly Running[],
  ahead: Ahead,
  { random, draws = 2000, level = 0.9 }: { random: Random; draws?: number; level?: number },
): Forecast => {
  if (fit.claims < FEWEST_CLAIMS) throw new TooLittle('claims', fit.claims, FEWEST_CLAIMS);
  const chances = running.map(({ age, hulls }) => ({ hulls, chance: chanceAhead(fit, age, ahead) }));
  const exact = poissonBinomial(chances);
  const left = sum(running.map(({ hulls }) => hulls));
  const counts = Float64Array.from({ length: draws }, () =>
    countOf(random, left, expectedClaims(drawn(fit, random), running, ahead)),
  );
  const tail = (1 - level) / 2;
  return {
    expected: expectedClaims(fit, running, ahead),
    plugIn: { lower: countQuantile(exact, tail), upper: countQuantile(exact, 1 - tail) },
    withParameters: limitsOf(counts, level),
  };
};

/** Steps ahead, such as months, in the unit of the ages. */
export interface Steps {
  readonly step: number;
  readonly steps: number;
  readonly warrantyEnd?: number;
}

/**
 * An interval of the first claims in each step ahead, drawn as those of `forecastClaims` are. They do not add up to that of all
 * steps together: a high month and a low one make up for each other.
 */
export const forecastSteps = (
  fit: WeibullFit,
  running: readonly Running[],
  ahead: Steps,
  { random, draws = 500, level = 0.9 }: { random: Random; draws?: number; level?: number },
): readonly Limits[] => {
  const near = together(running, ahead.step / 4);
  const left = sum(running.map(({ hulls }) => hulls));
  const counts = Array.from({ length: ahead.steps }, () => new Float64Array(draws));
  for (let i = 0; i < draws; i += 1)
    claimsByStep(drawn(fit, random), near, ahead).forEach((expected, step) => {
      (counts[step] as Float64Array)[i] = countOf(random, left, expected);
    });
  return counts.map((own) => limitsOf(own, level));
};

const countOf = (random: Random, left: number, expected: number): number =>
  left === 0 ? 0 : binomialCount(random, left, Math.min(1, expected / left));

const limitsOf = (counts: Float64Array, level: number): Limits => {
  const ordered = counts.sort();
  const place = (share: number): number => at(ordered, Math.max(0, Math.ceil(share * ordered.length) - 1));
  return { lower: place((1 - level) / 2), upper: place((1 + level) / 2) };
};

/** Hulls of nearly one age as of that age: thousands of ages by hundreds of draws would take seconds. */
const together = (running: readonly Running[], within: number): readonly Running[] => {
  const found = new Map<number, number>();
  for (const { age, hulls } of running) {
    const near = within * Math.round(age / within);
    found.set(near, (found.get(near) ?? 0) + hulls);
  }
  return [...found].map(([age, hulls]) => ({ age, hulls }));
};

/** Parameters drawn from the normal with the covariance of the fit, by its triangular root. */
const drawn = ({ eta, beta, covariance }: WeibullFit, random: Random): { beta: number; eta: number } => {
  const [first, second] = [normal(random), normal(random)];
  const root = Math.sqrt(covariance.logEta);
  const across = covariance.both / root;
  const rest = Math.sqrt(Math.max(0, covariance.logBeta - across * across));
  return { eta: eta * Math.exp(root * first), beta: beta * Math.exp(across * first + rest * second) };
};
