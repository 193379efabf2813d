import { requireFraction, requirePositive } from '../numbers.js';
import { chiSquareQuantile } from '../special/chi-square.js';
import type { Weibull } from './weibull.js';
import { speaking, weightedSum, type Weighted } from './weighted.js';

/** The scale for a given shape. */
export interface Weibayes {
  /** Most likely; null without a claim. */
  readonly best: Weibull | null;
  /** Lower confidence bound of the characteristic age, with the same shape. */
  readonly bound: Weibull;
}

/**
 * The Weibull scale when the shape is known from older data, for too few claims to fit both.
 *
 * eta = (sum t^beta / r)^(1/beta); lower bound with chi2(confidence, 2r + 2)/2 in place of r, which without a claim is
 * -log(1 - confidence), 2.9957 at 95 % (Nelson 1985; Abernethy ch. 6). The shape is an assumption: show a range of it.
 */
export const weibayes = (given: readonly Weighted[], beta: number, confidence = 0.95): Weibayes => {
  requirePositive('beta', beta);
  requireFraction('confidence', confidence);
  const hulls = speaking(given);
  const claims = weightedSum(hulls, ({ event }) => (event ? 1 : 0));
  const powers = weightedSum(hulls, ({ age }) => age ** beta);
  const scale = (r: number): Weibull => ({ beta, eta: (powers / r) ** (1 / beta) });
  return {
    best: claims > 0 ? scale(claims) : null,
    bound: scale(chiSquareQuantile(confidence, 2 * claims + 2) / 2),
  };
};
