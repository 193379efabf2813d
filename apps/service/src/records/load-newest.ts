import type { EntityManager } from 'typeorm';
import { TOUCHED, touchedBy, type Drawn } from './touched.sql.js';

const NEWEST = `
  with ${TOUCHED}
  select max(recorded_at) as at from (
    select recorded_at from touched
    union all select c.recorded_at from corrections k join fact.correction c on c.id = k.id) found`;

/**
 * When the newest fact of a hull was recorded, of those recorded by an instant: the moment whose state is drawn.
 *
 * Drawn as of that moment, the record is the same.
 */
export const loadNewest = async (tx: EntityManager, drawn: Drawn, asOf: string): Promise<Date> => {
  const [row] = await tx.query<[{ at: Date }]>(NEWEST, [...touchedBy(drawn, asOf)]);
  return row.at;
};
