import type { SuspectClass } from './classes.js';
import type { Judged } from './judged.js';
import { hypotheses } from './hypotheses.js';
import { optionsOf } from './noisy-or.js';
import { posterior, type World } from './posterior.js';
import type { RiskCells } from './risk-cells.js';
import { claimPlaces, shownBy, suspectOf } from './suspects.js';

/** What the posterior assumes; each list is gone through, for nobody knows the right one. */
export interface Assumptions {
  /** Chance that a fully exposed hull of a bad lot has a claim in the end. */
  readonly thetas: readonly number[];
  /** Claims without any bad lot, as parts of the pooled hazard. */
  readonly backgrounds: readonly number[];
  /** Chance of each lot to be bad before claims are looked at, for instance from the history of its supplier. */
  readonly priors: readonly number[];
  /** Chance that something that is not recorded spreads claims over all hulls, as the pooled hazard does. */
  readonly unrecorded: number;
  readonly mostBad: number;
  readonly beam: number;
}

/** The posterior over one set of assumptions. */
export interface Weighed {
  readonly theta: number;
  readonly background: number;
  readonly prior: number;
  /** For each class that it has a bad lot. */
  readonly classes: Float64Array;
  /** That none of them has. */
  readonly none: number;
  /** That something not recorded is at work, alone or beside a bad lot. */
  readonly unrecorded: number;
}

/** The posterior of classes over every combination of assumptions, in their order. */
export const weigh = (
  suspects: readonly SuspectClass[],
  judged: Judged,
  cells: RiskCells,
  { thetas, backgrounds, priors, unrecorded, mostBad, beam }: Assumptions,
): readonly Weighed[] => {
  const places = claimPlaces(judged);
  const shown = shownBy(judged, cells);
  return thetas.flatMap((theta) => {
    const seen = suspects.map((suspect) => suspectOf(suspect, { places, shown, theta }));
    const options = optionsOf(seen, mostBad);
    const middle = priors[priors.length >> 1] as number;
    const logOdds = Math.log(middle / (1 - middle));
    const world = (part: number, chance: number): World => {
      const { leaks, logClean } = leaksOf(judged, cells, part);
      return { hypotheses: hypotheses(options, leaks, { mostBad, beam, logOdds }), log: Math.log(chance) + logClean };
    };
    const other = unrecorded > 0 ? [world(1, unrecorded)] : [];
    return backgrounds.flatMap((background) => {
      const worlds = [world(background, 1 - unrecorded), ...other];
      return priors.map((prior) => {
        const { classes, none, worlds: chances } = posterior(options, worlds, prior);
        return { theta, background, prior, classes, none, unrecorded: other.length > 0 ? (chances[1] as number) : 0 };
      });
    });
  });
};

/** Chance of a claim at a part of the pooled hazard: of each claimed hull; and the log chance that the others have none. */
const leaksOf = (
  { claimed }: Judged,
  { lastOf, hazard }: RiskCells,
  part: number,
): { leaks: Float64Array; logClean: number } => {
  const leaks: number[] = [];
  let logClean = 0;
  lastOf.forEach((cell, hull) => {
    const own = cell < 0 ? 0 : part * (hazard[cell] as number);
    if ((claimed[hull] as number) === 1) leaks.push(-Math.expm1(-own));
    else logClean -= own;
  });
  return { leaks: Float64Array.from(leaks), logClean };
};
