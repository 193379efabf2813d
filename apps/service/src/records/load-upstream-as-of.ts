import type { EntityManager } from 'typeorm';
import { inputsFirst, resolveComposition, type LotNode } from '@hull-record/genealogy';
import { weaknessOf } from '../platform/composition/basis.js';
import { standing } from '../platform/facts/standing.js';

interface Row {
  readonly id: string;
  readonly tank: boolean;
  readonly role: string | null;
  readonly inputs: readonly { lot: string; kg: number; basis: string }[] | null;
}

const UP = `
  with recursive up(id) as (
    select unnest($1::uuid[])
    union
    select i.input_id from up join fact.lot_input i on i.lot_id = up.id and ${standing('i', '$2')}
  )
  select up.id, l.origin = 'tank' as tank, m.role,
    (select json_agg(json_build_object('lot', i.input_id, 'kg', i.kg, 'basis', i.basis) order by i.recorded_at, i.root)
      from fact.lot_input i where i.lot_id = up.id and ${standing('i', '$2')}) as inputs
  from up
  join fact.lot l on l.root = up.id and ${standing('l', '$2')}
  left join fact.material m on m.root = l.material_id and ${standing('m', '$2')}
  order by l.happened_at, l.code, up.id`;

/** Lots and all they are made of, as it was known at an instant. */
export interface Upstream {
  readonly graph: ReadonlyMap<string, LotNode>;
  /** Whether a tank is among them: then the paper says what it assumes of tanks. */
  readonly throughTank: boolean;
}

/**
 * Loads what lots are made of from the facts recorded by an instant, up to received lots.
 *
 * What is derived from facts follows the newest of them and cannot tell an earlier state. The composition of each tank
 * lot is worked out once on the way, as when the tank was filled.
 */
export const loadUpstreamAsOf = async (tx: EntityManager, lots: readonly string[], asOf: string): Promise<Upstream> => {
  const rows = await tx.query<Row[]>(UP, [lots, asOf]);
  const graph = new Map<string, LotNode>(rows.map((row) => [row.id, toNode(row)]));
  const tanks = new Set(rows.filter((row) => row.tank).map((row) => row.id));
  const order = inputsFirst(graph.keys(), (lot) => graph.get(lot)?.inputs.map((input) => input.lot) ?? []);
  for (const lot of order.filter((id) => tanks.has(id))) {
    graph.set(lot, { ...(graph.get(lot) as LotNode), known: resolveComposition(lot, graph) });
  }
  return { graph, throughTank: tanks.size > 0 };
};

const toNode = ({ id, role, inputs }: Row): LotNode => ({
  id,
  role: role ?? '',
  inputs: (inputs ?? []).map(({ basis, ...input }) => ({ ...input, weakness: weaknessOf(basis) })),
});
