import type { EntityManager } from 'typeorm';
import { standing } from '../facts/standing.js';
import { uuidOrNull } from '../lookups/uuid-or-null.js';
import { NotThere } from '../refusals.js';

/** A lot as a trace begins with it. */
export interface AskedLot {
  readonly id: string;
  readonly code: string;
  /** Received, or unidentified: kilograms of it are kept by place. */
  readonly received: boolean;
}

/**
 * Finds a lot by code or id.
 *
 * @throws NotThere
 */
export const findLot = async (tx: EntityManager, lot: string): Promise<AskedLot> => {
  const [found] = await tx.query<AskedLot[]>(
    `select l.root as id, l.code, l.origin in ('received', 'unidentified') as received from fact.lot l
     where (l.code = $1 or l.root = ${uuidOrNull('$1::text')}) and ${standing('l')} order by l.recorded_at limit 1`,
    [lot],
  );
  if (!found) throw new NotThere('lot', lot);
  return found;
};
