import { at } from '../numbers.js';
import type { LogChances } from './hypergeometric.js';
import { chanceFrom, chanceUpTo, tilt, type Chances } from './tilt.js';

/** Tail chances of an observed number of exposed claims, 0 to 1. */
export interface ExactTest {
  readonly pObserved: number;
  /** The observed number or more: the one that ranks suspects, who are asked only for more claims than expected. */
  readonly pGreater: number;
  readonly pLess: number;
  /** Sum over all numbers that are no more likely than the observed one, within a relative 1e-7 (rule of R). */
  readonly pTwoSided: number;
  /** pGreater less half of the observed term; does not keep its level, a second opinion only. */
  readonly midPGreater: number;
  /** pTwoSided less half of the observed term. */
  readonly midPTwoSided: number;
  /** Twice the smaller one-sided mid-p, at most 1. */
  readonly midPDoubled: number;
}

/** Differences in the chance of two numbers below this are noise of the arithmetic: they are as likely as each other. */
const TIE = 1 + 1e-7;

/**
 * The exact conditional test of an observed number against the distribution that margins leave.
 *
 * Source of the two-sided rule and its tolerance: R, `fisher.test`, sum of small chances.
 */
export const exactTest = (central: LogChances, observed: number): ExactTest => {
  const chances = tilt(central, 0);
  const pObserved = at(chances.values, observed - chances.low);
  const [pGreater, pLess] = [chanceFrom(chances, observed), chanceUpTo(chances, observed)];
  const pTwoSided = noMoreLikely(chances, pObserved);
  const half = pObserved / 2;
  return {
    pObserved,
    pGreater,
    pLess,
    pTwoSided,
    midPGreater: pGreater - half,
    midPTwoSided: pTwoSided - half,
    midPDoubled: Math.min(1, 2 * Math.min(pGreater - half, pLess - half)),
  };
};

const noMoreLikely = ({ values }: Chances, pObserved: number): number =>
  Math.min(
    1,
    values
      .filter((value) => value <= pObserved * TIE)
      .sort()
      .reduce((total, value) => total + value, 0),
  );
