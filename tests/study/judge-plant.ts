import {
  attribute,
  candidatesOf,
  exactTest,
  convolve,
  inseparable,
  lotsOf,
  marginsOf,
  SETTINGS,
  type AttributionSettings,
  type Judged,
  type SuspectClass,
  type Verdict,
} from '@hull-record/statistics';
import type { Plant } from './plant.js';
import type { Scenario } from './scenarios.js';

/** As the service freezes a case, with 999 shuffles. */
export const STUDIED = { ...SETTINGS, thresholds: [0.05], worlds: 999 };

/** What became of one plant. */
export interface Outcome {
  readonly verdict: Verdict;
  /** Whether a class is called strong. */
  readonly strong: boolean;
  /** Whether the class that the verdict is about holds a planted lot; null when none stands out. */
  readonly namedBad: boolean | null;
  /** Whether the class that leads the table holds one. */
  readonly first: boolean;
  /** Whether one of those with the least crude p does. */
  readonly crudeFirst: boolean;
  /** Planted lots that are in one of the first two classes. */
  readonly inFirstTwo: number;
  /** The least p corrected by shuffles. */
  readonly adjusted: number;
  readonly tests: number;
  /** Whether the bad mold leads the other exposures; null without one. */
  readonly moldFirst: boolean | null;
}

/** Judges a plant by the library, as a look does, and by the crude ranking beside it. */
export const judgePlant = (
  { judged, exposures, molds, bad, badMold }: Plant,
  scenario: Scenario,
  settings: AttributionSettings = STUDIED,
): Outcome => {
  const holdsBad = (suspect: SuspectClass | undefined): boolean =>
    suspect !== undefined && lotsOf(suspect).some((lot) => bad.includes(lot));
  // The posterior gives neither a word nor a rank where nothing stands out and nothing is planted: it is left out there.
  const quick = scenario.badLots === 0 ? attribute(judged, exposures, { ...settings, weighed: 0 }) : null;
  const quiet = quick?.verdict === 'no lot stands out';
  const found = quick && quiet ? quick : attribute(judged, exposures, settings);
  const leader =
    found.rows.find(({ strength }) => strength === 'strong') ?? found.rows.find(({ strength }) => strength !== 'none');
  const two = found.rows.slice(0, 2).flatMap(({ suspect }) => lotsOf(suspect));
  const others = badMold && attribute(judged, molds, { ...settings, thresholds: [0], weighed: 0, worlds: 0 });
  return {
    verdict: found.verdict,
    strong: found.rows.some(({ strength }) => strength === 'strong'),
    namedBad: leader ? holdsBad(leader.suspect) : null,
    first: holdsBad(found.rows[0]?.suspect),
    crudeFirst:
      bad.length > 0 && crudeLeaders(judged, inseparable(candidatesOf(exposures, STUDIED.thresholds))).some(holdsBad),
    inFirstTwo: bad.filter((lot) => two.includes(lot)).length,
    adjusted: Math.min(1, ...found.rows.map((row) => row.adjusted ?? 1)),
    tests: found.tests,
    moldFirst: others ? others.rows[0]?.suspect.members[0]?.lot === badMold : null,
  };
};

/** Classes with the least one-sided p of Fisher's exact test of the raw table: blind to age and build period. */
const crudeLeaders = ({ claimed }: Judged, suspects: readonly SuspectClass[]): readonly SuspectClass[] => {
  const claims = claimed.reduce((total, own) => total + own, 0);
  const ps = suspects.map(({ hulls }) => {
    const a = hulls.reduce((total, hull) => total + (claimed[hull] as number), 0);
    const [b, c] = [hulls.length - a, claims - a];
    return exactTest(convolve([marginsOf({ a, b, c, d: claimed.length - hulls.length - c })]), a).pGreater;
  });
  const least = ps.reduce((x, y) => Math.min(x, y), 1);
  return suspects.filter((_, i) => (ps[i] as number) <= least * (1 + 1e-9));
};
