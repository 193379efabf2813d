import { at } from '../numbers.js';

/** A class of lots as the posterior sees it. */
export interface Suspect {
  /** Lots that are in exactly the same hulls: any number of them may be bad. */
  readonly lots: number;
  /** Exposed hulls with a claim, as places in the list of claims, rising. */
  readonly claims: Uint32Array;
  /** For each of them the chance that one bad lot of the class has not led to a claim by its age. */
  readonly spared: Float64Array;
  /** Sum over exposed hulls without a claim of the logarithm of that chance. */
  readonly sparedClean: number;
}

/** A set of bad classes with its log likelihood; `bad[i]` lots of the class `classes[i]`. */
export interface Hypothesis {
  readonly classes: readonly number[];
  readonly bad: readonly number[];
  readonly logLikelihood: number;
}

interface Grown extends Hypothesis {
  /** For each claim the chance that no bad lot led to it. */
  readonly spared: Float64Array;
}

/**
 * The sets of bad lots with their likelihoods: P(claim) = 1 - (1 - leak) times the product over bad lots of 1 - theta w F.
 *
 * A noisy-OR (Pearl 1988): a hull is spared by each bad lot with a chance of its own, and the leak stands for everything
 * else. `leaks` is the chance of a claim without any bad lot, for each claim. Sets of up to `mostBad` lots: all of one and
 * two; of more, those that grow from the `beam` most likely sets one smaller.
 */
export const hypotheses = (
  suspects: readonly Suspect[],
  leaks: Float64Array,
  { mostBad, beam, logOdds }: { mostBad: number; beam: number; logOdds: (lots: number) => number },
): readonly Hypothesis[] => {
  const none: Grown = {
    classes: [],
    bad: [],
    logLikelihood: leaks.reduce((total, leak) => total + Math.log(leak), 0),
    spared: new Float64Array(leaks.length).fill(1),
  };
  const found: Hypothesis[] = [none];
  let level: readonly Grown[] = [none];
  for (let size = 1; size <= Math.min(mostBad, suspects.length); size += 1) {
    const seen = new Set<string>();
    const weighed = level.flatMap((set) => extensions(set, suspects, leaks, mostBad, seen));
    for (const { set } of weighed) found.push(set);
    const score = ({ set }: Extension): number =>
      set.logLikelihood +
      set.classes.reduce((all, c, i) => all + at(set.bad, i) * logOdds((suspects[c] as Suspect).lots), 0);
    const best = size === 1 ? weighed : [...weighed].sort((a, b) => score(b) - score(a)).slice(0, beam);
    level = best.map(({ set, from, added, times }) => ({
      ...set,
      spared: sparedWith(from.spared, suspects[added] as Suspect, times),
    }));
  }
  return found;
};

interface Extension {
  readonly set: Hypothesis;
  readonly from: Grown;
  readonly added: number;
  readonly times: number;
}

/** A set with one more class, each set once; in any order, for a set may grow from any of its parts. */
const extensions = (
  from: Grown,
  suspects: readonly Suspect[],
  leaks: Float64Array,
  mostBad: number,
  seen: Set<string>,
): readonly Extension[] => {
  const size = from.bad.reduce((total, count) => total + count, 0);
  return suspects.flatMap((suspect, added) => {
    if (from.classes.includes(added)) return [];
    return Array.from({ length: Math.min(suspect.lots, mostBad - size) }, (_, i) => i + 1).flatMap((times) => {
      const { classes, bad } = inserted(from, added, times);
      const key = `${classes.join()} ${bad.join()}`;
      if (seen.has(key)) return [];
      seen.add(key);
      const logLikelihood = from.logLikelihood + gain(from.spared, suspect, times, leaks);
      return [{ set: { classes, bad, logLikelihood }, from, added, times }];
    });
  });
};

const inserted = ({ classes, bad }: Hypothesis, added: number, times: number): Pick<Hypothesis, 'classes' | 'bad'> => {
  const place = classes.findIndex((c) => c > added);
  const i = place < 0 ? classes.length : place;
  return {
    classes: [...classes.slice(0, i), added, ...classes.slice(i)],
    bad: [...bad.slice(0, i), times, ...bad.slice(i)],
  };
};

/** What so many bad lots of a class more do to the log likelihood; touches the claims of the class alone. */
const gain = (spared: Float64Array, suspect: Suspect, times: number, leaks: Float64Array): number => {
  let total = times * suspect.sparedClean;
  for (let i = 0; i < suspect.claims.length; i += 1) {
    const claim = at(suspect.claims, i);
    const others = (1 - at(leaks, claim)) * at(spared, claim);
    total += Math.log((1 - others * at(suspect.spared, i) ** times) / (1 - others));
  }
  return total;
};

const sparedWith = (spared: Float64Array, suspect: Suspect, times: number): Float64Array => {
  const changed = spared.slice();
  suspect.claims.forEach((claim, i) => {
    changed[claim] = at(changed, claim) * at(suspect.spared, i) ** times;
  });
  return changed;
};
