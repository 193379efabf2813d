import { gain, sparedWith, type Option } from './noisy-or.js';

/** A set of bad lots with its log likelihood. */
export interface Hypothesis {
  /** Places in the list of options, each of another class. */
  readonly options: readonly number[];
  /** Bad lots in all. */
  readonly size: number;
  /** Sum over the options of their logWays. */
  readonly logWays: number;
  readonly logLikelihood: number;
}

/** A set that may grow. */
interface Grown extends Hypothesis {
  /** For each claim the chance that no bad lot of the set led to it. */
  readonly spared: Float64Array;
}

/** How far sets are looked at. */
export interface Reach {
  readonly mostBad: number;
  /** Of the sets of two options or more, the most likely so many grow further; Infinity for all sets there are. */
  readonly beam: number;
  /** Log odds of one lot to be bad, by which sets are compared before they grow. */
  readonly logOdds: number;
}

/**
 * The sets of bad lots with their likelihoods: P(claim) = 1 - (1 - leak) times the product over bad lots of 1 - theta w F.
 *
 * A noisy-OR (Pearl 1988): a hull is spared by each bad lot with a chance of its own, and the leak stands for everything
 * else. `leaks` is the chance of a claim without any bad lot, for each claim. All sets of two options that matter; larger
 * ones grow from the most likely of those one smaller.
 */
export const hypotheses = (options: readonly Option[], leaks: Float64Array, reach: Reach): readonly Hypothesis[] => {
  const none: Grown = {
    options: [],
    size: 0,
    logWays: 0,
    logLikelihood: leaks.reduce((total, leak) => total + Math.log(leak), 0),
    spared: new Float64Array(leaks.length).fill(1),
  };
  const found: Hypothesis[] = [none];
  let level: readonly Grown[] = [none];
  let whole = true;
  let highest = none.logLikelihood;
  for (let count = 1; level.length > 0 && count <= reach.mostBad; count += 1) {
    const floor = count === 1 ? -Infinity : highest - NEGLIGIBLE;
    const grown = level.map((from) => extensions(from, options, leaks, { ...reach, whole, floor }));
    const all = grown.flatMap(({ found: own }) => own);
    const sets: readonly Extension[] = whole ? all : onlyOnce(all, options.length);
    for (const { set, score } of sets) {
      found.push(set);
      if (score > highest) highest = score;
    }
    const kept: readonly Extension[] = count === 1 ? sets : best(sets, reach.beam);
    whole &&= kept.length === sets.length && grown.every(({ dropped }) => !dropped);
    level = kept.map(({ set, from, added }) => ({ ...set, spared: sparedWith(from.spared, options[added] as Option) }));
  }
  return found;
};

/** Sets of two or more that are less likely than the best by e to this power are left out. */
const NEGLIGIBLE = 30;

interface Extension {
  readonly set: Hypothesis;
  /** Logarithm of likelihood times prior. */
  readonly score: number;
  readonly from: Grown;
  readonly added: number;
}

/**
 * A set with one option more. While every set grows, only later options are added, which gives each set once; when only the
 * best ones grow, any option is, for a set may have grown from any of its parts.
 */
const extensions = (
  from: Grown,
  options: readonly Option[],
  leaks: Float64Array,
  { mostBad, logOdds, whole, floor }: Reach & { readonly whole: boolean; readonly floor: number },
): { readonly found: readonly Extension[]; readonly dropped: boolean } => {
  const taken = from.options.map((place) => (options[place] as Option).suspect);
  const found: Extension[] = [];
  let dropped = false;
  for (let added = whole ? (from.options.at(-1) ?? -1) + 1 : 0; added < options.length; added += 1) {
    const option = options[added] as Option;
    const size = from.size + option.times;
    if (size > mostBad || taken.includes(option.suspect)) continue;
    const logWays = from.logWays + option.logWays;
    const logLikelihood = from.logLikelihood + gain(from.spared, option, leaks);
    const score = logLikelihood + logWays + size * logOdds;
    if (score < floor) dropped = true;
    else found.push({ set: { options: [...from.options, added], size, logWays, logLikelihood }, score, from, added });
  }
  return { found, dropped };
};

/** Each set once, whichever of its parts it grew from. */
const onlyOnce = (extensions: readonly Extension[], base: number): readonly Extension[] => {
  const seen = new Set<number>();
  return extensions.filter(({ set }) => {
    const key = [...set.options].sort((a, b) => a - b).reduce((total, place) => total * base + place, 0);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
};

const best = (extensions: readonly Extension[], beam: number): readonly Extension[] => {
  if (extensions.length <= beam) return extensions;
  const scores = Float64Array.from(extensions, ({ score }) => score).sort();
  const last = scores[scores.length - beam] as number;
  return extensions.filter(({ score }) => score >= last).slice(0, beam);
};
