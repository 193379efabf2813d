import type { EntityManager } from 'typeorm';
import { standing } from '../facts/standing.js';

/**
 * SQL: kilograms left of a lot by the book: what it was, and adjustments, less what was used or went into other lots.
 *
 * @param lot SQL of its id; an alias in it must be none of `booked`, `a`, `u`, `i`, which would be taken for the inner ones
 */
export const bookKg = (lot: string): string => `(
  (select booked.kg from fact.lot booked where booked.root = ${lot} and ${standing('booked')})
  + coalesce((select sum(a.kg) from fact.lot_adjustment a where a.lot_id = ${lot} and ${standing('a')}), 0)
  - coalesce((select sum(u.kg) from fact.used u where u.lot_id = ${lot} and ${standing('u')}), 0)
  - coalesce((select sum(i.kg) from fact.lot_input i where i.input_id = ${lot} and ${standing('i')}), 0))`;

/** Kilograms left of a lot by the book; negative is an overdraw, which asks for a count. */
export const bookKgOf = async (tx: EntityManager, lotId: string): Promise<number> => {
  const [row] = await tx.query<{ kg: number }[]>(`select ${bookKg('$1::uuid')} as kg`, [lotId]);
  return row?.kg ?? 0;
};
