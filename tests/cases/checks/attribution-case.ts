import * as statistics from '@hull-record/statistics';
import { ends } from './statistics-tables.js';

/** Hulls numbered from 1, all watched equally long. */
export interface AttributionCase {
  readonly hulls: number;
  readonly claim_hulls: readonly number[];
  readonly lot_to_hulls: Readonly<Record<string, readonly number[]>>;
  readonly noisy_or: { readonly prior_per_lot: number; readonly theta: number; readonly leak: number };
}

/** Runs a case through the whole of the attribution, and through the posterior with its leak and over all sets of lots. */
export const attributionOf = (given: AttributionCase): object => {
  const judged = judgedOf(given);
  const exposures = Object.entries(given.lot_to_hulls).map(([lot, hulls]) => ({
    lot,
    family: 'lot',
    hulls: Uint32Array.from(hulls, (hull) => hull - 1),
  }));
  const found = statistics.attribute(judged, exposures, { ...statistics.SETTINGS, worlds: 0 });
  const named = (lots: readonly string[]): readonly string[] =>
    [...lots].sort((a, b) => Object.keys(given.lot_to_hulls).indexOf(a) - Object.keys(given.lot_to_hulls).indexOf(b));
  const classes = found.rows.map((row) => ({ row, lots: named(statistics.lotsOf(row.suspect)) }));
  return {
    equivalence_classes: classes.map(({ lots }) => lots).filter(({ length }) => length > 1),
    n_tests: found.tests,
    ...Object.fromEntries(classes.map(({ row, lots }) => [lots.join(''), rowOf(row)])),
    ...Object.fromEntries(classes.flatMap(({ row, lots }) => lots.map((lot) => [`ochiai_${lot}`, ochiai(row)]))),
    greedy_cover: found.cover.steps.map(({ taken }) =>
      named(statistics.lotsOf((found.weighedClasses[taken] as statistics.Ranked).suspect)),
    ),
    unexplained_hulls: found.cover.unexplained.map((hull) => hull + 1),
    ...posteriorOf(given, judged, exposures),
  };
};

const judgedOf = ({ hulls, claim_hulls }: AttributionCase): statistics.Judged => ({
  ages: new Float64Array(hulls).fill(1),
  claimed: Uint8Array.from({ length: hulls }, (_, i) => (claim_hulls.includes(i + 1) ? 1 : 0)),
  strata: new Uint32Array(hulls),
});

const rowOf = (row: statistics.JudgedClass): object => ({
  table: [
    [row.crude.table.a, row.crude.table.b],
    [row.crude.table.c, row.crude.table.d],
  ],
  p_greater: row.p,
  or_conditional_mle: row.hazardOdds.ratio,
  ci95_exact: ends(row.hazardOdds),
  risk_ratio: row.crude.riskRatio?.ratio,
  min_attainable_p: row.smallestP,
  bh: row.q,
});

/** Ochiai's similarity of exposure and claims: a / sqrt((a + c)(a + b)). */
const ochiai = ({ crude: { table } }: statistics.JudgedClass): number =>
  table.a / Math.sqrt((table.a + table.c) * (table.a + table.b));

const posteriorOf = (
  { noisy_or, lot_to_hulls }: AttributionCase,
  judged: statistics.Judged,
  exposures: readonly statistics.Exposure[],
): object => {
  const classes = statistics.inseparable(statistics.candidatesOf(exposures, [0]));
  const seen = {
    places: statistics.claimPlaces(judged),
    shown: { by: judged.ages, before: null },
    theta: noisy_or.theta,
  };
  const suspects = classes.map((suspect) => statistics.suspectOf(suspect, seen));
  const claims = judged.claimed.reduce((total, claim) => total + claim, 0);
  const leaks = new Float64Array(claims).fill(noisy_or.leak);
  const mostBad = Object.keys(lot_to_hulls).length;
  const options = statistics.optionsOf(suspects, mostBad);
  const sets = statistics.hypotheses(options, leaks, { mostBad, beam: Infinity, logOdds: 0 });
  const found = statistics.posterior(options, [{ hypotheses: sets, log: 0 }], noisy_or.prior_per_lot);
  const perLot = classes.flatMap((suspect, i) => {
    const lots = statistics.lotsOf(suspect);
    return lots.map((lot) => [lot, (found.badLots[i] ?? NaN) / lots.length]);
  });
  const perClass = classes.map((suspect, i) => [
    `posterior_class_${statistics.lotsOf(suspect).join('')}`,
    found.classes[i],
  ]);
  return { posterior_per_lot: Object.fromEntries(perLot) as object, ...(Object.fromEntries(perClass) as object) };
};
