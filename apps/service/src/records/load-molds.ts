import type { EntityManager } from 'typeorm';
import { standing } from '../platform/facts/standing.js';

/** The mold of a part as it was when the part was begun. */
export interface MoldThen {
  readonly part_id: string;
  /** 1, and one more for each rework before. */
  readonly state: number;
  /** How many parts were begun in it by then, this one included. */
  readonly pull: number;
  /** What was done to it last. */
  readonly care: string | null;
  readonly cared_at: Date | null;
}

const MOLDS = `
  select p.id as part_id,
    (select count(*)::int from fact.part b where b.mold_id = p.mold_id and b.happened_at <= p.happened_at and ${standing('b', '$2')}) as pull,
    (select count(*)::int + 1 from fact.mold_care r where r.mold_id = p.mold_id and r.what = 'reworked'
      and r.happened_at <= p.happened_at and ${standing('r', '$2')}) as state,
    c.what as care, c.happened_at as cared_at
  from fact.part p
  left join lateral (select k.* from fact.mold_care k where k.mold_id = p.mold_id and k.happened_at <= p.happened_at
    and ${standing('k', '$2')} order by k.happened_at desc, k.id limit 1) c on true
  where p.id = any($1)`;

/** Molds of parts as they were then, by part, as recorded by an instant. */
export const loadMolds = async (
  tx: EntityManager,
  parts: readonly string[],
  asOf: string,
): Promise<ReadonlyMap<string, MoldThen>> => {
  const rows = await tx.query<MoldThen[]>(MOLDS, [parts, asOf]);
  return new Map(rows.map((row) => [row.part_id, row]));
};
