import { InputInvalid } from '../errors.js';
import { at } from '../numbers.js';

/** Hulls sold in one period, and their claims by age in periods: claims[a] while in the period a after sale. */
export interface Sold {
  readonly period: number;
  readonly hulls: number;
  readonly claims: readonly number[];
}

/** What is known at a period `now`; `reportedWithin[l]` is the chance that a claim is reported l periods after it or sooner. */
export interface KnownAt {
  readonly now: number;
  /** Rising to 1, where it stays beyond its end; every claim at once when left out. */
  readonly reportedWithin?: readonly number[];
}

/** Claims a hull in one period of its age. */
export interface AgeRate {
  readonly age: number;
  readonly rate: number;
  /** Claims a hull up to and with this age. */
  readonly cumulative: number;
  /** Standard error of the cumulative, Poisson; times the root of the dispersion when that is above 1. */
  readonly se: number;
}

export interface AgeRates {
  readonly rates: readonly AgeRate[];
  /** Pearson's sum over its degrees of freedom: above 1 hulls differ or claims come together; NaN without any. */
  readonly dispersion: number;
}

const reported = ({ reportedWithin = [] }: KnownAt, lag: number): number => (lag < 0 ? 0 : (reportedWithin[lag] ?? 1));

/**
 * Claims a hull by age, corrected for claims that are not reported yet, without any distribution.
 *
 * rate(a) = claims at age a / sum of hulls times the chance that a claim at age a is reported by now (Kalbfleisch,
 * Lawless and Robinson 1991; Lawless 1998). Repeat claims count. Says nothing past the oldest age.
 * Throws InputInvalid when claims are given for an age not yet reached.
 */
export const claimsByAge = (sold: readonly Sold[], known: KnownAt): AgeRates => {
  const oldest = Math.max(...sold.map(({ period }) => known.now - period));
  for (const { period, claims } of sold)
    if (claims.length > known.now - period + 1) throw new InputInvalid('claims', claims.length, 'of ages up to now');
  const exposure = (row: Sold, age: number): number => row.hulls * reported(known, known.now - row.period - age);
  let [cumulative, variance, misfit, cells, used] = [0, 0, 0, 0, 0];
  const rates = Array.from({ length: oldest + 1 }, (_, age): AgeRate => {
    const watched = sold.reduce((total, row) => total + exposure(row, age), 0);
    const claims = sold.reduce((total, row) => total + (row.claims[age] ?? 0), 0);
    const rate = watched > 0 ? claims / watched : 0;
    cumulative += rate;
    variance += watched > 0 ? claims / watched ** 2 : 0;
    const expected = sold.map((row) => [row.claims[age] ?? 0, exposure(row, age) * rate] as const);
    const speaking = expected.filter(([, mean]) => mean > 0);
    misfit += speaking.reduce((total, [count, mean]) => total + (count - mean) ** 2 / mean, 0);
    cells += speaking.length;
    used += speaking.length > 0 ? 1 : 0;
    return { age, rate, cumulative, se: Math.sqrt(variance) };
  });
  return { rates, dispersion: misfit / (cells - used) };
};

/**
 * Claims that will be reported within some periods from now, and hulls that grow older than any age known meanwhile.
 *
 * A claim of age a counts with the chance that it is reported then and not yet now. For `beyond` hulls, the time past the
 * oldest age is left out: take the Weibull forecast for it.
 */
export const forecastByAge = (
  sold: readonly Sold[],
  { rates }: AgeRates,
  known: KnownAt,
  periods: number,
): { readonly expected: number; readonly beyond: number } => {
  const until = { ...known, now: known.now + periods };
  let expected = 0;
  let beyond = 0;
  for (const { period, hulls } of sold) {
    for (const { age, rate } of rates)
      expected +=
        hulls * rate * (reported(known, until.now - period - age) - reported(known, known.now - period - age));
    if (
      until.now - period >
      at(
        rates.map(({ age }) => age),
        rates.length - 1,
      )
    )
      beyond += hulls;
  }
  return { expected, beyond };
};
