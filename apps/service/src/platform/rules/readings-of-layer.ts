import type { EntityManager } from 'typeorm';
import { standing } from '../facts/standing.js';

/**
 * The newest reading of each spot of a layer, in the SI unit of its kind; of a gauge interval, the highest wetted step.
 */
export const newestReadings = async (tx: EntityManager, layer: string, what: string): Promise<readonly number[]> => {
  const rows = await tx.query<{ value: number }[]>(
    `select distinct on (g.spot) g.si_value as value from fact.reading g
     where g.of_id = $1 and g.what = $2 and ${standing('g')} order by g.spot, g.happened_at desc, g.recorded_at desc, g.id`,
    [layer, what],
  );
  return rows.map(({ value }) => value);
};
