import { at } from '../numbers.js';
import { logChoose } from '../special/log-factorial.js';
import type { Hypothesis, Suspect } from './noisy-or.js';

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
  /** For each lot of the class; all of them are alike. */
  readonly lots: Float64Array;
  /** That no class has one. */
  readonly none: number;
  /** For each world. */
  readonly worlds: Float64Array;
}

/** The posterior over sets of bad lots, each lot bad with chance `prior` before claims are looked at. */
export const posterior = (suspects: readonly Suspect[], worlds: readonly World[], prior: number): Posterior => {
  const odds = Math.log(prior) - Math.log1p(-prior);
  const logs = worlds.map(({ hypotheses, log }) =>
    Float64Array.from(hypotheses, (each) => log + each.logLikelihood + priorOf(each, suspects, odds)),
  );
  const largest = logs.reduce((most, own) => own.reduce((a, b) => Math.max(a, b), most), -Infinity);
  const classes = new Float64Array(suspects.length);
  const lots = new Float64Array(suspects.length);
  const ofWorlds = new Float64Array(worlds.length);
  let none = 0;
  worlds.forEach(({ hypotheses }, world) =>
    hypotheses.forEach(({ classes: bad, bad: counts }, i) => {
      const weight = Math.exp(at(logs[world] as Float64Array, i) - largest);
      ofWorlds[world] = at(ofWorlds, world) + weight;
      if (bad.length === 0) none += weight;
      bad.forEach((c, j) => {
        classes[c] = at(classes, c) + weight;
        lots[c] = at(lots, c) + (weight * at(counts, j)) / (suspects[c] as Suspect).lots;
      });
    }),
  );
  const total = ofWorlds.reduce((all, weight) => all + weight, 0);
  const shared = (values: Float64Array): Float64Array => values.map((value) => value / total);
  return { classes: shared(classes), lots: shared(lots), none: none / total, worlds: shared(ofWorlds) };
};

/** The log prior of a set, less that of no bad lot at all. */
const priorOf = ({ classes, bad }: Hypothesis, suspects: readonly Suspect[], odds: number): number =>
  classes.reduce((total, c, i) => total + logChoose((suspects[c] as Suspect).lots, at(bad, i)) + at(bad, i) * odds, 0);
