import type { EntityManager } from 'typeorm';
import { resolveComposition } from '@hull-record/genealogy';
import { supplierLotsOf, type SupplierLot } from '../platform/lots/supplier-lots.js';
import { loadUpstreamAsOf } from './load-upstream-as-of.js';

/** What a lot that was used is made of. */
export interface MadeOf {
  /** The largest first. */
  readonly supplierLots: readonly SupplierLot[];
  /** Of the weakest basis on any way from a source to it. */
  readonly weakness: number;
}

/** What the lots of a hull are made of, as it was known at an instant. */
export interface MadeOfLots {
  readonly byLot: ReadonlyMap<string, MadeOf>;
  /** Every lot drawn on, received or made. */
  readonly lots: readonly string[];
  readonly throughTank: boolean;
}

/** Works out what lots are made of, from the facts recorded by an instant. */
export const loadMadeOf = async (tx: EntityManager, used: readonly string[], asOf: string): Promise<MadeOfLots> => {
  const lots = [...new Set(used)];
  const { graph, throughTank } = await loadUpstreamAsOf(tx, lots, asOf);
  const supplierLots = await supplierLotsOf(tx, lots, graph, asOf);
  const madeOf = (lot: string): MadeOf => ({
    supplierLots: supplierLots.get(lot) ?? [],
    weakness: Math.max(0, ...resolveComposition(lot, graph).map((portion) => portion.weakness ?? 0)),
  });
  return { byLot: new Map(lots.map((lot) => [lot, madeOf(lot)])), lots: [...graph.keys()], throughTank };
};
