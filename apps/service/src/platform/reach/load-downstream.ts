import type { EntityManager } from 'typeorm';
import type { LotNode } from '@hull-record/genealogy';
import { weaknessOf } from '../composition/basis.js';
import { standing } from '../facts/standing.js';

const DOWN = `
  with recursive down(id) as (
    select $1::uuid
    union
    select i.lot_id from down join fact.lot_input i on i.input_id = down.id and ${standing('i')}
  )
  select i.lot_id as lot, case when i.input_id = $1 and i.container_id = $2::uuid then $2::uuid else i.input_id end as input, i.kg, i.basis
  from down join fact.lot_input i on i.lot_id = down.id and ${standing('i')}`;

interface InputRow {
  readonly lot: string;
  readonly input: string;
  readonly kg: number;
  readonly basis: string;
}

/**
 * Loads a lot and all made of it, each with all its inputs; lots that are not made of it stand as bare sources.
 *
 * @param sourceId where the walk begins: the lot, or one container of it, which is then an input of its own
 */
export const loadDownstream = async (
  tx: EntityManager,
  lotId: string,
  sourceId = lotId,
): Promise<ReadonlyMap<string, LotNode>> => {
  const rows = await tx.query<InputRow[]>(DOWN, [lotId, sourceId]);
  const graph = new Map<string, LotNode & { readonly inputs: LotNode['inputs'][number][] }>([
    [sourceId, { id: sourceId, role: '', inputs: [] }],
  ]);
  const nodeOf = (id: string): { readonly inputs: LotNode['inputs'][number][] } => {
    const node = graph.get(id) ?? { id, role: '', inputs: [] };
    graph.set(id, node);
    return node;
  };
  for (const { lot, input, kg, basis } of rows) {
    if (lot === sourceId) continue;
    nodeOf(lot).inputs.push({ lot: input, kg, weakness: weaknessOf(basis) });
    nodeOf(input);
  }
  return graph;
};
