import type { Limits } from '../numbers.js';
import { twoSidedZ } from '../special/normal.js';
import { riskSets, type RiskSet, type Watched } from './watched.js';

/** Share without a claim from an age on, until the next step. */
export interface SurvivalStep extends RiskSet {
  /** Share still without a claim, 0 to 1. */
  readonly survival: number;
  /** Greenwood's standard error of it. */
  readonly se: number;
  /** Band on the log(-log) scale, which stays between 0 and 1; at a survival of 0 both ends are 0. */
  readonly band: Limits;
  /** Nelson-Aalen cumulative hazard, and its variance sum of d / r^2. */
  readonly hazard: number;
  readonly hazardVariance: number;
}

/**
 * The Kaplan-Meier curve with Greenwood's standard error, bands, and the Nelson-Aalen hazard, a step for each age with
 * claims.
 *
 * S = product of (1 - d/r); se = S sqrt(sum d / (r (r - d))); H = sum d/r (Kaplan and Meier 1958; Greenwood 1926; Nelson
 * 1972; Aalen 1978). Ages are ages at the claim's date: the last weeks are counted low while claims are on their way.
 */
export const kaplanMeier = (watched: readonly Watched[], level = 0.95): readonly SurvivalStep[] => {
  let [survival, greenwood, hazard, hazardVariance] = [1, 0, 0, 0];
  return riskSets(watched).map((set) => {
    const { atRisk: r, events: d } = set;
    survival *= 1 - d / r;
    greenwood += d / (r * (r - d));
    hazard += d / r;
    hazardVariance += d / (r * r);
    const se = survival === 0 ? NaN : survival * Math.sqrt(greenwood);
    return { ...set, survival, se, band: logLogBand(survival, greenwood, level), hazard, hazardVariance };
  });
};

/** exp(-exp(log(-log S) +- z se / |log S|)), se of log S. */
const logLogBand = (survival: number, greenwood: number, level: number): Limits => {
  if (survival === 0) return { lower: 0, upper: 0 };
  const reach = Math.exp((twoSidedZ(level) * Math.sqrt(greenwood)) / Math.abs(Math.log(survival)));
  return { lower: survival ** reach, upper: survival ** (1 / reach) };
};

/** The band of a step on the log scale, S exp(+- z se / S), cut at 1: narrower claims at the ends than log(-log). */
export const logBand = ({ survival, se }: SurvivalStep, level = 0.95): Limits => {
  const reach = Math.exp((twoSidedZ(level) * se) / survival);
  return { lower: survival / reach, upper: Math.min(1, survival * reach) };
};

/** The first age at which at most a share of hulls is without a claim; null when the curve does not fall so far. */
export const ageAtSurvival = (steps: readonly SurvivalStep[], share: number): number | null =>
  steps.find(({ survival }) => survival <= share * (1 + 1e-12))?.age ?? null;
