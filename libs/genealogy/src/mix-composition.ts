import { byRoleThenSource, FLOOR } from './composition.js';
import type { Composition, Portion } from './composition.js';
import { steadySum, totalKg } from './mass.js';

/** What goes into a mixture: a mass and what that mass is made of. */
export interface Ingredient {
  /** kg, at least 0; 0 adds nothing. */
  readonly kg: number;
  readonly composition: Composition;
  /** How weakly the mass is known; 0, the strongest, when left out. */
  readonly weakness?: number;
}

/** What one source comes to: fractions to be added up, and the weakest way by which one came. */
interface Addend {
  readonly fractions: number[];
  weakness: number;
}

type Addends = Map<string, Map<string | null, Addend>>;

/**
 * The composition of a mixture: per source the sum over the inputs of (kg of the input / kg of all) x fraction.
 *
 * A source is as weakly known as the weakest way by which it came. Sources below `floor` go into the remainder of their role. Nothing is renormalised: the remainder is what keeps the
 * sum at 1 (within 1e-12). The result does not depend on the order of the inputs, to the last bit. Assumes a well-mixed
 * lot.
 *
 * @throws MassInvalid for a negative or unfinite mass, MassMissing when there is no mass at all.
 */
export const mixComposition = (inputs: readonly Ingredient[], floor = FLOOR): Composition => {
  const total = totalKg(inputs.map(({ kg }) => kg));
  const addends: Addends = new Map();
  for (const { kg, composition, weakness = 0 } of inputs) {
    for (const portion of composition) add(addends, portion, (kg / total) * portion.fraction, weakness);
  }
  return [...addends].flatMap(([role, sources]) => cutRole(role, sources, floor)).sort(byRoleThenSource);
};

const add = (addends: Addends, portion: Portion, fraction: number, weakness: number): void => {
  const sources = addends.get(portion.role) ?? new Map<string | null, Addend>();
  const addend = sources.get(portion.source) ?? { fractions: [], weakness: 0 };
  addend.fractions.push(fraction);
  addend.weakness = Math.max(addend.weakness, weakness, portion.weakness ?? 0);
  addends.set(portion.role, sources.set(portion.source, addend));
};

/** One role's portions: the sources at or above the floor, and a remainder when there is anything in it. */
const cutRole = (role: string, sources: ReadonlyMap<string | null, Addend>, floor: number): Portion[] => {
  const kept: Portion[] = [];
  const rest: Addend = { fractions: [], weakness: 0 };
  for (const [source, { fractions, weakness }] of sources) {
    const fraction = steadySum(fractions);
    if (source !== null && fraction >= floor && fraction > 0) kept.push(portionOf(source, role, fraction, weakness));
    else {
      rest.fractions.push(fraction);
      rest.weakness = Math.max(rest.weakness, weakness);
    }
  }
  const remainder = steadySum(rest.fractions);
  return remainder > 0 ? [...kept, portionOf(null, role, remainder, rest.weakness)] : kept;
};

const portionOf = (source: string | null, role: string, fraction: number, weakness: number): Portion =>
  weakness > 0 ? { source, role, fraction, weakness } : { source, role, fraction };
