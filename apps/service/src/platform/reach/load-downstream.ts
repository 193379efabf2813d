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
  select i.lot_id as lot, i.input_id as input, i.kg, i.basis
  from down join fact.lot_input i on i.lot_id = down.id and ${standing('i')}`;

interface InputRow {
  readonly lot: string;
  readonly input: string;
  readonly kg: number;
  readonly basis: string;
}

/** Loads a lot and all made of it, each with all its inputs; lots that are not made of it stand as bare sources. */
export const loadDownstream = async (tx: EntityManager, lotId: string): Promise<ReadonlyMap<string, LotNode>> => {
  const rows = await tx.query<InputRow[]>(DOWN, [lotId]);
  const graph = new Map<string, LotNode & { readonly inputs: LotNode['inputs'][number][] }>([
    [lotId, { id: lotId, role: '', inputs: [] }],
  ]);
  const nodeOf = (id: string): { readonly inputs: LotNode['inputs'][number][] } => {
    const node = graph.get(id) ?? { id, role: '', inputs: [] };
    graph.set(id, node);
    return node;
  };
  for (const { lot, input, kg, basis } of rows) {
    if (lot === lotId) continue;
    nodeOf(lot).inputs.push({ lot: input, kg, weakness: weaknessOf(basis) });
    nodeOf(input);
  }
  return graph;
};
