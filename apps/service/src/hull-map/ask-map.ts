import type { EntityManager } from 'typeorm';
import type { MapFilter, Recomputing } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { partsWithLot } from '../platform/reach/parts-with-lot.js';
import { recomputingDownstream } from '../platform/recompute/recomputing.js';
import { NotThere } from '../platform/refusals.js';

/** A filter as parameters of SQL, in the order of `FOUND_DEFECTS`. */
export interface AskedMap {
  readonly parameters: readonly unknown[];
  /** Whether which parts hold the lot is being worked out anew. */
  readonly recomputing: Recomputing | null;
}

/**
 * Finds what a filter names.
 *
 * @throws NotThere when there is no such model or lot
 */
export const askMap = async (tx: EntityManager, model: string, filter: MapFilter): Promise<AskedMap> => {
  const known: unknown[] = await tx.query(`select from fact.model m where m.code = $1 and ${standing('m')}`, [model]);
  if (known.length === 0) throw new NotThere('model', model);
  const held = filter.lot === undefined ? null : await partsWithLot(tx, filter.lot);
  return {
    parameters: [
      ...[model, filter.partKind, filter.mold ?? null, held?.parts ?? null],
      ...[filter.kind ?? null, filter.layer ?? null, filter.from ?? null, filter.until ?? null],
      ...[filter.surface ?? null, filter.alongFrom ?? null, filter.alongTo ?? null],
      ...[filter.acrossFrom ?? null, filter.acrossTo ?? null],
    ],
    recomputing: held === null ? null : await recomputingDownstream(tx, held.lot),
  };
};
