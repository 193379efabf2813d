import { requireFinite, requirePositive } from '../numbers.js';
import { ClimateInvalid, whyNoDewPoint } from './dew-point.js';

/** One reading of the climate log of an area. */
export interface ClimatePoint {
  /** Instant, ms since the epoch. */
  readonly at: number;
  readonly airC: number;
  readonly humidityPercent: number;
}

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;

/**
 * Returns the log in the order of time, or throws ClimateInvalid: an instant that is none or stands twice, humidity out
 * of 0 to 100, a temperature the dew point formula does not reach.
 */
export const requireClimateLog = (log: readonly ClimatePoint[]): readonly ClimatePoint[] => {
  const sorted = [...log].sort((a, b) => a.at - b.at);
  sorted.forEach(({ at, airC, humidityPercent }, i) => {
    const why = Number.isFinite(at) ? whyNoDewPoint(airC, humidityPercent) : 'A reading has no instant.';
    if (why !== undefined) throw new ClimateInvalid(why, { at, airC, humidityPercent });
    if (i > 0 && sorted[i - 1]?.at === at)
      throw new ClimateInvalid('Two readings of one area have the same instant.', { at, airC, humidityPercent });
  });
  return sorted;
};

/** Degrees C between the coldest and the warmest of some readings; of none it is 0. */
export const spreadC = (log: readonly ClimatePoint[]): number => {
  const temperatures = log.map(({ airC }) => airC);
  return temperatures.length === 0 ? 0 : Math.max(...temperatures) - Math.min(...temperatures);
};

/** The largest spread (C) within any 24 h of a log, readings 24 h apart included. */
export const largestDailySpreadC = (log: readonly ClimatePoint[]): number => {
  const sorted = requireClimateLog(log);
  const spreads = sorted.map(({ at }) => spreadC(sorted.filter((other) => other.at >= at && other.at - at <= DAY_MS)));
  return Math.max(0, ...spreads);
};

/** Hours for which every reading up to an instant (ms) had been at least so warm, counted from the first of them. */
export const hoursAtLeast = (log: readonly ClimatePoint[], atLeastC: number, until: number): number => {
  requireFinite('temperature', atLeastC);
  const before = requireClimateLog(log).filter(({ at }) => at <= until);
  const cold = before.findLastIndex(({ airC }) => airC < atLeastC);
  const first = before[cold + 1];
  return first === undefined ? 0 : (until - first.at) / HOUR_MS;
};

/**
 * Longest time (h) that every point of a log was at least so warm (C). A gap of the log longer than `gapHours` ends it:
 * what was not read is not counted as warm.
 */
export const longestHoursAtLeast = (log: readonly ClimatePoint[], atLeastC: number, gapHours: number): number => {
  const gapMs = requirePositive('gap', gapHours) * HOUR_MS;
  let [longest, since, before] = [0, Number.NaN, Number.NaN];
  for (const { at, airC } of requireClimateLog(log)) {
    const goesOn = at - before <= gapMs;
    if (airC < atLeastC) since = Number.NaN;
    else if (Number.isNaN(since) || !goesOn) since = at;
    if (airC >= atLeastC) longest = Math.max(longest, at - since);
    before = at;
  }
  return longest / HOUR_MS;
};

/**
 * Degree-hours above a base temperature (C h) between two instants, by the trapezoid of the readings within them.
 *
 * Readings below the base count as the base. It needs two readings; of fewer it is null.
 */
export const degreeHours = (
  log: readonly ClimatePoint[],
  baseC: number,
  span: { readonly from: number; readonly until: number },
): number | null => {
  const within = requireClimateLog(log).filter(({ at }) => at >= span.from && at <= span.until);
  if (within.length < 2) return null;
  const above = (point: ClimatePoint): number => Math.max(0, point.airC - baseC);
  return within.slice(1).reduce((sum, point, i) => {
    const before = within[i] as ClimatePoint;
    return sum + ((above(before) + above(point)) / 2) * ((point.at - before.at) / HOUR_MS);
  }, 0);
};
