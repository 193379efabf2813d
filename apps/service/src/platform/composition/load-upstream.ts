import type { EntityManager } from 'typeorm';
import type { Composition, LotNode } from '@hull-record/genealogy';
import { weaknessOf } from './basis.js';
import { standing } from '../facts/standing.js';

interface Row {
  readonly id: string;
  readonly role: string | null;
  readonly inputs: readonly { lot: string; kg: number; basis: string }[] | null;
  readonly known: readonly { source: string | null; role: string; fraction: number; basis: string }[] | null;
}

const UP = `
  with recursive up(id) as (
    select unnest($1::uuid[])
    union
    select i.input_id from up join fact.lot_input i on i.lot_id = up.id and ${standing('i')}
    where up.id = any($2::uuid[]) or not exists (select from derived.composed_lot c where c.lot_id = up.id)
  )
  select up.id, coalesce(m.role, l.role) as role,
    (select json_agg(json_build_object('lot', i.input_id, 'kg', i.kg, 'basis', i.basis))
      from fact.lot_input i where i.lot_id = up.id and ${standing('i')}) as inputs,
    (select json_agg(json_build_object('source', c.source_id, 'role', c.role, 'fraction', c.fraction, 'basis', c.basis))
      from derived.composed_lot v join derived.lot_composition c on c.lot_id = v.lot_id and c.version = v.version
      where v.lot_id = up.id and up.id <> all($2::uuid[])) as known
  from up
  join fact.lot l on l.root = up.id and ${standing('l')}
  left join fact.material m on m.root = l.material_id and ${standing('m')}`;

const toNode = ({ id, role, inputs, known }: Row): LotNode => ({
  id,
  role: role ?? '',
  ...(known
    ? {
        known: known.map(({ basis, ...portion }) => ({
          ...portion,
          weakness: weaknessOf(basis),
        })) satisfies Composition,
      }
    : {}),
  inputs: (inputs ?? []).map(({ basis, ...input }) => ({ ...input, weakness: weaknessOf(basis) })),
});

/**
 * Loads what lots are made of, up to received lots and to tank lots whose composition is kept.
 *
 * @param afresh lots whose kept composition is not to be used
 */
export const loadUpstream = async (
  tx: EntityManager,
  lots: readonly string[],
  afresh: readonly string[] = [],
): Promise<Map<string, LotNode>> => {
  const rows = await tx.query<Row[]>(UP, [lots, afresh]);
  return new Map(rows.map((row) => [row.id, toNode(row)]));
};
