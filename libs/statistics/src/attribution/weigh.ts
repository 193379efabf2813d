import { sum } from '../numbers.js';
import type { SuspectClass } from './classes.js';
import type { Judged } from './judged.js';
import { hypotheses } from './hypotheses.js';
import { optionsOf, type Option } from './noisy-or.js';
import { posterior, type World } from './posterior.js';
import { background, byAgeAlone, unrecorded as notRecorded, type Leaks } from './leaks.js';
import type { RiskCells } from './risk-cells.js';
import { claimPlaces, shownBy, suspectOf } from './suspects.js';

/**
 * What the posterior assumes.
 *
 * Every combination of background and prior is gone through, for the claims can hardly tell them. The chance that a bad lot
 * shows is averaged over: claims tell it well, and a wrong one would rule out the right lot.
 */
export interface Assumptions {
  /** Chances that a fully exposed hull of a bad lot has a claim in the end, all as likely before claims are looked at. */
  readonly thetas: readonly number[];
  /** Claims without any bad lot, as parts of the pooled hazard by age. */
  readonly backgrounds: readonly number[];
  /** Chance of each lot to be bad before claims are looked at, for instance from the history of its supplier. */
  readonly priors: readonly number[];
  /** Chance that something that is not recorded gives each stratum a hazard of its own. */
  readonly unrecorded: number;
  readonly mostBad: number;
  readonly beam: number;
}

/** The posterior over one set of assumptions. */
export interface Weighed {
  readonly background: number;
  readonly prior: number;
  /** For each class that it has a bad lot. */
  readonly classes: Float64Array;
  /** That none of them has. */
  readonly none: number;
  /** That something not recorded is at work, alone or beside a bad lot. */
  readonly unrecorded: number;
  /** For each chance that a hull of a bad lot has a claim. */
  readonly thetas: Float64Array;
}

/** The posterior of classes over every combination of background and prior, in their order. */
export const weigh = (
  suspects: readonly SuspectClass[],
  judged: Judged,
  cells: RiskCells,
  { thetas, backgrounds, priors, unrecorded, mostBad, beam }: Assumptions,
): readonly Weighed[] => {
  const places = claimPlaces(judged);
  const shown = shownBy(judged, cells);
  const middle = priors[priors.length >> 1] as number;
  const reach = { mostBad, beam, logOdds: Math.log(middle / (1 - middle)) };
  const optionsAt = thetas.map((theta) =>
    optionsOf(
      suspects.map((suspect) => suspectOf(suspect, { places, shown, theta })),
      mostBad,
    ),
  );
  const worldsOf = ({ leaks, log: own }: Leaks, chance: number): readonly World[] => {
    const log = Math.log(chance / thetas.length) + own;
    return optionsAt.map((options) => ({ hypotheses: hypotheses(options, leaks, reach), log }));
  };
  const byAge = byAgeAlone(judged);
  const others = unrecorded > 0 ? worldsOf(notRecorded(judged, byAge), unrecorded) : [];
  return backgrounds.flatMap((part) => {
    const worlds = [...worldsOf(background(judged, byAge, part), 1 - unrecorded), ...others];
    return priors.map((prior): Weighed => {
      const { classes, none, worlds: chances } = posterior(optionsAt[0] as readonly Option[], worlds, prior);
      const atTheta = (i: number): number => (chances[i] as number) + (chances[thetas.length + i] ?? 0);
      return {
        background: part,
        prior,
        classes,
        none,
        unrecorded: sum(chances.slice(thetas.length)),
        thetas: Float64Array.from(thetas, (_, i) => atTheta(i)),
      };
    });
  });
};
