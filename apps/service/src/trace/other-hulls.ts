import type { EntityManager } from 'typeorm';
import { standing } from '../platform/facts/standing.js';

const FIND = `
  select s.source_id, array_agg(distinct n.as_printed order by n.as_printed) as hulls
  from derived.place_source s
  join fact.joint j on j.part_id = s.part_id and ${standing('j')}
  join fact.hull_number n on n.hull_id = j.hull_id and n.kind = 'hull number'
  where s.source_id = any($1) and j.hull_id is distinct from $2
  group by s.source_id`;

/** Numbers of the hulls, other than one, that hold each of these lots. */
export const otherHullsWith = async (
  tx: EntityManager,
  sources: readonly string[],
  hullId: string | null,
): Promise<ReadonlyMap<string, string[]>> => {
  const rows = await tx.query<{ source_id: string; hulls: string[] }[]>(FIND, [sources, hullId]);
  return new Map(rows.map((row) => [row.source_id, row.hulls]));
};
