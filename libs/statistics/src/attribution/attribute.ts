import { sum } from '../numbers.js';
import { seeded } from '../random/xoshiro.js';
import { candidatesOf } from './candidates.js';
import { inseparable, lotsOf, overlap, type SuspectClass } from './classes.js';
import { greedyCover, type Cover } from './cover.js';
import { requireCase, type Exposure, type Judged } from './judged.js';
import { smallestByChance } from './permute.js';
import { riskCells } from './risk-cells.js';
import { rowOf, type SuspectRow } from './row.js';
import { screenClasses, type Ranked, type Screened } from './screen-classes.js';
import { SETTINGS, type AttributionSettings } from './settings.js';
import { strengthOf, verdictOf, type Lines, type Strength, type Verdict } from './verdict.js';
import { weigh, type Weighed } from './weigh.js';

/** A posterior over all assumptions: the least, the middle and the most. */
export interface PosteriorRange {
  readonly least: number;
  readonly typical: number;
  readonly most: number;
}

/** A class with its row, its posterior and its word. */
export interface JudgedClass extends SuspectRow {
  /** Posterior that it has a bad lot; null when it was not weighed. */
  readonly posterior: PosteriorRange | null;
  /** The least of it under the assumptions that words are given by. */
  readonly leastPosterior: number | null;
  /** Lots of other classes that stand out and are in nearly the same hulls. */
  readonly nearlySame: readonly string[];
  readonly strength: Strength;
}

/** What the hulls of a case say about lots. */
export interface Attribution {
  readonly verdict: Verdict;
  /** The class that the verdict is given for: the first strong one, or else the first that is not "none"; null without any. */
  readonly leader: JudgedClass | null;
  /** The classes of least p and of largest posterior, ordered by their posterior; to be shown with the lower limits of their ratios. */
  readonly rows: readonly JudgedClass[];
  /** Classes that were tested and corrected for. */
  readonly tests: number;
  readonly untestable: readonly Screened[];
  /** Greedy cover over the classes weighed; places are those of `weighedClasses`. */
  readonly cover: Cover;
  readonly weighedClasses: readonly Ranked[];
  /** The posterior under every combination of assumptions. */
  readonly weighed: readonly Weighed[];
  /** Whether the class with the largest posterior is the same under all of them. */
  readonly stable: boolean;
}

/**
 * From hulls, claims and exposures to a verdict: "associated with", never "cause".
 *
 * Share thresholds; classes of lots that no statistic can tell apart; untestable ones apart; exact log-rank test within
 * strata beside the crude table; Benjamini-Hochberg over all families; permutation for the leaders; posterior over the best
 * classes and something not recorded, over a grid of assumptions; trend with share; greedy cover with runner-up; the word.
 * The same input and seed give the same answer; the order of lots does not matter, and that of hulls moves the p by
 * permutation alone, within its simulation error. Throws InputInvalid.
 */
export const attribute = (
  judged: Judged,
  exposures: readonly Exposure[],
  settings: AttributionSettings = SETTINGS,
): Attribution => {
  requireCase(judged, exposures);
  const cells = riskCells(judged);
  const suspects = inseparable(candidatesOf(exposures, settings.thresholds));
  const { ranked, untestable } = screenClasses(suspects, cells, settings.untestableAbove);
  const weighedClasses = ranked.slice(0, settings.weighed).filter(({ observed }) => observed > 0);
  const best = weighedClasses.map(({ suspect }) => suspect);
  const weighed =
    best.length === 0 ? [] : weigh(best, judged, cells, { ...settings, priors: priorsOf(ranked, settings) });
  const shown = shownOf(ranked, weighedClasses, weighed, settings);
  const smallest =
    shown.length === 0 || settings.worlds === 0
      ? null
      : smallestByChance(
          ranked.map(({ suspect }) => suspect),
          cells,
          {
            random: seeded(settings.seed),
            worlds: settings.worlds,
          },
        );
  const context = { weighedClasses, weighed, settings };
  const rows = shown
    .map((each, place) => judgedClass(rowOf(each, judged, cells, place < settings.leaders ? smallest : null), context))
    .sort((a, b) => (b.posterior?.typical ?? 0) - (a.posterior?.typical ?? 0) || a.p - b.p);
  const stable = new Set(weighed.map((each) => lotsLeading(each, best))).size <= 1;
  const leader = leaderOf(rows);
  return {
    leader,
    verdict: verdictFor(leader, { stable, weighed: forWords(weighed, settings), lines: settings.lines }),
    rows,
    tests: ranked.length,
    untestable,
    cover: greedyCover(best, judged, cells),
    weighedClasses,
    weighed,
    stable,
  };
};

