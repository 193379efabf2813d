import type { EntityManager } from 'typeorm';
import { standing } from '../platform/facts/standing.js';
import { stateOrDefault } from '../platform/lots/find-lots.js';

/** A received lot in words. */
export interface DescribedLot {
  readonly lotId: string;
  readonly lot: string;
  readonly supplier: string | null;
  readonly supplierLot: string | null;
  readonly material: string | null;
  readonly state: string | null;
}

/** Received lots in words, by id. */
export const describeLots = async (
  tx: EntityManager,
  ids: readonly string[],
): Promise<ReadonlyMap<string, DescribedLot>> => {
  const rows = await tx.query<DescribedLot[]>(
    `select l.root as "lotId", l.code as lot, l.supplier, l.supplier_lot as "supplierLot", m.name as material,
       ${stateOrDefault('l', "'infinity'")} as state
     from fact.lot l left join fact.material m on m.root = l.material_id and ${standing('m')}
     where l.root = any($1) and ${standing('l')}`,
    [ids],
  );
  return new Map(rows.map((row) => [row.lotId, row]));
};
