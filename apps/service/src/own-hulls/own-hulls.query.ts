import { Injectable } from '@nestjs/common';
import type { OwnHull, OwnHullPage, PageQuery } from '@hull-record/contracts';
import { normaliseNumber } from '@hull-record/trade';
import { DataSource } from 'typeorm';
import { personNow } from '../platform/access/call.js';
import { standing } from '../platform/facts/standing.js';
import { readTimeCursor, toPage } from '../platform/http/cursor.js';
import { lastDealerOf } from '../platform/life/own-hull.sql.js';
import { NotThere } from '../platform/refusals.js';
import { obstaclesOf } from '../platform/release/obstacles.js';

/** What a dealer sees of the life of a boat: from when it left on, and no notes. */
const OWN = `
  select h.id, h.happened_at, n.as_printed as number, m.code as model,
    (select hin.as_printed from fact.hull_number hin where hin.hull_id = h.id and hin.kind = 'HIN'
       order by hin.happened_at desc, hin.recorded_at desc limit 1) as hin,
    coalesce((select json_agg(json_build_object('what', f.what, 'at', f.happened_at) order by f.happened_at, f.recorded_at)
      from fact.life_fact f where f.hull_id = h.id and f.what = any(array['left the place of manufacture', 'at dealer',
        'sold to first purchaser', 'warranty registered', 'transferred', 'returned', 'exported']) and ${standing('f')}), '[]') as life,
    (select json_build_object('number', c.number, 'issue', c.issue,
        'state', case when exists (select from fact.certificate_withdrawn w where w.certificate_id = c.id) then 'withdrawn' else 'current' end)
      from fact.certificate c join fact.certificate_file cf on cf.certificate_id = c.id
      where c.hull_id = h.id order by c.issue desc limit 1) as certificate
  from fact.hull h
  join fact.model m on m.id = h.model_id
  join fact.hull_number n on n.hull_id = h.id and n.kind = 'hull number'
  where ${standing('h')} and ${lastDealerOf('h.id')} = $1`;

const LIST = `${OWN} and ($2::timestamptz is null or (h.happened_at, h.id) < ($2, $3::uuid))
  order by h.happened_at desc, h.id desc limit $4`;

const ONE = `${OWN} and h.id = (select k.hull_id from fact.hull_number k where k.normalised = $2 limit 1)`;

interface Row {
  readonly id: string;
  readonly happened_at: Date;
  readonly number: string;
  readonly hin: string | null;
  readonly model: string;
  readonly certificate: {
    readonly number: string;
    readonly issue: number;
    readonly state: 'current' | 'withdrawn';
  } | null;
  readonly life: { readonly what: OwnHull['life'][number]['what']; readonly at: string }[];
}

/**
 * The hulls that the dealer who asks has or had last. One of somebody else is answered as one that is not there, by the
 * same statement.
 */
@Injectable()
export class OwnHulls {
  constructor(private readonly db: DataSource) {}

  async list({ limit, cursor }: PageQuery): Promise<OwnHullPage> {
    const { at, id } = readTimeCursor(cursor);
    const rows = await this.db.query<Row[]>(LIST, [personNow().dealerId, at, id, limit + 1]);
    const page = toPage(rows, limit, (row) => [row.happened_at.toISOString(), row.id]);
    const items: OwnHull[] = [];
    for (const row of page.items) items.push(await this.view(row));
    return { ...page, items };
  }

  /** @throws NotThere */
  async one(number: string): Promise<OwnHull> {
    const [row] = await this.db.query<Row[]>(ONE, [personNow().dealerId, normaliseNumber(number)]);
    if (!row) throw new NotThere('hull', number);
    return this.view(row);
  }

  /** What stands in the way of a new issue is not said, only that something does. */
  private async view(row: Row): Promise<OwnHull> {
    const waits = row.certificate !== null && (await obstaclesOf(this.db.manager, row.id)).length > 0;
    return toOwnHull(row, waits);
  }
}

const toOwnHull = ({ number, hin, model, life, certificate }: Row, newIssueWaits: boolean): OwnHull => ({
  ...{ number, hin, model },
  certificate: certificate && {
    ...certificate,
    newIssueWaits,
    file: `/api/own-hulls/${encodeURIComponent(number)}/certificate.pdf`,
  },
  life: life.map(({ what, at }) => ({ what, at: new Date(at).toISOString() })),
  buildRecord: `/api/own-hulls/${encodeURIComponent(number)}/build-record.pdf`,
});
