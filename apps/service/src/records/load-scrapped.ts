import type { EntityManager } from 'typeorm';
import { standing } from '../platform/facts/standing.js';

/** Why parts were scrapped, by part; the others are not in the map. */
export const loadScrapped = async (
  tx: EntityManager,
  parts: readonly string[],
  asOf: string,
): Promise<ReadonlyMap<string, string>> => {
  const rows = await tx.query<{ part_id: string; reason: string }[]>(
    `select s.part_id, s.reason from fact.part_scrapped s where s.part_id = any($1) and ${standing('s', '$2')}`,
    [parts, asOf],
  );
  return new Map(rows.map((row) => [row.part_id, row.reason]));
};
