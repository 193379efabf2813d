import { unit, type Judged, type Random } from '@hull-record/statistics';
import { SIZE } from './lots.js';

/** What the claims of a plant come from. */
export interface Lived {
  /** Days from the sale of each hull to the cut-off. */
  readonly watched: Float64Array;
  /** For each bad thing, how much of it each hull has, 0 to 1. */
  readonly doses: readonly Float64Array[];
  /** For each of them, which part of all claims it is expected to lead to beyond the background. */
  readonly carried: readonly number[];
  /** Shape of the hazard over age. */
  readonly shape: number;
  /** Hulls in which an inspection finds something: a prompted claim, which ends their watching. */
  readonly inspected: ReadonlySet<number>;
}

/** The inspection of a hold is so long before the cut-off, days. */
const INSPECTED_BEFORE = 120;

/**
 * Exactly 40 first claims: each hull draws how much hazard it stands, and the scale of the hazard is set so that 40 of them
 * have stood it by the end of their watching. Hazards are in proportion: a bad lot multiplies that of its hulls.
 */
export const claimsOf = (
  { watched, doses, carried, shape, inspected }: Lived,
  random: Random,
): Pick<Judged, 'ages' | 'claimed'> => {
  const until = watched.map((days, hull) => (inspected.has(hull) ? Math.max(1, days - INSPECTED_BEFORE) : days));
  const background = until.map((days) => days ** shape);
  const times = multipliers(background, doses, carried);
  const stands = Float64Array.from(until, () => -Math.log(unit(random)));
  const needed = stands.map((draw, hull) => draw / ((background[hull] as number) * (times[hull] as number)));
  const order = needed.slice().sort();
  const scale = Math.sqrt((order[SIZE.claims - 1] as number) * (order[SIZE.claims] as number));
  const claimed = Uint8Array.from(needed, (own) => (own <= scale ? 1 : 0));
  const ages = until.map((days, hull) => {
    const first = ((stands[hull] as number) / (scale * (times[hull] as number))) ** (1 / shape);
    // Whole days, and half a day for the first, as a case counts them.
    return Math.max(0.5, Math.floor(claimed[hull] === 1 ? Math.min(first, days) : days));
  });
  return { ages, claimed };
};

/** What the hazard of each hull is multiplied by, so that each bad thing carries its part of all claims. */
const multipliers = (
  background: Float64Array,
  doses: readonly Float64Array[],
  carried: readonly number[],
): Float64Array => {
  const times = new Float64Array(background.length).fill(1);
  const all = background.reduce((a, b) => a + b, 0);
  const left = 1 - carried.reduce((a, b) => a + b, 0);
  doses.forEach((own, i) => {
    const exposed = own.reduce((total, dose, hull) => total + dose * (background[hull] as number), 0);
    const excess = ((carried[i] as number) / left) * (all / exposed);
    own.forEach((dose, hull) => (times[hull] = (times[hull] as number) + excess * dose));
  });
  return times;
};
