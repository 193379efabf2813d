import type { SuspectClass } from './classes.js';
import type { Judged } from './judged.js';
import { hazardOfHull, type RiskCells } from './risk-cells.js';

/** A class taken into the cover, and the class that would have done nearly as well. */
export interface CoverStep {
  /** Place of the class in the list given. */
  readonly taken: number;
  /** Claims it explains that no class before it does. */
  readonly gain: number;
  /** The next best class; null when none explains two claims. */
  readonly runnerUp: { readonly place: number; readonly gain: number } | null;
  /** Whether the runner-up explains as many claims, within one hull: then the order of the two says nothing. */
  readonly tie: boolean;
}

/** Classes that together explain claims, and hulls with a claim that are left as background. */
export interface Cover {
  readonly steps: readonly CoverStep[];
  readonly unexplained: readonly number[];
}

/**
 * A greedy weighted cover of the claims: again and again the class with most claims not yet explained for its cost.
 *
 * Cost = 1 + claims that its hulls without one should have had at the pooled rate: a class that is nearly everywhere
 * explains everything and nothing. Ends when a class would explain one claim only. At most log n worse than the best
 * cover (Chvatal 1979). An explanation to look at, not a proof.
 */
export const greedyCover = (suspects: readonly SuspectClass[], judged: Judged, cells: RiskCells): Cover => {
  const costs = suspects.map(({ hulls }) => 1 + spent(hulls, judged, cells));
  const left = judged.claimed.slice();
  const steps: CoverStep[] = [];
  for (;;) {
    const open = suspects
      .map(({ hulls }, place) => ({ place, gain: hulls.reduce((total, hull) => total + (left[hull] as number), 0) }))
      .filter(({ gain }) => gain > 1)
      .sort((a, b) => b.gain / (costs[b.place] as number) - a.gain / (costs[a.place] as number) || a.place - b.place);
    const [best, runnerUp = null] = open;
    if (!best) break;
    steps.push({
      taken: best.place,
      gain: best.gain,
      runnerUp,
      tie: runnerUp !== null && runnerUp.gain >= best.gain - 1,
    });
    for (const hull of suspects[best.place]?.hulls ?? []) left[hull] = 0;
  }
  return { steps, unexplained: [...left.keys()].filter((hull) => (left[hull] as number) === 1) };
};

const spent = (hulls: Uint32Array, { claimed }: Judged, cells: RiskCells): number => {
  let total = 0;
  for (let i = 0; i < hulls.length; i += 1) {
    const hull = hulls[i] as number;
    if ((claimed[hull] as number) === 0) total += hazardOfHull(cells, hull);
  }
  return total;
};
