import type { Limits } from '../numbers.js';
import { twoSidedZ } from '../special/normal.js';
import { cumulativeHazard, type Weibull } from './weibull.js';
import { weightedSum, type Weighted } from './weighted.js';

/** Variances and covariance of (log eta, log beta). */
export interface Covariance {
  readonly logEta: number;
  readonly logBeta: number;
  readonly both: number;
}

/**
 * The covariance of (log eta, log beta) at the maximum: the inverse of the observed information.
 *
 * With z = (t/eta)^beta and y = log z: information beta^2 sum z, -beta sum z y, r + sum z y^2.
 */
export const informationOf = (hulls: readonly Required<Weighted>[], fit: Weibull): Covariance => {
  const terms = (of: (z: number, y: number) => number): number =>
    weightedSum(hulls, ({ age }) => of(cumulativeHazard(fit, age), fit.beta * Math.log(age / fit.eta)));
  const claims = weightedSum(hulls, ({ event }) => (event ? 1 : 0));
  const scale = fit.beta ** 2 * terms((z) => z);
  const both = -fit.beta * terms((z, y) => z * y);
  const shape = claims + terms((z, y) => z * y * y);
  const determinant = scale * shape - both * both;
  return { logEta: shape / determinant, logBeta: scale / determinant, both: -both / determinant };
};

/**
 * Limits of an estimate from the variance of its logarithm: x exp(+- z se).
 *
 * The log scale, for both parameters are above 0; limits on the plain scale, x +- z x se, which some programs print, differ.
 */
export const logLimits = (estimate: number, variance: number, level = 0.95): Limits => {
  const reach = Math.exp(twoSidedZ(level) * Math.sqrt(variance));
  return { lower: estimate / reach, upper: estimate * reach };
};
