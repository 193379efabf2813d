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

/** Room for the counts of a class. */
export const roomOf = ({ events }: RiskCells): Uint32Array => new Uint32Array(events.length + 1);

/**
 * Counts the exposed hulls of a class over the risk sets.
 *
 * @param room where exposed hulls are counted; used again for another class, it counts that one
 */
export const tally = (hulls: Uint32Array, cells: RiskCells, room = roomOf(cells)): Tally => {
  const { counted, before, lastOf } = cells;
  // Hulls that were never at risk are counted in a place of their own before the first cell.
  const counts = room.fill(0);
  let observed = 0;
  for (let i = 0; i < hulls.length; i += 1) {
    const own = counted[hulls[i] as number] as number;
    const place = own >> 1;
    counts[place] = (counts[place] as number) + 1;
    observed += own & 1;
  }
  let everAtRisk = hulls.length - (counts[0] as number);
  if (before)
    for (let i = 0; i < hulls.length; i += 1) {
      const late = before[hulls[i] as number] as number;
      if (late < 0) continue;
      counts[late + 1] = (counts[late + 1] as number) - 1;
      if (late === lastOf[hulls[i] as number]) everAtRisk -= 1;
    }
  const exposed = counts.subarray(1);
  sumFromEnds(exposed, cells.ends);
  let [expected, variance, reached] = [0, 0, 0];
  for (let cell = 0; cell < exposed.length; cell += 1) {
    if ((exposed[cell] as number) === 0) continue;
    const [d, n] = [cells.events[cell] as number, cells.atRisk[cell] as number];
    const part = (exposed[cell] as number) / n;
    reached += Math.min(d, exposed[cell] as number);
    expected += d * part;
    if (n > 1) variance += (d * part * (1 - part) * (n - d)) / (n - 1);
  }
  return { exposed, observed, expected, most: Math.min(everAtRisk, reached), variance };
};
