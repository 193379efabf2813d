import { byCodeUnit } from './composition.js';
import { inputsFirst } from './inputs-first.js';
import { nodeOf } from './lot-graph.js';
import type { LotGraph } from './lot-graph.js';

/** The ways by which one lot came into another. */
export interface UpstreamPaths {
  /** Lot ids, each made of the next: the shortest path first, those of one length by lot ids. */
  readonly paths: readonly (readonly string[])[];
  /** True when there are more paths than the limit let through. */
  readonly truncated: boolean;
}

/** A path begun, as a chain back to where it began. */
interface Branch {
  readonly lot: string;
  readonly lots: number;
  readonly before: Branch | null;
}

/**
 * The paths from a used lot up to a lot it is made of, at most `limit` of them, the shortest first.
 *
 * A chain of diamonds has exponentially many paths. Only branches that lead to the goal are followed, always one that
 * can end soonest and the newest of those, so the work is at most about limit x depth x inputs of a lot. No path at all
 * gives an empty list. The answer does not depend on the order of the inputs.
 *
 * @throws LotUnknown when a lot upstream is not in the graph, LotCycle when one is made of itself.
 */
export const pathsUpstream = (from: string, to: string, graph: LotGraph, limit = 100): UpstreamPaths => {
  const lotsLeft = lotsToGoal(from, to, graph);
  const waiting: Branch[][] = [];
  const wait = (branch: Branch): void => {
    const left = lotsLeft.get(branch.lot);
    if (left !== undefined) (waiting[branch.lots + left] ??= []).push(branch);
  };
  wait({ lot: from, lots: 1, before: null });
  const paths: (readonly string[])[] = [];
  for (let length = 0; length < waiting.length; length++) {
    for (let branch = waiting[length]?.pop(); branch; branch = waiting[length]?.pop()) {
      if (paths.length >= limit) return { paths: paths.sort(byLengthThenLots), truncated: true };
      if (branch.lot === to) paths.push(lotsOf(branch));
      else for (const lot of distinctInputs(branch.lot, graph)) wait({ lot, lots: branch.lots + 1, before: branch });
    }
  }
  return { paths: paths.sort(byLengthThenLots), truncated: false };
};

/** How many more lots the shortest path to the goal has, for each lot upstream of `from` that leads there. */
const lotsToGoal = (from: string, to: string, graph: LotGraph): ReadonlyMap<string, number> => {
  const left = new Map<string, number>();
  for (const lot of inputsFirst([from], (each) => distinctInputs(each, graph))) {
    const fewest = Math.min(...distinctInputs(lot, graph).map((input) => left.get(input) ?? Infinity));
    if (lot === to) left.set(lot, 0);
    else if (fewest < Infinity) left.set(lot, fewest + 1);
  }
  return left;
};

/** Sorted, so that which paths are found under the limit does not depend on the order of the inputs. */
const distinctInputs = (lot: string, graph: LotGraph): readonly string[] =>
  [...new Set(nodeOf(lot, graph).inputs.map((input) => input.lot))].sort(byCodeUnit);

const lotsOf = (end: Branch): readonly string[] => {
  const lots: string[] = [];
  for (let branch: Branch | null = end; branch; branch = branch.before) lots.push(branch.lot);
  return lots.reverse();
};

const byLengthThenLots = (a: readonly string[], b: readonly string[]): number => {
  if (a.length !== b.length) return a.length - b.length;
  const differs = a.findIndex((lot, at) => lot !== b[at]);
  return differs < 0 ? 0 : byCodeUnit(a[differs] ?? '', b[differs] ?? '');
};
