import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { HoldListItem, HoldPage, ListHoldsQuery } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { hasEnded } from '../platform/holds/find-hold.js';
import { readTimeCursor, toPage } from '../platform/http/cursor.js';
import { badgeOf, endOf, iso, thingOf } from './thing-of.sql.js';

/** Whether the newest thing said of a kept hull is more than that the fault is in it. */
const DISPOSED = `(select d.what <> 'found' from fact.hold_disposition d
  where d.hold_id = r.hold_id and (d.hull_id = r.hull_id or d.part_id = r.part_id) and ${standing('d')}
  order by d.happened_at desc, d.recorded_at desc, d.id desc limit 1)`;

const LIST = `
  select h.root as id, ${iso('h.happened_at')} as "happenedAt", ${badgeOf('h')} as by, ${thingOf('h')} as on, h.kind, h.reason,
    ${endOf('h')} as ended, n."atHold", n.disposed, (
      select d.decision from fact.duty_decision d where d.hold_id = h.root and ${standing('d')}
      order by d.happened_at desc, d.recorded_at desc, d.id desc limit 1) as duty
  from fact.hold h
  cross join lateral (select count(*)::int as "atHold", (count(*) filter (where ${DISPOSED}))::int as disposed
    from fact.hold_reached r where r.hold_id = h.root and ${standing('r')}) n
  where ${standing('h')} and ($1 or not ${hasEnded('h.root')})
    and ($2::timestamptz is null or (h.happened_at, h.root) < ($2, $3::uuid))
  order by h.happened_at desc, h.root desc limit $4`;

/** Holds, the newest first: those in force, or all. */
@Injectable()
export class ListHolds {
  constructor(private readonly db: DataSource) {}

  async run({ which, cursor, limit }: ListHoldsQuery): Promise<HoldPage> {
    const { at, id } = readTimeCursor(cursor);
    const rows = await this.db.query<HoldListItem[]>(LIST, [which === 'all', at, id, limit + 1]);
    return toPage(rows, limit, (row) => [row.happenedAt, row.id]);
  }
}
