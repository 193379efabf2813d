import type { EntityManager } from 'typeorm';
import { standing } from '../platform/facts/standing.js';

export interface LastFill {
  readonly id: string;
  readonly happened_at: Date;
}

/** The newest fill of a tank that stands and had happened by an instant. */
export const fillBefore = async (tx: EntityManager, tankId: string, at: Date): Promise<LastFill | undefined> => {
  const [found] = await tx.query<LastFill[]>(
    `select l.root as id, l.happened_at from fact.lot l where l.tank_id = $1 and l.happened_at <= $2 and ${standing('l')}
     order by l.happened_at desc, l.fill_number desc limit 1`,
    [tankId, at],
  );
  return found;
};

/** One more than any fill of the tank has: numbers are never used twice, also when a fill is withdrawn. */
export const nextFillNumber = async (tx: EntityManager, tankId: string): Promise<number> => {
  const [row] = await tx.query<[{ next: number }]>(
    'select coalesce(max(fill_number), 0) + 1 as next from fact.lot where tank_id = $1',
    [tankId],
  );
  return row.next;
};
