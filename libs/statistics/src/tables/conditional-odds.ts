import type { Limits } from '../numbers.js';
import { requireFraction } from '../numbers.js';
import { bisect } from '../special/bisect.js';
import type { LogChances } from './hypergeometric.js';
import { chanceFrom, chanceUpTo, meanOf, tilt } from './tilt.js';

/** Odds are looked for between e^-60 and e^60; what lies beyond is 0 or Infinity for any purpose here. */
const FAR = 60;

const lowest = ({ low }: LogChances): number => low;
const highest = ({ low, logs }: LogChances): number => low + logs.length - 1;

/**
 * The conditional maximum likelihood odds ratio: the odds under which the observed number is the mean.
 *
 * 0 at the least number that margins allow, Infinity at the largest, NaN when they allow only one. Not ad/bc.
 */
export const conditionalOdds = (central: LogChances, observed: number): number => {
  if (lowest(central) === highest(central)) return NaN;
  if (observed === lowest(central)) return 0;
  if (observed === highest(central)) return Infinity;
  return Math.exp(bisect((logOdds) => meanOf(tilt(central, logOdds)) - observed, -FAR, FAR));
};

/**
 * Exact limits of the odds ratio: each leaves a tail of (1 - level)/2.
 *
 * Cornfield 1956; tails as Clopper and Pearson. R's `fisher.test` prints these with an error of up to 0.9 %, for it stops
 * its search early. One-sided limits at level L are the limits at level 2L - 1.
 */
export const oddsLimits = (central: LogChances, observed: number, level = 0.95): Limits => {
  const tail = (1 - requireFraction('level', level)) / 2;
  const lower = bisect((logOdds) => chanceFrom(tilt(central, logOdds), observed) - tail, -FAR, FAR);
  const upper = bisect((logOdds) => tail - chanceUpTo(tilt(central, logOdds), observed), -FAR, FAR);
  return {
    lower: observed === lowest(central) ? 0 : Math.exp(lower),
    upper: observed === highest(central) ? Infinity : Math.exp(upper),
  };
};
