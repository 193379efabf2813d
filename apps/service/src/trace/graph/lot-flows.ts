import { fractionsDownstream, massesUpstream, type LotGraph } from '@hull-record/genealogy';
import { addKg, sumWays, type Flow, type Flows } from './flow.js';
import type { UsedOnOwner } from './used-of-lots.js';

/** What the flows of a lot are worked out from. */
export interface LotFacts {
  readonly id: string;
  /** kg that there were of it. */
  readonly kg: number;
  /** The lot and all made of it, with all inputs of each. */
  readonly downstream: LotGraph;
  /** The lot and all that it is made of. */
  readonly upstream: LotGraph;
}

/** The mass fraction of the lot in all that was made of it, itself included. */
export const fractionsOf = ({ id, downstream }: LotFacts): ReadonlyMap<string, number> =>
  fractionsDownstream(id, downstream);

/**
 * Kilograms of a lot on every way it went, and of what it is made of on every way there.
 *
 * A way from a lot into another carries what of the lot asked about was in it: so less goes out of a lot than came in
 * when some of it is left or lost.
 */
export const lotFlows = (
  facts: LotFacts,
  fractions: ReadonlyMap<string, number>,
  used: readonly UsedOnOwner[],
): Flows => {
  const { id, kg, downstream, upstream } = facts;
  const before = massesUpstream(new Map([[id, kg]]), upstream);
  const ways: Flow[] = before.steps.map((step) => ({ from: step.input, to: step.lot, kg: step.kg }));
  for (const lot of fractions.keys()) {
    if (lot === id) continue;
    for (const input of downstream.get(lot)?.inputs ?? []) {
      const fraction = fractions.get(input.lot);
      if (fraction !== undefined) ways.push({ from: input.lot, to: lot, kg: input.kg * fraction });
    }
  }
  for (const use of used) ways.push({ from: use.lot, to: use.owner, kg: use.kg * (fractions.get(use.lot) ?? 0) });
  const lots = new Map(before.masses);
  const owners = new Map<string, number>();
  for (const way of ways.slice(before.steps.length)) addKg(fractions.has(way.to) ? lots : owners, way.to, way.kg);
  return { lots, owners, ways: sumWays(ways) };
};
