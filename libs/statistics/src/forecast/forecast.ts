import { TooLittle } from '../errors.js';
import { at, type Limits } from '../numbers.js';
import { normal, poisson } from '../random/draws.js';
import type { Random } from '../random/xoshiro.js';
import type { WeibullFit } from '../weibull/fit.js';
import { chanceAhead, expectedClaims, type Ahead, type Running } from './chances.js';
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
 * Parameters are drawn from the asymptotic normal of (log eta, log beta), the claims of each draw from a Poisson count;
 * limits are the (1 - level)/2 and (1 + level)/2 counts (Escobar and Meeker 1999 on why the plug-in one is too narrow).
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
  const counts = Float64Array.from({ length: draws }, () =>
    poisson(random, expectedClaims(drawn(fit, random), running, ahead)),
  ).sort();
  const tail = (1 - level) / 2;
  const place = (share: number): number => at(counts, Math.max(0, Math.ceil(share * draws) - 1));
  return {
    expected: expectedClaims(fit, running, ahead),
    plugIn: { lower: countQuantile(exact, tail), upper: countQuantile(exact, 1 - tail) },
    withParameters: { lower: place(tail), upper: place(1 - tail) },
  };
};

/** Parameters drawn from the normal with the covariance of the fit, by its triangular root. */
const drawn = ({ eta, beta, covariance }: WeibullFit, random: Random): { beta: number; eta: number } => {
  const [first, second] = [normal(random), normal(random)];
  const root = Math.sqrt(covariance.logEta);
  const across = covariance.both / root;
  const rest = Math.sqrt(Math.max(0, covariance.logBeta - across * across));
  return { eta: eta * Math.exp(root * first), beta: beta * Math.exp(across * first + rest * second) };
};
