import type { Judged } from './judged.js';
import { sumFromEnds, type RiskCells } from './risk-cells.js';

/** What the log-rank test of a class needs. */
export interface Tally {
  /** Exposed hulls at risk in each cell. */
  readonly exposed: Uint32Array;
  /** Exposed hulls with a claim. */
  readonly observed: number;
  /** Claims they would have had at the pooled rate of their strata: E = sum d n1/n. */
  readonly expected: number;
  /** The most that could have had one: exposed hulls at risk, or as many claims as there were while they were. */
  readonly most: number;
  /** V = sum d (n1/n)(1 - n1/n)(n - d)/(n - 1). */
  readonly variance: number;
}

/** Counts the exposed hulls of a class over the risk sets. */
export const tally = (hulls: Uint32Array, { claimed }: Judged, cells: RiskCells): Tally => {
  const exposed = new Uint32Array(cells.events.length);
  let [observed, everAtRisk] = [0, 0];
  for (let i = 0; i < hulls.length; i += 1) {
    const hull = hulls[i] as number;
    const cell = cells.lastOf[hull] as number;
    if (cell >= 0) {
      exposed[cell] = (exposed[cell] as number) + 1;
      everAtRisk += 1;
    }
    observed += claimed[hull] as number;
  }
  sumFromEnds(exposed, cells.ends);
  let [expected, variance, reached] = [0, 0, 0];
  for (let cell = 0; cell < exposed.length; cell += 1) {
    const [d, n] = [cells.events[cell] as number, cells.atRisk[cell] as number];
    const part = (exposed[cell] as number) / n;
    reached += Math.min(d, exposed[cell] as number);
    expected += d * part;
    if (n > 1) variance += (d * part * (1 - part) * (n - d)) / (n - 1);
  }
  return { exposed, observed, expected, most: Math.min(everAtRisk, reached), variance };
};
