import { gain, sparedWith, type Option } from './noisy-or.js';
import { SetsOfLots } from './sets-of-lots.js';

/** A set that may grow: its row, and for each claim the chance that no bad lot of the set led to it. */
interface Growing {
  readonly row: number;
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
export const hypotheses = (options: readonly Option[], leaks: Float64Array, reach: Reach): SetsOfLots => {
  const found = new SetsOfLots(reach.mostBad);
  const none = leaks.reduce((total, leak) => total + Math.log(leak), 0);
  found.addNone(none);
  let level: readonly Growing[] = [{ row: 0, spared: new Float64Array(leaks.length).fill(1) }];
  let whole = true;
  let highest = none;
  for (let count = 1; level.length > 0 && count <= reach.mostBad; count += 1) {
    const floor = count === 1 ? -Infinity : highest - NEGLIGIBLE;
    const first = found.length;
    const grown = extend(found, level, options, leaks, { ...reach, whole, floor });
    for (const score of grown.scores) if (score > highest) highest = score;
    if (count === reach.mostBad) break;
    const kept = count === 1 ? [...grown.scores.keys()] : best(grown.scores, reach.beam);
    whole &&= kept.length === grown.scores.length && !grown.dropped;
    level = kept.map((place) => ({
      row: first + place,
      spared: sparedWith(
        (level[grown.from[place] as number] as Growing).spared,
        options[found.optionAt(first + place, count - 1)] as Option,
      ),
    }));
  }
  return found;
};

/** Sets of two or more that are less likely than the best by e to this power are left out. */
const NEGLIGIBLE = 30;

/** Sets that were added: places in the level that they grew from, and logarithms of likelihood times prior. */
interface Extended {
  readonly from: readonly number[];
  readonly scores: readonly number[];
  /** Whether any was too unlikely to be added. */
  readonly dropped: boolean;
}

/**
 * Adds the sets of a level with one option more. While every set grows, only later options are added, which gives each set
 * once; when only the best ones grow, any option is, for a set may have grown from any of its parts.
 */
const extend = (
  found: SetsOfLots,
  level: readonly Growing[],
  options: readonly Option[],
  leaks: Float64Array,
  { mostBad, logOdds, whole, floor }: Reach & { readonly whole: boolean; readonly floor: number },
): Extended => {
  const [from, scores]: [number[], number[]] = [[], []];
  const seen = new Set<number>();
  let dropped = false;
  level.forEach(({ row, spared }, place) => {
    const held = found.countAt(row);
    const [size, ways] = [found.sizes[row] as number, found.logWays[row] as number];
    const [before, last] = [found.logLikelihoods[row] as number, held === 0 ? -1 : found.optionAt(row, held - 1)];
    for (let added = whole ? last + 1 : 0; added < options.length; added += 1) {
      const option = options[added] as Option;
      const [grown, logWays] = [size + option.times, ways + option.logWays];
      if (grown > mostBad || holds(found, row, held, options, option.suspect)) continue;
      const logLikelihood = before + gain(spared, option, leaks);
      const score = logLikelihood + logWays + grown * logOdds;
      if (score < floor) dropped = true;
      else if (whole || isNew(seen, keyOf(found, row, held, added, options.length))) {
        found.addGrown(found, row, added, { size: grown, logWays, logLikelihood });
        from.push(place);
        scores.push(score);
      }
    }
  });
  return { from, scores, dropped };
};

/** Whether a set has an option of a class already. */
const holds = (sets: SetsOfLots, row: number, held: number, options: readonly Option[], suspect: number): boolean => {
  for (let place = 0; place < held; place += 1)
    if (options[sets.optionAt(row, place)]?.suspect === suspect) return true;
  return false;
};

const isNew = (seen: Set<number>, key: number): boolean => {
  if (seen.has(key)) return false;
  seen.add(key);
  return true;
};

/** A number that is the same for the same options, whichever of them was added last: they are read in rising order. */
const keyOf = (sets: SetsOfLots, row: number, held: number, added: number, base: number): number => {
  let [key, last] = [0, -1];
  for (let read = 0; read <= held; read += 1) {
    let next = added > last ? added : base;
    for (let place = 0; place < held; place += 1) {
      const option = sets.optionAt(row, place);
      if (option > last && option < next) next = option;
    }
    key = key * base + next;
    last = next;
  }
  return key;
};

/** Places of the highest scores, in their order. */
const best = (scores: readonly number[], beam: number): readonly number[] => {
  const places = [...scores.keys()];
  if (scores.length <= beam) return places;
  const last = Float64Array.from(scores).sort()[scores.length - beam] as number;
  return places.filter((place) => (scores[place] as number) >= last).slice(0, beam);
};
