import { gain, sparedWith, type Option } from './noisy-or.js';

/** A set of bad lots with its log likelihood. */
export interface Hypothesis {
  /** Places in the list of options, rising, each of another class. */
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
 * else. `leaks` is the chance of a claim without any bad lot, for each claim. All sets of two options; larger ones grow
 * from the most likely of those one smaller.
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
  for (let count = 1; level.length > 0 && count <= reach.mostBad; count += 1) {
    const grown = level.flatMap((from) => extensions(from, options, leaks, { ...reach, whole }));
    const sets: readonly Extension[] = whole ? grown : onlyOnce(grown, options.length);
    for (const { set } of sets) found.push(set);
    const kept: readonly Extension[] = count === 1 ? sets : best(sets, reach);
    whole &&= kept.length === sets.length;
    level = kept.map(({ set, from, added }) => ({ ...set, spared: sparedWith(from.spared, options[added] as Option) }));
  }
  return found;
};

interface Extension {
  readonly set: Hypothesis;
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
  { mostBad, whole }: Reach & { readonly whole: boolean },
): readonly Extension[] => {
  const taken = new Set(from.options.map((place) => (options[place] as Option).suspect));
  const found: Extension[] = [];
  for (let added = whole ? (from.options.at(-1) ?? -1) + 1 : 0; added < options.length; added += 1) {
    const option = options[added] as Option;
    if (taken.has(option.suspect) || from.size + option.times > mostBad) continue;
    const set = {
      options: [...from.options, added].sort((a, b) => a - b),
      size: from.size + option.times,
      logWays: from.logWays + option.logWays,
      logLikelihood: from.logLikelihood + gain(from.spared, option, leaks),
    };
    found.push({ set, from, added });
  }
  return found;
};

const onlyOnce = (extensions: readonly Extension[], base: number): readonly Extension[] => {
  const seen = new Set<number>();
  return extensions.filter(({ set }) => {
    const key = set.options.reduce((total, place) => total * base + place, 0);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
};

const best = (extensions: readonly Extension[], { beam, logOdds }: Reach): readonly Extension[] => {
  if (extensions.length <= beam) return extensions;
  const scores = Float64Array.from(extensions, ({ set }) => set.logLikelihood + set.logWays + set.size * logOdds);
  const last = scores.slice().sort()[scores.length - beam] as number;
  return extensions.filter((_, i) => (scores[i] as number) >= last).slice(0, beam);
};
