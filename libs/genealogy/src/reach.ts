import { FLOOR } from './composition.js';
import { inputsFirst } from './inputs-first.js';
import { closure, linksOf } from './links.js';
import type { Links } from './links.js';
import { nodeOf } from './lot-graph.js';
import type { Input, LotGraph, LotNode } from './lot-graph.js';
import { steadySum, totalKg } from './mass.js';

/**
 * The mass fraction of a lot, received or made, in every lot made of it, directly or through others; 1 for itself.
 *
 * The graph must hold every lot downstream with all of its inputs; known compositions are not looked at. Fractions below
 * the floor are left out (`membersDownstream` has those lots too); no fraction is cut on the way.
 *
 * @throws LotUnknown when the lot is not in the graph, LotCycle when a lot downstream is made of itself, MassInvalid and
 *   MassMissing when inputs have no usable mass.
 */
export const fractionsDownstream = (source: string, graph: LotGraph, floor = FLOOR): ReadonlyMap<string, number> => {
  nodeOf(source, graph);
  const members = closure(source, consumersIn(graph));
  const inputsOf = (lot: string) =>
    nodeOf(lot, graph)
      .inputs.map((input) => input.lot)
      .filter((id) => members.has(id));
  const fractions = new Map<string, number>();
  for (const lot of inputsFirst(members, inputsOf)) {
    fractions.set(lot, lot === source ? 1 : fractionIn(nodeOf(lot, graph), fractions));
  }
  return new Map([...fractions].filter(([, fraction]) => fraction > 0 && fraction >= floor));
};

/** All lots made of a lot, directly or through others, itself included, however little of it they hold. */
export const membersDownstream = (source: string, inputs: readonly Input[]): ReadonlySet<string> =>
  closure(source, linksOf(inputs.map(({ lot, input }) => [input, lot])));

/** All lots that a lot is made of, directly or through others, itself included. */
export const lotsUpstream = (lot: string, inputs: readonly Input[]): ReadonlySet<string> =>
  closure(lot, linksOf(inputs.map((each) => [each.lot, each.input])));

const fractionIn = ({ inputs }: LotNode, fractions: ReadonlyMap<string, number>): number => {
  const total = totalKg(inputs.map(({ kg }) => kg));
  return steadySum(inputs.map(({ lot, kg }) => (kg / total) * (fractions.get(lot) ?? 0)));
};

const consumersIn = (graph: LotGraph): Links =>
  linksOf([...graph.values()].flatMap(({ id, inputs }) => inputs.map(({ lot }): [string, string] => [lot, id])));
