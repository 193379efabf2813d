import { FLOOR, receivedComposition } from './composition.js';
import type { Composition } from './composition.js';
import { inputsFirst } from './inputs-first.js';
import { nodeOf } from './lot-graph.js';
import type { LotGraph, LotNode } from './lot-graph.js';
import { mixComposition } from './mix-composition.js';

/**
 * Floor for the lots between, far below the one of the answer: 1e-24.
 *
 * Cut at the answer's floor on the way, a source that comes in small amounts by several paths would be missing although
 * their sum counts. What is lost below this one is less than 1e-15 of anything in the answer, per lot on the way.
 */
const CARRIED_FLOOR = 1e-24;

/**
 * What a lot is made of, walked up its inputs to received lots and to compositions already known.
 *
 * A lot without inputs is a source. Compositions already known are taken as they are: what was below their floor stays
 * in their remainder, so near the floor an answer built on them can be less than one walked to the end. Chains may be
 * thousands of lots deep.
 *
 * @throws LotUnknown when a lot on the way is not in the graph, LotCycle when one is made of itself, MassInvalid and
 *   MassMissing when inputs have no usable mass.
 */
export const resolveComposition = (lot: string, graph: LotGraph, floor = FLOOR): Composition => {
  const found = new Map<string, Composition>();
  for (const id of inputsFirst([lot], (each) => inputsToWalk(nodeOf(each, graph)))) {
    found.set(id, compositionOf(nodeOf(id, graph), found));
  }
  return mixComposition([{ kg: 1, composition: found.get(lot) ?? [] }], floor);
};

const inputsToWalk = ({ known, inputs }: LotNode): readonly string[] => (known ? [] : inputs.map(({ lot }) => lot));

const compositionOf = ({ id, role, known, inputs }: LotNode, found: ReadonlyMap<string, Composition>): Composition => {
  if (known) return known;
  if (inputs.length === 0) return receivedComposition(id, role);
  const ingredients = inputs.map(({ lot, ...amount }) => ({ ...amount, composition: found.get(lot) ?? [] }));
  return mixComposition(ingredients, CARRIED_FLOOR);
};
