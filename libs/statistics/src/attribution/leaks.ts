import { sum } from '../numbers.js';
import { logFactorial } from '../special/log-factorial.js';
import type { Judged } from './judged.js';
import { hazardOfHull, riskCells, type RiskCells } from './risk-cells.js';

/** How likely claims are without any bad lot. */
export interface Leaks {
  /** For each claim, the chance of one without any bad lot. */
  readonly leaks: Float64Array;
  /** The logarithm of the chance that the other hulls have none, and of what assumptions about it cost. */
  readonly log: number;
}

/** The risk sets of all hulls together: the pooled hazard by age alone. */
export const byAgeAlone = (judged: Judged): RiskCells =>
  riskCells({ ...judged, strata: new Uint32Array(judged.ages.length) });

/** A background of so large a part of the pooled hazard by age; every claim beyond it asks for a bad lot. */
export const background = (judged: Judged, byAge: RiskCells, part: number): Leaks =>
  leaksOf(judged, byAge, (hull) => part * hazardOfHull(byAge, hull));

/**
 * Something that is not recorded: it multiplies the pooled hazard by age in each stratum by a factor of its own.
 *
 * Factors are exponential with mean 1 beforehand, so that a stratum with O claims where E were expected has (O + 1)/(E + 1).
 * That each may have its own is paid for by the chance of its number of claims over all factors instead of at the best one,
 * as one factor for all hulls would be, which the pooled hazard has for nothing. Without that price a build period with a
 * bad lot would always be explained by itself. With one stratum it is the pooled hazard.
 */
export const unrecorded = (judged: Judged, byAge: RiskCells): Leaks => {
  const size = judged.strata.reduce((most, own) => Math.max(most, own + 1), 0);
  const [claims, expected] = [new Float64Array(size), new Float64Array(size)];
  judged.strata.forEach((stratum, hull) => {
    claims[stratum] = (claims[stratum] as number) + (judged.claimed[hull] as number);
    expected[stratum] = (expected[stratum] as number) + hazardOfHull(byAge, hull);
  });
  const factors = claims.map((own, stratum) => (own + 1) / ((expected[stratum] as number) + 1));
  const found = leaksOf(judged, byAge, (hull) => {
    const factor = factors[judged.strata[hull] as number] as number;
    return factor * hazardOfHull(byAge, hull);
  });
  const paid = sum(claims.map((own, stratum) => priceOf(own, expected[stratum] as number)));
  return { leaks: found.leaks, log: found.log + paid - priceOf(sum(claims), sum(expected)) };
};

/** Log of the chance of so many claims over all factors (geometric), against that at the one used (Poisson). */
const priceOf = (claims: number, expected: number): number => {
  const factor = (claims + 1) / (expected + 1);
  const overAll = logFactorial(claims) - (claims + 1) * Math.log1p(expected);
  return overAll - (claims * Math.log(factor) - factor * expected);
};

const leaksOf = ({ claimed }: Judged, { lastOf }: RiskCells, hazardAt: (hull: number) => number): Leaks => {
  const leaks: number[] = [];
  let log = 0;
  for (let hull = 0; hull < lastOf.length; hull += 1) {
    const own = hazardAt(hull);
    if ((claimed[hull] as number) === 1) leaks.push(-Math.expm1(-own));
    else log -= own;
  }
  return { leaks: Float64Array.from(leaks), log };
};
