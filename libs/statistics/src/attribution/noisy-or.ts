import { logChoose } from '../special/log-factorial.js';

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

/** So many bad lots of one class. */
export interface Option {
  readonly suspect: number;
  readonly times: number;
  /** Logarithm of the number of ways to choose them. */
  readonly logWays: number;
  readonly claims: Uint32Array;
  readonly spared: Float64Array;
  readonly sparedClean: number;
}

/** Every number of bad lots of every class, up to a number. */
export const optionsOf = (suspects: readonly Suspect[], mostBad: number): readonly Option[] =>
  suspects.flatMap(({ lots, claims, spared, sparedClean }, suspect) =>
    Array.from({ length: Math.min(lots, mostBad) }, (_, i) => ({
      suspect,
      times: i + 1,
      logWays: logChoose(lots, i + 1),
      claims,
      spared: spared.map((chance) => chance ** (i + 1)),
      sparedClean: sparedClean * (i + 1),
    })),
  );

/** What an option more does to the log likelihood, other lots sparing claims as told; touches its own claims alone. */
export const gain = (spared: Float64Array, option: Option, leaks: Float64Array): number => {
  let total = option.sparedClean;
  for (let i = 0; i < option.claims.length; i += 1) {
    const claim = option.claims[i] as number;
    const others = (1 - (leaks[claim] as number)) * (spared[claim] as number);
    total += Math.log((1 - others * (option.spared[i] as number)) / (1 - others));
  }
  return total;
};

/** The chances that claims are spared, with an option more. */
export const sparedWith = (spared: Float64Array, option: Option): Float64Array => {
  const changed = spared.slice();
  option.claims.forEach((claim, i) => {
    changed[claim] = (changed[claim] as number) * (option.spared[i] as number);
  });
  return changed;
};