/** Classes that get a row: half of them by their p, the others by their posterior, in the order of p. */
const shownOf = (
  ranked: readonly Ranked[],
  weighedClasses: readonly Ranked[],
  weighed: readonly Weighed[],
  { shown }: AttributionSettings,
): readonly Ranked[] => {
  if (weighed.length === 0) return ranked.slice(0, shown);
  const typical = new Map(weighedClasses.map((each, place) => [each, rangeOfPosterior(weighed, place).typical]));
  const byPosterior = [...weighedClasses].sort((a, b) => (typical.get(b) ?? 0) - (typical.get(a) ?? 0));
  const order = new Set([...ranked.slice(0, shown >> 1), ...byPosterior, ...ranked]);
  const rows = new Set([...order].slice(0, shown));
  return ranked.filter((each) => rows.has(each));
};

/** Chances of a lot to be bad: one bad one among all that were judged, times the settings. */
const priorsOf = (ranked: readonly Ranked[], { priorTimes }: AttributionSettings): readonly number[] => {
  const lots = sum(ranked.map(({ suspect }) => lotsOf(suspect).length));
  return priorTimes.map((times) => Math.min(0.05, times / lots));
};

/** The lots of the class with the largest posterior: at whatever share threshold, they are the same lots. */
const lotsLeading = ({ classes }: Weighed, suspects: readonly SuspectClass[]): string => {
  const leading = suspects[classes.indexOf(classes.reduce((a, b) => Math.max(a, b), -1))];
  return leading ? JSON.stringify([...lotsOf(leading)].sort()) : '';
};

interface Context {
  readonly weighedClasses: readonly Ranked[];
  readonly weighed: readonly Weighed[];
  readonly settings: AttributionSettings;
}

const judgedClass = (row: SuspectRow, { weighedClasses, weighed, settings }: Context): JudgedClass => {
  const place = weighedClasses.findIndex(({ suspect }) => suspect === row.suspect);
  const posterior = place < 0 || weighed.length === 0 ? null : rangeOfPosterior(weighed, place);
  const own = lotsOf(row.suspect);
  const close = weighedClasses.filter(
    ({ suspect, q }) =>
      q < settings.lines.suggestiveQ && overlap(suspect.hulls, row.suspect.hulls) >= settings.nearlySame,
  );
  const others = close.flatMap(({ suspect }) => lotsOf(suspect)).filter((lot) => !own.includes(lot));
  const leastPosterior = posterior && rangeOfPosterior(forWords(weighed, settings), place).least;
  const standing = { q: row.q, lowerOdds: row.hazardOdds.lower, leastPosterior };
  return {
    ...row,
    posterior,
    leastPosterior,
    nearlySame: [...new Set(others)],
    strength: strengthOf(standing, settings.lines),
  };
};

/** The assumptions that words are given by; all of them when none has so small a background. */
const forWords = (weighed: readonly Weighed[], { wordsUpTo }: AttributionSettings): readonly Weighed[] => {
  const own = weighed.filter(({ background }) => background <= wordsUpTo);
  return own.length === 0 ? weighed : own;
};

const rangeOfPosterior = (weighed: readonly Weighed[], place: number): PosteriorRange => {
  const chances = Float64Array.from(weighed, ({ classes }) => classes[place] as number).sort();
  return {
    least: chances[0] as number,
    typical: chances[chances.length >> 1] as number,
    most: chances[chances.length - 1] as number,
  };
};

/** The class that stands out most, of classes in the order of their posterior. */
export const leaderOf = <T extends { readonly strength: Strength }>(rows: readonly T[]): T | null =>
  rows.find(({ strength }) => strength === 'strong') ?? rows.find(({ strength }) => strength !== 'none') ?? null;

/** The word for the leading class. */
const verdictFor = (
  leader: JudgedClass | null,
  { stable, weighed, lines }: { stable: boolean; weighed: readonly Weighed[]; lines: Lines },
): Verdict => {
  if (!leader) return 'no lot stands out';
  const certain = weighed.every(({ none }) => none < 1 - lines.strongPosterior);
  return verdictOf(leader.strength, {
    lots: lotsOf(leader.suspect).length,
    nearlySame: leader.nearlySame.length,
    leaderChanges: !stable,
    split: certain && (leader.leastPosterior ?? 0) <= lines.strongPosterior,
  });
};
