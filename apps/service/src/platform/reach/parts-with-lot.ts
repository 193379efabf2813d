import type { EntityManager } from 'typeorm';
import { findLot } from './find-lot.js';
import { placesOfMadeLot } from './places-of-made-lot.js';

/** A lot and the parts that hold at least 1e-9 of it in something that was used on them. */
export interface PartsWithLot {
  readonly lot: string;
  readonly parts: readonly string[];
}

/**
 * Finds the parts that hold some of a lot, named by code or id.
 *
 * @throws NotThere
 */
export const partsWithLot = async (tx: EntityManager, lot: string): Promise<PartsWithLot> => {
  const { id, received } = await findLot(tx, lot);
  if (!received) {
    const places = await placesOfMadeLot(tx, id);
    return { lot: id, parts: [...new Set(places.map(({ partId }) => partId))] };
  }
  const rows = await tx.query<{ part_id: string }[]>(
    'select distinct s.part_id from derived.place_source s where s.source_id = $1',
    [id],
  );
  return { lot: id, parts: rows.map((row) => row.part_id) };
};
