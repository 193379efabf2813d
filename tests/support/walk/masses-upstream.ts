import type { WalkLot } from './facts.js';
import { add, multiply, ZERO } from './rational.js';
import type { Rational } from './rational.js';

/**
 * The exact mass of every lot, made or received, that given masses of some lots come from, those themselves included.
 *
 * Walks from the last made lot back: what a lot weighs is split over its inputs. `ordered` is from `lotsInOrder`.
 */
export const massesUpstream = (
  given: ReadonlyMap<string, Rational>,
  ordered: readonly WalkLot[],
): ReadonlyMap<string, Rational> => {
  const masses = new Map(given);
  for (const { id, inputs } of [...ordered].reverse()) {
    const mass = masses.get(id);
    if (mass === undefined) continue;
    for (const { lot, fraction } of inputs) masses.set(lot, add(masses.get(lot) ?? ZERO, multiply(mass, fraction)));
  }
  return masses;
};
