import type { EntityManager } from 'typeorm';
import { standing } from '../platform/facts/standing.js';
import { stateOrDefault } from '../platform/lots/find-lots.js';

/** A lot in words. */
export interface DescribedLot {
  readonly lotId: string;
  readonly lot: string;
  readonly supplier: string | null;
  readonly supplierLot: string | null;
  readonly material: string | null;
  readonly state: string | null;
  readonly origin: string;
  /** Of a received or unidentified lot; a made lot has the roles of what it is made of. */
  readonly role: string | null;
  readonly kg: number | null;
  readonly at: Date;
}

/** Lots in words, by id. */
export const describeLots = async (
  tx: EntityManager,
  ids: readonly string[],
): Promise<ReadonlyMap<string, DescribedLot>> => {
  const rows = await tx.query<DescribedLot[]>(
    `select l.root as "lotId", l.code as lot, l.supplier, l.supplier_lot as "supplierLot", m.name as material,
       ${stateOrDefault('l', "'infinity'")} as state,
       l.origin, coalesce(m.role, l.role) as role, l.kg, l.happened_at as at
     from fact.lot l left join fact.material m on m.root = l.material_id and ${standing('m')}
     where l.root = any($1) and ${standing('l')}`,
    [ids],
  );
  return new Map(rows.map((row) => [row.lotId, row]));
};
