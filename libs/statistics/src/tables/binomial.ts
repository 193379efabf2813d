import type { Limits } from '../numbers.js';
import { requireCount } from '../numbers.js';
import { betaQuantile } from '../special/beta.js';
import { logChoose } from '../special/log-factorial.js';
import { exactTest, type ExactTest } from './exact-test.js';

/**
 * The exact test of x successes in n against a probability p0, 0 to 1 exclusive.
 *
 * The two-sided p sums what is no more likely than x, as R's `binom.test` does.
 */
export const binomialTest = (x: number, n: number, p0: number): ExactTest => {
  requireCount('x', x);
  requireCount('n', n, 1);
  const logs = Float64Array.from(
    { length: n + 1 },
    (_, k) => logChoose(n, k) + k * Math.log(p0) + (n - k) * Math.log1p(-p0),
  );
  return exactTest({ low: 0, logs }, x);
};

/** Exact limits of a probability (Clopper and Pearson 1934). */
export const binomialLimits = (x: number, n: number, level = 0.95): Limits => {
  const tail = (1 - level) / 2;
  return {
    lower: x === 0 ? 0 : betaQuantile(tail, x, n - x + 1),
    upper: x === n ? 1 : betaQuantile(1 - tail, x + 1, n - x),
  };
};
