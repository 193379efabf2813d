import { LINES, type Lines } from './verdict.js';

/** How a case is judged. Frozen with the case, so that its verdict can be computed again. */
export interface AttributionSettings {
  /** Shares from which on a hull counts as exposed, each a question of its own. */
  readonly thresholds: readonly number[];
  /** Classes whose p cannot come down to this are set apart as untestable. */
  readonly untestableAbove: number;
  /** Classes with a row of their own. */
  readonly shown: number;
  /** Of them, the first so many get a p by permutation. */
  readonly leaders: number;
  readonly worlds: number;
  readonly seed: number;
  /** Classes that go into the posterior and the cover. */
  readonly weighed: number;
  readonly thetas: readonly number[];
  readonly backgrounds: readonly number[];
  /** Words are given by backgrounds up to this: a larger one leaves hardly any claims to a lot, and is for the order alone. */
  readonly wordsUpTo: number;
  /** Times one bad lot expected among all lots judged, each lot's prior at most 0.05. */
  readonly priorTimes: readonly number[];
  readonly unrecorded: number;
  readonly mostBad: number;
  readonly beam: number;
  /** Overlap of hulls from which on two classes are hardly separable. */
  readonly nearlySame: number;
  readonly lines: Lines;
}

/** The settings of the project; all of them choices of ours. */
export const SETTINGS: AttributionSettings = {
  thresholds: [0, 0.05, 0.5],
  untestableAbove: LINES.suggestiveQ,
  shown: 20,
  leaders: 5,
  worlds: 1999,
  seed: 1,
  weighed: 200,
  thetas: [0.02, 0.05, 0.1, 0.2, 0.4, 0.8],
  backgrounds: [0.5, 0.9],
  wordsUpTo: 0.5,
  priorTimes: [0.2, 1, 5],
  unrecorded: 0.5,
  mostBad: 3,
  beam: 100,
  nearlySame: 0.9,
  lines: LINES,
};
