import type { EntityManager } from 'typeorm';
import type { LotNode } from '@hull-record/genealogy';
import { standing } from '../platform/facts/standing.js';
import type { PathStep } from './path-step.js';

const UP = `
  with recursive up(id) as (
    select unnest($1::uuid[])
    union
    select i.input_id from up join fact.lot_input i on i.lot_id = up.id and ${standing('i')}
  )
  select up.id, l.code, l.origin,
    coalesce((select json_agg(json_build_object('lot', i.input_id, 'kg', i.kg)) from fact.lot_input i where i.lot_id = up.id and ${standing('i')}), '[]') as inputs
  from up join fact.lot l on l.root = up.id and ${standing('l')}`;

interface Row {
  readonly id: string;
  readonly code: string;
  readonly origin: string;
  readonly inputs: { lot: string; kg: number }[];
}

/** Loads all that lots are made of, past tanks too: for showing ways, not for working out fractions. */
export const loadAllUpstream = async (
  tx: EntityManager,
  lots: readonly string[],
): Promise<{ graph: ReadonlyMap<string, LotNode>; names: ReadonlyMap<string, PathStep> }> => {
  const rows = await tx.query<Row[]>(UP, [lots]);
  return {
    graph: new Map(rows.map(({ id, inputs }) => [id, { id, role: '', inputs }])),
    names: new Map(rows.map(({ id, code, origin }) => [id, { lot: code, origin }])),
  };
};
