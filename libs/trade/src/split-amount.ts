import { TradeError } from './errors.js';

/** An amount cannot be split so: no weights, a weight that is no number above zero, or a part that would be nothing. Data: `quantity`, `weights`. */
export class SplitImpossible extends TradeError {
  readonly code = 'split-impossible';
}

/** A decimal as a whole number of its last places. */
interface Scaled {
  readonly units: bigint;
  readonly places: number;
}

const scaled = (quantity: string, atLeast: number): Scaled => {
  const [whole = '0', fraction = ''] = quantity.split('.');
  const places = Math.max(fraction.length, atLeast);
  return { units: BigInt(whole + fraction.padEnd(places, '0')), places };
};

const written = ({ units, places }: Scaled): string => {
  const digits = String(units).padStart(places + 1, '0');
  const text = places === 0 ? digits : `${digits.slice(0, -places)}.${digits.slice(-places)}`;
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
};

/** The largest weight becomes this, and the others their part of it: whole numbers, whose sums and products are exact. */
const LARGEST = 2 ** 53;

const wholeWeights = (weights: readonly number[]): readonly bigint[] => {
  const largest = Math.max(...weights);
  return weights.map((weight) => BigInt(Math.round((weight / largest) * LARGEST)));
};

/** Decimal places that a part has at least: grams of a kilogram. */
const PLACES = 3;

/**
 * Splits an amount over weights so that the parts sum to it exactly, each within one last place of its due.
 *
 * The last places that rounding down leaves go to the largest remainders, the first of equal ones first. The quantity
 * is a plain decimal above zero; parts have its places, three at least. Throws SplitImpossible.
 */
export const splitAmount = (quantity: string, weights: readonly number[]): readonly string[] => {
  const refuse = (why: string): never => {
    throw new SplitImpossible(why, { quantity, weights });
  };
  if (weights.length === 0) refuse('Name at least one part to split over.');
  if (!weights.every((weight) => Number.isFinite(weight) && weight > 0)) refuse('Each weight must be more than zero.');
  const { units, places } = scaled(quantity, PLACES);
  const exact = wholeWeights(weights);
  const total = exact.reduce((sum, weight) => sum + weight, 0n);
  const due = exact.map((weight, i) => ({ i, part: (units * weight) / total, rest: (units * weight) % total }));
  const left = units - due.reduce((sum, { part }) => sum + part, 0n);
  const gains = [...due]
    .sort((a, b) => (a.rest === b.rest ? a.i - b.i : a.rest > b.rest ? -1 : 1))
    .slice(0, Number(left));
  const parts = due.map(({ i, part }) => part + (gains.some((each) => each.i === i) ? 1n : 0n));
  if (parts.some((part) => part <= 0n)) refuse('A part would be less than the last place of the amount: leave it out.');
  return parts.map((part) => written({ units: part, places }));
};

/** Decimal places of catalyst: milligrams of a kilogram. */
const CATALYST_PLACES = 6;

/**
 * Splits a mass sprayed into resin and the catalyst that was added to it, per cent of the resin by mass.
 *
 * The two sum exactly to the mass. Throws SplitImpossible when the per cent is not above zero and below 100, or the mass
 * is too small to split.
 */
export const splitByCatalyst = (
  quantity: string,
  percent: number,
): { readonly resin: string; readonly catalyst: string } => {
  if (!(percent > 0 && percent < 100))
    throw new SplitImpossible('Catalyst is more than 0 and less than 100 per cent of the resin.', {
      quantity,
      percent,
    });
  const { units, places } = scaled(quantity, CATALYST_PLACES);
  const catalyst = BigInt(Math.round((Number(units) * percent) / (100 + percent)));
  if (catalyst <= 0n || catalyst >= units)
    throw new SplitImpossible('The mass is too small to be split into resin and catalyst.', { quantity, percent });
  return { resin: written({ units: units - catalyst, places }), catalyst: written({ units: catalyst, places }) };
};
