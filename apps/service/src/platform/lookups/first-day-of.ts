import type { EntityManager } from 'typeorm';

/**
 * The first day on which something can have befallen a hull or part: the day on which it was begun by the clock of the
 * plant, less one, as zones may differ by a day.
 */
export const firstDayOf = async (tx: EntityManager, table: 'hull' | 'part', id: string): Promise<string> => {
  const [row] = await tx.query<{ day: string }[]>(
    `select ((x.happened_at at time zone p.time_zone)::date - 1)::text as day
      from fact.${table} x join fact.plant p on p.id = x.plant_id where x.id = $1`,
    [id],
  );
  return row?.day ?? '';
};
