import type { WalkLot } from './facts.js';
import { add, multiply, ONE, sum, ZERO } from './rational.js';
import type { Rational } from './rational.js';

/** The exact fraction of one lot in every lot that holds any of it; 1 in itself. `ordered` is from `lotsInOrder`. */
export const fractionsDownstream = (source: string, ordered: readonly WalkLot[]): ReadonlyMap<string, Rational> => {
  const fractions = new Map([[source, ONE]]);
  for (const { id, inputs } of ordered) {
    const from = inputs.filter((input) => fractions.has(input.lot));
    if (from.length === 0) continue;
    fractions.set(id, sum(from.map(({ lot, fraction }) => multiply(fractions.get(lot) ?? ZERO, fraction))));
  }
  return fractions;
};

/** Of every lot, the exact fraction of its mass that goes back to sources of each role. */
export const roleFractions = (ordered: readonly WalkLot[]): ReadonlyMap<string, ReadonlyMap<string, Rational>> => {
  const all = new Map<string, ReadonlyMap<string, Rational>>();
  for (const { id, role, inputs } of ordered) {
    const own = new Map<string, Rational>(inputs.length === 0 ? [[role, ONE]] : []);
    for (const { lot, fraction } of inputs) {
      for (const [each, part] of all.get(lot) ?? [])
        own.set(each, add(own.get(each) ?? ZERO, multiply(part, fraction)));
    }
    all.set(id, own);
  }
  return all;
};
