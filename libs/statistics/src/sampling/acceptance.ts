import gammainc from '@stdlib/math-base-special-gammainc';
import { requireFraction } from '../numbers.js';
import { logChoose } from '../special/log-factorial.js';
import { hypergeometric } from '../tables/hypergeometric.js';
import { chanceUpTo, tilt } from '../tables/tilt.js';

/** A single sampling plan: n units looked at, the lot accepted with at most `accept` bad ones. */
export interface Plan {
  readonly n: number;
  readonly accept: number;
}

/** The chance to accept from a steady process with a share bad (type B). */
export const acceptedOfProcess = ({ n, accept }: Plan, share: number): number => {
  const logs = Float64Array.from(
    { length: n + 1 },
    (_, x) => logChoose(n, x) + x * Math.log(share) + (n - x) * Math.log1p(-share),
  );
  return chanceUpTo(tilt({ low: 0, logs }, 0), accept);
};

/** The chance to accept one lot of `total` units with `bad` ones (type A): to be used when n is over a tenth of the lot. */
export const acceptedOfLot = ({ n, accept }: Plan, { total, bad }: { total: number; bad: number }): number => {
  return chanceUpTo(tilt(hypergeometric({ exposed: n, claims: bad, total }), 0), accept);
};

/** The chance to accept with `perUnit` faults a unit, of which a unit may have several (Poisson). */
export const acceptedByFaults = ({ n, accept }: Plan, perUnit: number): number =>
  gammainc(n * perUnit, accept + 1, true, true);

/** Units to look at without a bad one, to know with a confidence that at most a share is bad: log(1 - conf)/log(1 - share). */
export const zeroBadSample = (share: number, confidence: number): number =>
  Math.ceil(Math.log1p(-requireFraction('confidence', confidence)) / Math.log1p(-requireFraction('share', share)));
