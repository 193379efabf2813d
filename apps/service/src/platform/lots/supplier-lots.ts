import type { EntityManager } from 'typeorm';
import { resolveComposition, type LotNode } from '@hull-record/genealogy';
import { standing } from '../facts/standing.js';

/** A supplier's lot behind a lot, and how much of the lot's mass it is. */
export interface SupplierLot {
  readonly supplierLot: string;
  readonly material: string;
  readonly fraction: number;
}

const NAMES = `
  select l.root,
    coalesce(l.supplier_lot, case when l.origin = 'unidentified' then 'unidentified, ' || l.code else l.code end) as supplier_lot,
    coalesce(m.name, case when l.origin = 'unidentified' then coalesce(l.role, 'material') || ' that nobody could name' else '' end) as name
  from fact.lot l
  left join fact.material m on m.root = l.material_id and ${standing('m', '$2')}
  where l.root = any($1) and ${standing('l', '$2')}`;

/**
 * The suppliers' lots that each lot is made of, the largest first. Material that nobody could name stands as such, under its own
 * code, and what came without a supplier's lot under ours.
 */
export const supplierLotsOf = async (
  tx: EntityManager,
  lots: readonly string[],
  graph: ReadonlyMap<string, LotNode>,
  asOf: string,
): Promise<ReadonlyMap<string, readonly SupplierLot[]>> => {
  const compositions = lots.map((lot) => [lot, resolveComposition(lot, graph)] as const);
  const sources = [...new Set(compositions.flatMap(([, portions]) => portions.flatMap(({ source }) => source ?? [])))];
  const rows = await tx.query<{ root: string; supplier_lot: string; name: string | null }[]>(NAMES, [sources, asOf]);
  const names = new Map(rows.map((row) => [row.root, row]));
  const named = (portions: ReturnType<typeof resolveComposition>): SupplierLot[] =>
    portions
      .flatMap(({ source, fraction }) => {
        const name = source === null ? undefined : names.get(source);
        return name ? [{ supplierLot: name.supplier_lot, material: name.name ?? '', fraction }] : [];
      })
      .sort((a, b) => b.fraction - a.fraction || (a.supplierLot < b.supplierLot ? -1 : 1));
  return new Map(compositions.map(([lot, portions]) => [lot, named(portions)]));
};
