import type { Hypothesis } from './hypotheses.js';
import type { Option } from './noisy-or.js';

/** Sets of bad lots under one assumption about what else leads to claims, with that assumption's weight. */
export interface World {
  readonly hypotheses: readonly Hypothesis[];
  /** Log prior of the assumption, and the part of the likelihood that all its sets share. */
  readonly log: number;
}

/** How likely it is that a class has a bad lot, given the claims. */
export interface Posterior {
  /** For each class. */
  readonly classes: Float64Array;
  /** For each class the bad lots expected in it; shared alike by its lots. */
  readonly badLots: Float64Array;
  /** That no class has one. */
  readonly none: number;
  /** For each world. */
  readonly worlds: Float64Array;
}

/** The posterior over sets of bad lots, each lot bad with chance `prior` before claims are looked at. */
export const posterior = (options: readonly Option[], worlds: readonly World[], prior: number): Posterior => {
  const odds = Math.log(prior) - Math.log1p(-prior);
  const logs = worlds.map(({ hypotheses, log }) =>
    Float64Array.from(hypotheses, (set) => log + set.logLikelihood + set.logWays + set.size * odds),
  );
  const largest = logs.reduce((most, own) => own.reduce((a, b) => Math.max(a, b), most), -Infinity);
  const size = options.reduce((most, { suspect }) => Math.max(most, suspect + 1), 0);
  const [classes, badLots] = [new Float64Array(size), new Float64Array(size)];
  const ofWorlds = new Float64Array(worlds.length);
  let none = 0;
  worlds.forEach(({ hypotheses }, world) =>
    hypotheses.forEach((set, i) => {
      const weight = Math.exp((logs[world]?.[i] ?? -Infinity) - largest);
      ofWorlds[world] = (ofWorlds[world] as number) + weight;
      if (set.size === 0) none += weight;
      for (const place of set.options) {
        const { suspect, times } = options[place] as Option;
        classes[suspect] = (classes[suspect] as number) + weight;
        badLots[suspect] = (badLots[suspect] as number) + weight * times;
      }
    }),
  );
  const total = ofWorlds.reduce((all, weight) => all + weight, 0);
  const shared = (values: Float64Array): Float64Array => values.map((value) => value / total);
  return { classes: shared(classes), badLots: shared(badLots), none: none / total, worlds: shared(ofWorlds) };
};
