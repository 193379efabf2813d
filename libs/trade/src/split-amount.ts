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
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const due = weights.map((weight) => (weight / total) * Number(units));
  const parts = due.map((share) => BigInt(Math.floor(share)));
  const order = due
    .map((share, i) => ({ i, rest: share - Math.floor(share) }))
    .sort((a, b) => b.rest - a.rest || a.i - b.i);
  let left = units - parts.reduce((sum, part) => sum + part, 0n);
  for (let n = 0; left !== 0n; n += 1) {
    const at = (order[n % order.length] as { i: number }).i;
    const step = left > 0n ? 1n : -1n;
    parts[at] = (parts[at] as bigint) + step;
    left -= step;
  }
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
