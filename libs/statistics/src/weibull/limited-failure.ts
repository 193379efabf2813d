import { minimize } from '../special/minimize.js';
import { fitWeibull } from './fit.js';
import { cumulativeHazard, type Weibull } from './weibull.js';
import { speaking, weightedSum, type Weighted } from './weighted.js';

/** A population of which only a part ever fails. */
export interface LimitedFailure extends Weibull {
  /** The part that carries the flaw, 0 to 1. */
  readonly share: number;
  readonly logLikelihood: number;
  readonly aic: number;
}

/**
 * The fit of F(t) = p F_Weibull(t): a bad lot in p of the hulls, the others sound (Meeker 1987).
 *
 * A plain Weibull on a mixture gives too small a shape and a badly wrong far forecast; compare the two by AIC. While
 * watching is short against eta, p and eta can hardly be told apart. Throws TooLittle as fitWeibull does.
 */
export const fitLimitedFailure = (given: readonly Weighted[]): LimitedFailure => {
  const hulls = speaking(given);
  const claims = weightedSum(hulls, ({ event }) => (event ? 1 : 0));
  const all = weightedSum(hulls, ({ weight }) => (weight > 0 ? 1 : 0));
  const part = claims / all;
  const plain = fitWeibull(hulls.filter(({ event }) => event));
  const loss = ([p, logEta, logBeta]: readonly number[]): number => -likelihood(hulls, parameters(p, logEta, logBeta));
  const start = [Math.log(part / (1.001 - part)), Math.log(plain.eta), Math.log(plain.beta)];
  const [p, logEta, logBeta] = minimize(loss, start);
  const fitted = parameters(p, logEta, logBeta);
  const logLikelihood = likelihood(hulls, fitted);
  return { ...fitted, logLikelihood, aic: 6 - 2 * logLikelihood };
};

type Parameters = Weibull & { readonly share: number };

const parameters = (logit = NaN, logEta = NaN, logBeta = NaN): Parameters => ({
  share: 1 / (1 + Math.exp(-logit)),
  eta: Math.exp(logEta),
  beta: Math.exp(logBeta),
});

const likelihood = (hulls: readonly Required<Weighted>[], { share, ...weibull }: Parameters): number => {
  const { beta, eta } = weibull;
  const logs = weightedSum(hulls, ({ age, event }) => {
    const hazard = cumulativeHazard(weibull, age);
    if (!event) return Math.log1p(share * Math.expm1(-hazard));
    return Math.log((share * beta) / eta) + (beta - 1) * Math.log(age / eta) - hazard;
  });
  return Number.isFinite(logs) ? logs : -Infinity;
};
