import { InputInvalid } from '../errors.js';

/**
 * The hulls of a case file, one place a hull in each array: one first claim of one mode, or none up to the cut-off.
 *
 * Hulls not launched are not among them. Arrays of numbers, for a case may have 200,000 hulls.
 */
export interface Judged {
  /** Age at the first claim or at the cut-off, in any unit, at least 0. */
  readonly ages: Float64Array;
  /**
   * Ages from which on hulls were watched, each below the age of its hull; 0 for all when left out. A hull that could not
   * have had a claim that counts before, as where earlier ones are set aside, is at risk from then on alone.
   */
  readonly from?: Float64Array;
  /** 1 with a claim. */
  readonly claimed: Uint8Array;
  /** Stratum, numbered from 0: build quarter and model. Builds are compared within it alone. */
  readonly strata: Uint32Array;
}

/** A material lot, or another thing hulls have in common, and the hulls it is in. */
export interface Exposure {
  readonly lot: string;
  /** What kind of thing it is: gel coat, resin, mold ... Tests of all families are corrected together. */
  readonly family: string;
  /** Places of hulls, rising, each once. */
  readonly hulls: Uint32Array;
  /** Largest layer share of each of them, 0 to 1; 1 when left out. */
  readonly shares?: Float64Array;
}

/** Throws InputInvalid when arrays do not fit each other, or an exposure names a hull twice or one that is not there. */
export const requireCase = ({ ages, from, claimed, strata }: Judged, exposures: readonly Exposure[]): void => {
  if (claimed.length !== ages.length || strata.length !== ages.length)
    throw new InputInvalid('arrays of hulls', `${ages.length}, ${claimed.length}, ${strata.length}`, 'of one length');
  const bad = ages.findIndex((age) => !(age >= 0 && age < Infinity));
  if (bad >= 0) throw new InputInvalid('age', ages[bad] as number, 'finite, from 0');
  if (from && from.length !== ages.length)
    throw new InputInvalid('ages from which on hulls were watched', from.length, `${ages.length}, one a hull`);
  const early = from?.findIndex((age, i) => !(age >= 0 && (age === 0 || age < (ages[i] as number)))) ?? -1;
  if (early >= 0) throw new InputInvalid('age from which on', from?.[early] as number, 'from 0, below the age');
  for (const { lot, hulls, shares } of exposures) {
    if (shares && shares.length !== hulls.length)
      throw new InputInvalid(`shares of ${lot}`, shares.length, 'one a hull');
    const wrong = notRising(hulls, ages.length);
    if (wrong !== null) throw new InputInvalid(`hulls of ${lot}`, wrong, 'rising places of hulls, each once');
  }
};

/**
 * The first place that does not rise, or the last when it is not below a number; null when there is none. `| 0` tells the
 * engine that places are integers, which makes this twice as fast; one of 2^31 or more comes out below 0, and so as wrong.
 */
const notRising = (places: Uint32Array, below: number): number | null => {
  let before = -1;
  for (let i = 0; i < places.length; i = (i + 1) | 0) {
    const place = (places[i] as number) | 0;
    if (place <= before) return places[i] as number;
    before = place;
  }
  return before < below ? null : before;
};
