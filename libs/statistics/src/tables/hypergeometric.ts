import { logChoose } from '../special/log-factorial.js';
import { rangeOf, type Margins } from './table.js';

/** Chances of a whole number from `low` on, as natural logarithms. */
export interface LogChances {
  readonly low: number;
  readonly logs: Float64Array;
}

/**
 * The chance of each number of exposed claims when claims fall on hulls without regard to exposure.
 *
 * P(x) = C(n,x) C(N-n,C-x) / C(N,C) for n exposed and C claims among N hulls (Fisher 1935).
 */
export const hypergeometric = (margins: Margins): LogChances => {
  const { exposed, claims, total } = margins;
  const [low, high] = rangeOf(margins);
  const all = logChoose(total, claims);
  const logs = new Float64Array(high - low + 1);
  for (let x = low; x <= high; x += 1)
    logs[x - low] = logChoose(exposed, x) + logChoose(total - exposed, claims - x) - all;
  return { low, logs };
};
