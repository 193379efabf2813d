import { linksOf } from './links.js';
import type { Input } from './lot-graph.js';

/**
 * The cycle that putting `input` into `lot` would close, or null when it would close none.
 *
 * The path runs from the lot to itself, each made of the next: [lot, input, ..., lot], the shortest there is; a lot put
 * into itself gives [lot, lot]. `inputs` are those already recorded.
 */
export const wouldCycle = (lot: string, input: string, inputs: readonly Input[]): readonly string[] | null => {
  const inputsOf = linksOf(inputs.map((each) => [each.lot, each.input]));
  const madeInto = new Map([[input, lot]]);
  for (const [reached] of madeInto) {
    if (reached === lot) return [lot, ...pathDown(lot, input, madeInto).reverse()];
    for (const next of inputsOf.get(reached) ?? []) {
      if (!madeInto.has(next)) madeInto.set(next, reached);
    }
  }
  return null;
};

/** From a lot reached, back to the input the search began with. */
const pathDown = (reached: string, input: string, madeInto: ReadonlyMap<string, string>): string[] => {
  const path = [reached];
  for (let at = reached; at !== input;) {
    at = madeInto.get(at) ?? input;
    path.push(at);
  }
  return path;
};
