import { hullOfPart, lotsInOrder } from './facts.js';
import type { WalkFacts } from './facts.js';
import { massesUpstream } from './masses-upstream.js';
import { add, fromDecimal, ZERO } from './rational.js';
import type { Rational } from './rational.js';

/** A lot that a hull is made of. */
export interface LotIn {
  readonly lot: string;
  readonly role: string;
  readonly received: boolean;
  /** Exact kg of the lot in the hull, used as it is or inside other lots; kg of a mixture and of its inputs overlap. */
  readonly kg: Rational;
}

/** All lots, made and received, in the parts joined to a hull, sorted by id; none for a hull without parts. */
export const walkLotsIn = (hull: string, facts: WalkFacts): readonly LotIn[] => {
  const hullOf = hullOfPart(facts);
  const used = new Map<string, Rational>();
  for (const { lot, kg } of facts.uses.filter((use) => hullOf.get(use.part) === hull)) {
    used.set(lot, add(used.get(lot) ?? ZERO, fromDecimal(kg)));
  }
  const ordered = lotsInOrder(facts);
  const masses = massesUpstream(used, ordered);
  return ordered
    .flatMap(({ id, role, received }) => {
      const kg = masses.get(id);
      return kg === undefined ? [] : [{ lot: id, role, received, kg }];
    })
    .sort((a, b) => (a.lot < b.lot ? -1 : 1));
};
