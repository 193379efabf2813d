import type { EntityManager } from 'typeorm';
import { standing } from '../platform/facts/standing.js';

export interface LastFill {
  readonly id: string;
  readonly fill_number: number;
  readonly happened_at: Date;
}

/** The newest fill of a tank that stands. Numbers are never used twice, also when a fill is withdrawn. */
export const lastFill = async (tx: EntityManager, tankId: string): Promise<LastFill | undefined> => {
  const [found] = await tx.query<LastFill[]>(
    `select l.root as id, (select max(fill_number) from fact.lot where tank_id = $1) as fill_number, l.happened_at
     from fact.lot l where l.tank_id = $1 and ${standing('l')} order by l.happened_at desc, l.fill_number desc limit 1`,
    [tankId],
  );
  return found;
};
