/** What a cumulative sum is watched with, in the unit of the values. */
export interface CusumSettings {
  readonly target: number;
  /** Slack: half of the shift that should be found; common practice is half a standard deviation. */
  readonly slack: number;
  /** A sum above it signals; common practice is 4 to 5 standard deviations. */
  readonly limit: number;
}

/** A point of the chart. */
export interface CusumPoint {
  readonly high: number;
  readonly low: number;
  /** Values since the high or low sum was last 0: the change is dated to the first of them. */
  readonly highFor: number;
  readonly lowFor: number;
  readonly signal: boolean;
}

/**
 * The tabular cumulative sum: C+ = max(0, C+ + x - (target + k)), C- = max(0, C- + (target - k) - x) (Page 1954).
 *
 * It finds a slow drift that no single point shows (NIST/SEMATECH e-Handbook 6.3.2.3).
 */
export const cusum = (values: readonly number[], { target, slack, limit }: CusumSettings): readonly CusumPoint[] => {
  let [high, low, highFor, lowFor] = [0, 0, 0, 0];
  return values.map((x) => {
    high = Math.max(0, high + x - target - slack);
    low = Math.max(0, low + target - slack - x);
    highFor = high > 0 ? highFor + 1 : 0;
    lowFor = low > 0 ? lowFor + 1 : 0;
    return { high, low, highFor, lowFor, signal: high > limit || low > limit };
  });
};

/**
 * Points on average until a one-sided sum signals, by Siegmund (1985): (e^(-2Db) + 2Db - 1) / (2 D^2).
 *
 * `slack`, `limit` and `shift` in standard deviations; D = shift - slack, b = limit + 1.166. An approximation.
 */
export const cusumRunLength = ({ slack, limit, shift }: { slack: number; limit: number; shift: number }): number => {
  const drift = shift - slack;
  const reach = limit + 1.166;
  if (drift === 0) return reach * reach;
  return (Math.exp(-2 * drift * reach) + 2 * drift * reach - 1) / (2 * drift * drift);
};

/** Points on average until a sum on either side signals: 1/A = 1/A+ + 1/A-. */
export const cusumRunLengthBothSides = (of: { slack: number; limit: number; shift: number }): number =>
  1 / (1 / cusumRunLength(of) + 1 / cusumRunLength({ ...of, shift: -of.shift }));
