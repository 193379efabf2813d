import { inputsFirst } from './inputs-first.js';
import { nodeOf } from './lot-graph.js';
import type { Input, LotGraph } from './lot-graph.js';
import { totalKg } from './mass.js';

/** What stands behind given masses of some lots. */
export interface MassesUpstream {
  /** kg of every lot that the given masses come from, the given ones included; kg of a mixture and of its inputs overlap. */
  readonly masses: ReadonlyMap<string, number>;
  /** Each step on the way: kg of the input that came by way of the lot. The same input twice is one step. */
  readonly steps: readonly Input[];
}

/**
 * Walks given masses (kg, by lot) back to what they were made of: what a lot weighs is split over its inputs as it was
 * made. Nothing is cut; known compositions are not looked at, so that every lot on the way is seen.
 *
 * @throws LotUnknown when a lot upstream is not in the graph, LotCycle when one is made of itself, MassInvalid and
 *   MassMissing when inputs have no usable mass.
 */
export const massesUpstream = (given: ReadonlyMap<string, number>, graph: LotGraph): MassesUpstream => {
  const masses = new Map(given);
  const steps: Input[] = [];
  const order = inputsFirst(given.keys(), (lot) => nodeOf(lot, graph).inputs.map((input) => input.lot));
  for (const lot of order.toReversed()) {
    for (const step of stepsOf(lot, masses.get(lot) ?? 0, graph)) {
      masses.set(step.input, (masses.get(step.input) ?? 0) + step.kg);
      steps.push(step);
    }
  }
  return { masses, steps };
};

const stepsOf = (lot: string, kg: number, graph: LotGraph): readonly Input[] => {
  const { inputs } = nodeOf(lot, graph);
  if (inputs.length === 0) return [];
  const total = totalKg(inputs.map((input) => input.kg));
  const own = new Map<string, number>();
  for (const input of inputs) own.set(input.lot, (own.get(input.lot) ?? 0) + (input.kg / total) * kg);
  return [...own].map(([input, part]) => ({ lot, input, kg: part }));
};
