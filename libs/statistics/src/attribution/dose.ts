import { normalUpper } from '../special/normal.js';
import type { Judged } from './judged.js';
import type { RiskCells } from './risk-cells.js';

/** Whether hulls with a larger share of a lot have more claims, among the hulls that have it at all. */
export interface DoseTrend {
  readonly z: number;
  /** One-sided; normal approximation. */
  readonly p: number;
}

/**
 * The log-rank test for a trend in share, within the exposed hulls and stratified; null when shares do not vary.
 *
 * U = sum over claims of w - mean w at risk, V = sum d var(w) (n - d)/(n - 1) (Tarone 1975). Hulls without the lot are left
 * out, so that it is evidence of its own beside the test of the class; those with less than the threshold of the test are in.
 */
export const doseTrend = (
  hulls: Uint32Array,
  shares: Float64Array,
  { claimed }: Judged,
  { ends, lastOf, before }: RiskCells,
): DoseTrend | null => {
  const sums = Array.from({ length: 5 }, () => new Float64Array(ends.length));
  const [count, first, second, claims, ofClaims] = sums as [Sums, Sums, Sums, Sums, Sums];
  hulls.forEach((hull, i) => {
    const cell = lastOf[hull] as number;
    if (cell < 0) return;
    const share = shares[i] as number;
    add(count, cell, 1);
    add(first, cell, share);
    add(second, cell, share * share);
    const late = before ? (before[hull] as number) : -1;
    if (late >= 0) {
      add(count, late, -1);
      add(first, late, -share);
      add(second, late, -share * share);
    }
    if ((claimed[hull] as number) === 1) {
      add(claims, cell, 1);
      add(ofClaims, cell, share);
    }
  });
  let [score, variance] = [0, 0];
  for (let cell = ends.length - 1; cell >= 0; cell -= 1) {
    if ((ends[cell] as number) === 0) for (const own of [count, first, second]) add(own, cell, own[cell + 1] as number);
    const [n, d] = [count[cell] as number, claims[cell] as number];
    if (d === 0) continue;
    const mean = (first[cell] as number) / n;
    score += (ofClaims[cell] as number) - d * mean;
    if (n > 1) variance += (d * Math.max(0, (second[cell] as number) / n - mean * mean) * (n - d)) / (n - 1);
  }
  if (variance < 1e-12) return null;
  const z = score / Math.sqrt(variance);
  return { z, p: normalUpper(z) };
};

type Sums = Float64Array;

const add = (sums: Sums, cell: number, value: number): void => {
  sums[cell] = (sums[cell] as number) + value;
};
