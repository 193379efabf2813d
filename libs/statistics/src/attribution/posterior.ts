import type { Option } from './noisy-or.js';
import type { SetsOfLots } from './sets-of-lots.js';

/** Sets of bad lots under one assumption about what else leads to claims, with that assumption's weight. */
export interface World {
  readonly hypotheses: SetsOfLots;
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
  const logs = worlds.map(({ hypotheses, log }) => logsOf(hypotheses, log, odds));
  const largest = logs.reduce((most, own) => own.reduce((a, b) => Math.max(a, b), most), -Infinity);
  const size = options.reduce((most, { suspect }) => Math.max(most, suspect + 1), 0);
  const suspects = Uint32Array.from(options, ({ suspect }) => suspect);
  const times = Uint32Array.from(options, (option) => option.times);
  const [classes, badLots] = [new Float64Array(size), new Float64Array(size)];
  const ofWorlds = new Float64Array(worlds.length);
  let none = 0;
  worlds.forEach(({ hypotheses }, world) => {
    const own = logs[world] as Float64Array;
    for (let row = 0; row < hypotheses.length; row += 1) {
      const weight = Math.exp((own[row] as number) - largest);
      ofWorlds[world] = (ofWorlds[world] as number) + weight;
      if (hypotheses.sizes[row] === 0) none += weight;
      for (let place = 0; hypotheses.optionAt(row, place) >= 0; place += 1) {
        const option = hypotheses.optionAt(row, place);
        const suspect = suspects[option] as number;
        classes[suspect] = (classes[suspect] as number) + weight;
        badLots[suspect] = (badLots[suspect] as number) + weight * (times[option] as number);
      }
    }
  });
  const total = ofWorlds.reduce((all, weight) => all + weight, 0);
  const shared = (values: Float64Array): Float64Array => values.map((value) => value / total);
  return { classes: shared(classes), badLots: shared(badLots), none: none / total, worlds: shared(ofWorlds) };
};

/** Log of likelihood times prior of every set, at the log odds of one lot to be bad. */
const logsOf = ({ length, sizes, logWays, logLikelihoods }: SetsOfLots, log: number, odds: number): Float64Array => {
  const logs = new Float64Array(length);
  for (let row = 0; row < length; row += 1)
    logs[row] = log + (logLikelihoods[row] as number) + (logWays[row] as number) + (sizes[row] as number) * odds;
  return logs;
};
