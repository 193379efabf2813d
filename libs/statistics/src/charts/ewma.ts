import { requireFraction, requirePositive, type Limits } from '../numbers.js';

/** What a weighted mean is watched with. */
export interface EwmaSettings {
  /** Weight of the newest value, above 0 to 1; 0.1 to 0.2 finds a slow drift. */
  readonly weight: number;
  readonly target: number;
  /** Standard deviation of a single value, above 0. */
  readonly sigma: number;
  /** Limits in standard deviations of the weighted mean; 3 when left out. */
  readonly reach?: number;
}

/** A point of the chart with the limits that hold for it. */
export interface EwmaPoint extends Limits {
  readonly value: number;
  readonly signal: boolean;
}

/** Limits where the chart has settled: target +- L sigma sqrt(w / (2 - w)). */
export const settledLimits = ({ weight, target, sigma, reach = 3 }: EwmaSettings): Limits => {
  const width = reach * sigma * Math.sqrt(weight / (2 - weight));
  return { lower: target - width, upper: target + width };
};

/**
 * The exponentially weighted moving average z = w x + (1 - w) z from the target on (Roberts 1959).
 *
 * Limits start narrow, by sqrt(1 - (1 - w)^(2i)), and settle (NIST/SEMATECH e-Handbook 6.3.2.4). Throws InputInvalid.
 */
export const ewma = (values: readonly number[], settings: EwmaSettings): readonly EwmaPoint[] => {
  const { weight, target, sigma } = settings;
  if (weight !== 1) requireFraction('weight', weight);
  requirePositive('sigma', sigma);
  const settled = settledLimits(settings);
  let z = target;
  return values.map((x, i) => {
    z = weight * x + (1 - weight) * z;
    const narrowed = Math.sqrt(1 - (1 - weight) ** (2 * (i + 1)));
    const [lower, upper] = [settled.lower, settled.upper].map((limit) => target + (limit - target) * narrowed) as Pair;
    return { value: z, lower, upper, signal: z < lower || z > upper };
  });
};

type Pair = [number, number];
