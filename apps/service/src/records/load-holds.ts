import { isDisposed, type HullDisposition } from '@hull-record/trade';
import type { EntityManager } from 'typeorm';
import { standing } from '../platform/facts/standing.js';
import { findHold } from '../platform/holds/find-hold.js';
import { reachOfHold } from '../platform/holds/reach-of-hold.js';

/** A hold that a hull waits for. */
export interface OpenHold {
  readonly id: string;
  readonly kind: string;
}

interface Row extends OpenHold {
  readonly said: HullDisposition | null;
}

/** Holds of lots `$2` in hull `$1`, and those that reached it when they were placed, neither lifted nor closed by `$3`. */
const HOLDS = `
  select h.root as id, h.kind, (
    select d.what from fact.hold_disposition d where d.hold_id = h.root and d.hull_id = $1 and ${standing('d', '$3')}
    order by d.happened_at desc, d.recorded_at desc, d.id desc limit 1) as said
  from fact.hold h
  where ${standing('h', '$3')} and not exists (select from fact.hold_lift o where o.hold_id = h.root and ${standing('o', '$3')})
    and (h.lot_id = any($2::uuid[]) or exists (
      select from fact.hold_reached r left join fact.joint j on j.part_id = r.part_id and ${standing('j', '$3')}
      where r.hold_id = h.root and coalesce(r.hull_id, j.hull_id) = $1 and ${standing('r', '$3')}))
  order by h.happened_at, h.root`;

/**
 * The holds that a hull waits for, of those recorded by an instant: it is not disposed of under them. How far a hold reaches
 * is asked as of now: what went where is not kept of earlier days.
 */
export const loadOpenHolds = async (
  tx: EntityManager,
  { hullId, lots }: { readonly hullId: string; readonly lots: readonly string[] },
  asOf: string,
): Promise<readonly OpenHold[]> => {
  const open: OpenHold[] = [];
  for (const { id, kind, said } of await tx.query<Row[]>(HOLDS, [hullId, lots, asOf])) {
    if (isDisposed(null, said)) continue;
    const hold = await findHold(tx, id);
    const [owner] = await reachOfHold(tx, hold, hold.scope, hullId);
    if (owner?.reached) open.push({ id, kind });
  }
  return open;
};
