import { TooLittle } from '../errors.js';
import { bisect } from '../special/bisect.js';
import { informationOf, type Covariance } from './information.js';
import { cumulativeHazard, type Weibull } from './weibull.js';
import { speaking, weightedSum, type Weighted } from './weighted.js';

/** A fitted distribution. */
export interface WeibullFit extends Weibull {
  /** Claims it rests on, in weights. */
  readonly claims: number;
  readonly logLikelihood: number;
  /** 2 (parameters) - 2 log likelihood: the smaller, the better. */
  readonly aic: number;
  /** Covariance of (log eta, log beta), from the observed information. */
  readonly covariance: Covariance;
}

/** Shapes are looked for between these. */
const SHAPES = { least: 1e-3, most: 1e3 };

/**
 * The maximum likelihood fit of a Weibull distribution to first claims and hulls still without one.
 *
 * beta solves sum t^b ln t / sum t^b - 1/b - mean of ln t over claims = 0, which rises in b; eta = (sum t^b / r)^(1/b)
 * (Cohen 1965; Meeker and Escobar 1998, ch. 8). Ages are scaled by the largest, so that powers stay small. Throws
 * TooLittle with claims at fewer than two ages: then give a shape and use weibayes.
 */
export const fitWeibull = (given: readonly Weighted[]): WeibullFit => {
  const hulls = speaking(given);
  const claimed = hulls.filter(({ event }) => event);
  const ages = new Set(claimed.map(({ age }) => age)).size;
  if (ages < 2) throw new TooLittle('ages with a claim', ages, 2);
  const largest = hulls.reduce((most, { age }) => Math.max(most, age), 0);
  const scaled = hulls.map((hull) => ({ ...hull, age: hull.age / largest }));
  const claims = weightedSum(claimed, () => 1);
  const beta = Math.exp(bisect((log) => score(scaled, Math.exp(log)), Math.log(SHAPES.least), Math.log(SHAPES.most)));
  const eta = largest * (weightedSum(scaled, ({ age }) => age ** beta) / claims) ** (1 / beta);
  const logLikelihood = weibullLogLikelihood(hulls, { beta, eta });
  return {
    beta,
    eta,
    claims,
    logLikelihood,
    aic: 4 - 2 * logLikelihood,
    covariance: informationOf(hulls, { beta, eta }),
  };
};

/** The score of the shape with the scale at its best for it; ages of at most 1. */
const score = (hulls: readonly Required<Weighted>[], beta: number): number => {
  const claimed = hulls.filter(({ event }) => event);
  const powers = weightedSum(hulls, ({ age }) => age ** beta);
  const logs = weightedSum(hulls, ({ age }) => age ** beta * Math.log(age));
  const claims = weightedSum(claimed, () => 1);
  return logs / powers - 1 / beta - weightedSum(claimed, ({ age }) => Math.log(age)) / claims;
};

/** The log likelihood of hulls under a distribution. */
export const weibullLogLikelihood = (hulls: readonly Required<Weighted>[], { beta, eta }: Weibull): number =>
  weightedSum(hulls, ({ age, event }) => {
    const survived = -cumulativeHazard({ beta, eta }, age);
    return survived + (event ? Math.log(beta / eta) + (beta - 1) * Math.log(age / eta) : 0);
  });
