import { lotsInOrder } from './facts.js';
import type { WalkFacts } from './facts.js';
import { massesUpstream } from './masses-upstream.js';
import { ONE } from './rational.js';
import type { Rational } from './rational.js';

/**
 * The exact mass fraction of every source in a lot, uncut: a fraction may be far below the smallest double.
 *
 * A source's own composition is itself, 1. A lot that is not among the facts gives an error.
 */
export const walkComposition = (lot: string, facts: WalkFacts): ReadonlyMap<string, Rational> => {
  const ordered = lotsInOrder(facts);
  if (!ordered.some(({ id }) => id === lot)) throw new Error(`No lot ${lot} among the facts.`);
  const sources = new Set(ordered.filter(({ inputs }) => inputs.length === 0).map(({ id }) => id));
  return new Map([...massesUpstream(new Map([[lot, ONE]]), ordered)].filter(([id]) => sources.has(id)));
};
