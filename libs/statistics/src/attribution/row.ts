import { sum, type Limits } from '../numbers.js';
import { exactTest } from '../tables/exact-test.js';
import { conditionalOdds, oddsLimits } from '../tables/conditional-odds.js';
import { convolve } from '../tables/convolution.js';
import { poissonLimits } from '../tables/rates.js';
import { riskRatio, type Ratio } from '../tables/sample-odds.js';
import { marginsOf, type Table } from '../tables/table.js';
import { doseTrend, type DoseTrend } from './dose.js';
import { adjustedP } from './permute.js';
import type { Judged } from './judged.js';
import type { RiskCells } from './risk-cells.js';
import type { Ranked } from './screen-classes.js';
import { tally } from './tally.js';

/** All that is said of one class. */
export interface SuspectRow extends Ranked {
  /**
   * Observed over expected claims, with exact Poisson limits of the observed number. A lot in half the hulls of its strata
   * cannot come above 2, however bad it is.
   */
  readonly ratio: Ratio;
  /** Hazard odds of exposed against other hulls, conditional, with exact limits: the one that words are given by. */
  readonly hazardOdds: Ratio;
  /** The raw table, beside the stratified test: it disregards age and build period. */
  readonly crude: { readonly table: Table; readonly p: number; readonly riskRatio: Ratio | null };
  /** The two p differ tenfold: age or build period mixes with exposure, and the stratified one holds. */
  readonly mixedWithAge: boolean;
  /** Time the exposed hulls were watched, in the unit of the ages. */
  readonly watched: number;
  /** p corrected by permutation; null for classes that are no leaders. */
  readonly adjusted: number | null;
  readonly dose: DoseTrend | null;
}

/** Puts together the row of a class; `smallest` are the p of worlds by chance, null when it is no leader. */
export const rowOf = (ranked: Ranked, judged: Judged, cells: RiskCells, smallest: Float64Array | null): SuspectRow => {
  const { suspect, observed, expected, p } = ranked;
  const limits = poissonLimits(observed);
  const table = crudeTable(suspect.hulls, judged, cells);
  const crude = { table, p: exactTest(convolve([marginsOf(table)]), table.a).pGreater, riskRatio: riskRatio(table) };
  const shares = suspect.members[0]?.shares ?? null;
  return {
    ...ranked,
    ratio: { ratio: observed / expected, lower: limits.lower / expected, upper: limits.upper / expected },
    hazardOdds: hazardOddsOf(ranked, cells),
    crude,
    mixedWithAge: crude.p > 10 * p || p > 10 * crude.p,
    watched: sumAt(judged.ages, suspect.hulls),
    adjusted: smallest && adjustedP(p, smallest),
    dose: shares && doseTrend(suspect.hulls, shares, judged, cells),
  };
};

/** Every claim is an event of a risk set. */
const crudeTable = (hulls: Uint32Array, { claimed }: Judged, { events }: RiskCells): Table => {
  const a = sumAt(claimed, hulls);
  const c = sum(events) - a;
  return { a, b: hulls.length - a, c, d: claimed.length - hulls.length - c };
};

const hazardOddsOf = ({ suspect, observed }: Ranked, cells: RiskCells): Ratio => {
  const { exposed } = tally(suspect.hulls, cells);
  const margins = [...exposed].flatMap((count, cell) => {
    const [claims = 0, total = 0] = [cells.events[cell], cells.atRisk[cell]];
    return count === 0 || count === total ? [] : [{ exposed: count, claims, total }];
  });
  const certain = [...exposed].reduce(
    (all, count, i) => all + (count === cells.atRisk[i] ? (cells.events[i] ?? 0) : 0),
    0,
  );
  const central = convolve(margins);
  const limits: Limits = oddsLimits(central, observed - certain);
  return { ratio: conditionalOdds(central, observed - certain), ...limits };
};

const sumAt = (values: Float64Array | Uint8Array, places: Uint32Array): number => {
  let total = 0;
  for (let i = 0; i < places.length; i += 1) total += values[places[i] as number] as number;
  return total;
};
