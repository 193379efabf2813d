/** x log(x / y), 0 at x = 0. */
const xlog = (x: number, y: number): number => (x === 0 ? 0 : x * Math.log(x / y));

/**
 * The log likelihood ratio of c cases inside a window where E of C are expected; 0 unless there are more than expected.
 *
 * c log(c/E) + (C - c) log((C - c)/(C - E)) (Kulldorff 1997, Poisson).
 */
export const poissonRatio = (c: number, expected: number, all: number): number =>
  c > expected ? xlog(c, expected) + xlog(all - c, all - expected) : 0;

/** The same for c cases of n inside, C of N in all, each hull a case or none (Kulldorff 1997, Bernoulli). */
export const bernoulliRatio = (c: number, n: number, all: number, population: number): number => {
  const [others, rest] = [all - c, population - n];
  if (rest > 0 && c / n <= others / rest) return 0;
  const inside = xlog(c, n) + xlog(n - c, n);
  const outside = xlog(others, rest) + xlog(rest - others, rest);
  return inside + outside - xlog(all, population) - xlog(population - all, population);
};
