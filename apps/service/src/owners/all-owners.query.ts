import { Injectable } from '@nestjs/common';
import type { ListAllOwnersQuery, OwnerLine, OwnersPage } from '@hull-record/contracts';
import { DataSource, type EntityManager } from 'typeorm';
import { now } from '../platform/clock.js';
import { readTimeCursor, toPage } from '../platform/http/cursor.js';
import { findHull } from '../platform/lookups/find-hull.js';
import { keepsData } from '../platform/life/keeps-data.js';

/** SQL of an owner with what is kept, withdrawn or not. */
export const OWNER = `
  select o.root as id, o.hull_id as "hullId", o.what, o.happened_at as since, w.detail, m.code as model,
    (select n.as_printed from fact.hull_number n where n.hull_id = o.hull_id and n.kind = 'hull number') as hull,
    case when w.owner_id is null then 'erased'
      when exists (select from fact.owner_changed c where c.owner_id = o.root and c.what = 'narrowed') then 'narrowed'
      else 'kept' end as state
  from fact.owner o join fact.hull h on h.id = o.hull_id join fact.model m on m.id = h.model_id
  left join work.owner_detail w on w.owner_id = o.root
  where o.id = o.root`;

const PAGE = `${OWNER} and ($1::uuid is null or o.hull_id = $1)
  and ($2::timestamptz is null or (o.happened_at, o.root) < ($2, $3::uuid))
  order by o.happened_at desc, o.root desc limit $4`;

export interface OwnerRow extends Omit<OwnerLine, 'since' | 'name' | 'keptUntil' | 'legalHolds'> {
  readonly hullId: string;
  readonly since: Date;
  readonly model: string;
  readonly detail: { readonly name: string } | null;
}

/** A line of an owner; the name of one that was narrowed is not in lists. */
export const lineOf = async (tx: EntityManager, row: OwnerRow): Promise<OwnerLine> => {
  const { id, hull, what, since, state, detail, hullId } = row;
  const { until, holds } = await keepsData(tx, hullId, now().toISOString().slice(0, 10));
  const name = state === 'kept' ? (detail?.name ?? null) : null;
  return { ...{ id, hull, what, state, name }, since: since.toISOString(), keptUntil: until, legalHolds: holds.length };
};

/** Owners of all hulls, or of one, the newest first. */
@Injectable()
export class AllOwners {
  constructor(private readonly db: DataSource) {}

  async run({ hull, limit, cursor }: ListAllOwnersQuery): Promise<OwnersPage> {
    const { manager } = this.db;
    const { at, id } = readTimeCursor(cursor);
    const hullId = hull === undefined ? null : await findHull(manager, hull);
    const rows = await manager.query<OwnerRow[]>(PAGE, [hullId, at, id, limit + 1]);
    const page = toPage(rows, limit, (row) => [row.since.toISOString(), row.id]);
    const items: OwnerLine[] = [];
    for (const row of page.items) items.push(await lineOf(manager, row));
    return { ...page, items };
  }
}
