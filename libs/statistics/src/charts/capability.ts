import { requireCount, requirePositive, type Limits } from '../numbers.js';
import { chiSquareQuantile } from '../special/chi-square.js';
import { twoSidedZ } from '../special/normal.js';

/** What is specified; a minimum film thickness has no upper limit. */
export interface Specification {
  readonly lower?: number | undefined;
  readonly upper?: number | undefined;
}

/** How the spread of a stable process fits a specification; null where the specification has no such side. */
export interface Capability {
  readonly cp: number | null;
  readonly cpLower: number | null;
  readonly cpUpper: number | null;
  /** The smaller of the sides there are. */
  readonly cpk: number | null;
  /** How far the mean is off the middle, in half widths. */
  readonly offCentre: number | null;
}

/**
 * Capability indices: Cp = (U - L)/6 sigma, Cpk the smaller of (U - mean)/3 sigma and (mean - L)/3 sigma.
 *
 * With sigma from within subgroups they are Cp and Cpk; with the deviation of all values, Pp and Ppk (NIST/SEMATECH
 * e-Handbook 6.1.6). Of normal values of a stable process only. Never show one without its interval.
 */
export const capability = (mean: number, sigma: number, { lower, upper }: Specification): Capability => {
  requirePositive('sigma', sigma);
  const cpLower = lower === undefined ? null : (mean - lower) / (3 * sigma);
  const cpUpper = upper === undefined ? null : (upper - mean) / (3 * sigma);
  const sides = [cpLower, cpUpper].filter((side) => side !== null);
  const width = lower === undefined || upper === undefined ? null : upper - lower;
  return {
    cp: width === null ? null : width / (6 * sigma),
    cpLower,
    cpUpper,
    cpk: sides.length === 0 ? null : Math.min(...sides),
    offCentre: width === null ? null : Math.abs(mean - ((lower as number) + width / 2)) / (width / 2),
  };
};

/** Limits of Cp from n values: Cp sqrt(chi2 / (n - 1)) at both tails (ISO 22514-2). */
export const cpLimits = (cp: number, n: number, level = 0.95): Limits => {
  const degrees = requireCount('n', n, 2) - 1;
  const at = (share: number): number => cp * Math.sqrt(chiSquareQuantile(share, degrees) / degrees);
  return { lower: at((1 - level) / 2), upper: at((1 + level) / 2) };
};

/** Limits of Cpk from n values: Cpk +- z sqrt(1/(9n) + Cpk^2/(2(n - 1))) (Bissell 1990). */
export const cpkLimits = (cpk: number, n: number, level = 0.95): Limits => {
  requireCount('n', n, 2);
  const reach = twoSidedZ(level) * Math.sqrt(1 / (9 * n) + (cpk * cpk) / (2 * (n - 1)));
  return { lower: cpk - reach, upper: cpk + reach };
};
