import type { EntityManager } from 'typeorm';
import type { MakerData } from '@hull-record/contracts';
import { resolveComposition } from '@hull-record/genealogy';
import type { MaterialRole } from '@hull-record/trade';
import { loadUpstream } from '../composition/load-upstream.js';
import { standing } from '../facts/standing.js';
import { makerDataAt } from './maker-data.sql.js';

/** Kilograms of one material in something, whatever lots they came in, with what its maker says of it. */
export interface MaterialIn {
  readonly code: string;
  readonly name: string;
  readonly role: MaterialRole;
  readonly kg: number;
  readonly densityKgPerL: number | null;
  readonly makerData: MakerData;
}

const MATERIALS = `
  select l.root as lot, m.code, m.name, m.role, m.density_kg_per_l as "densityKgPerL", ${makerDataAt('m', '$2')} as "makerData"
  from fact.lot l join fact.material m on m.root = l.material_id and ${standing('m')}
  where l.root = any($1) and ${standing('l')}`;

type Row = Omit<MaterialIn, 'kg'> & { readonly lot: string };

/**
 * The materials in some amounts of lots, the most of each role first. What is unidentified has no material.
 *
 * @param at what the makers said by then
 */
export const materialsIn = async (
  tx: EntityManager,
  taken: readonly { readonly lot: string; readonly kg: number }[],
  at: Date,
): Promise<readonly MaterialIn[]> => {
  const graph = await loadUpstream(tx, [...new Set(taken.map(({ lot }) => lot))]);
  const kgOf = new Map<string, number>();
  for (const { lot, kg } of taken)
    for (const { source, fraction } of resolveComposition(lot, graph))
      if (source !== null) kgOf.set(source, (kgOf.get(source) ?? 0) + kg * fraction);
  const rows = await tx.query<Row[]>(MATERIALS, [[...kgOf.keys()], at]);
  const found = new Map<string, MaterialIn>();
  for (const { lot, ...material } of rows) {
    const kg = (found.get(material.code)?.kg ?? 0) + (kgOf.get(lot) ?? 0);
    found.set(material.code, { ...material, kg });
  }
  return [...found.values()].sort((a, b) => b.kg - a.kg || (a.code < b.code ? -1 : 1));
};
