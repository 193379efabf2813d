import { sum, type Limits } from '../numbers.js';
import { exactTest } from '../tables/exact-test.js';
import { conditionalOdds, oddsLimits } from '../tables/conditional-odds.js';
import { convolve } from '../tables/convolution.js';
import { poissonLimits } from '../tables/rates.js';
import { riskRatio, type Ratio } from '../tables/sample-odds.js';
import { marginsOf, type Table } from '../tables/table.js';
import type { SuspectClass } from './classes.js';
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
  /**
   * Within strata and risk sets the claims expected differ by a quarter from those expected of as many hulls at random: age or
   * build period mixes with exposure, and the stratified figures hold. The quarter is a choice of ours.
   */
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
  return {
    ...ranked,
    ratio: { ratio: observed / expected, lower: limits.lower / expected, upper: limits.upper / expected },
    hazardOdds: hazardOddsOf(ranked, cells),
    crude,
    mixedWithAge: isMixed(expected, ((table.a + table.c) * suspect.hulls.length) / judged.ages.length),
    watched: sumAt(judged.ages, suspect.hulls) - (judged.from ? sumAt(judged.from, suspect.hulls) : 0),
    adjusted: smallest && adjustedP(p, smallest),
    dose: doseOf(suspect, judged, cells),
  };
};

const isMixed = (expected: number, crude: number): boolean => expected > 1.25 * crude || crude > 1.25 * expected;

/** The trend with the largest share that a hull has of a lot of the class, over all hulls that have any of it. */
const doseOf = ({ members }: SuspectClass, judged: Judged, cells: RiskCells): DoseTrend | null => {
  const largest = new Map<number, number>();
  for (const { whole } of members)
    whole.hulls.forEach((hull, i) => {
      const share = whole.shares ? (whole.shares[i] as number) : 1;
      if (share > (largest.get(hull) ?? -1)) largest.set(hull, share);
    });
  const hulls = Uint32Array.from(largest.keys()).sort();
  return doseTrend(
    hulls,
    Float64Array.from(hulls, (hull) => largest.get(hull) as number),
    judged,
    cells,
  );
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
