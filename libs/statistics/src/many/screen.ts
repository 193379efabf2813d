/** How many tests count, and which can ever be significant. */
export interface Screen {
  /** The factor of correction: the smallest k for which at most k tests can reach alpha / k. */
  readonly k: number;
  /** For each test in the order given, whether its smallest attainable p reaches alpha / k. */
  readonly testable: readonly boolean[];
}

/**
 * Tarone's screen (1990): with fixed margins a test has a smallest attainable p, known before any outcome is looked at.
 *
 * Tests that cannot reach significance whatever happens are named "cannot be judged" and do not count among the tests.
 */
export const taroneScreen = (smallest: readonly number[], alpha: number): Screen => {
  const ordered = [...smallest].sort((a, b) => a - b);
  let k = 1;
  while (k < ordered.length && (ordered[k] as number) <= alpha / k) k += 1;
  return { k, testable: smallest.map((p) => p <= alpha / k) };
};
