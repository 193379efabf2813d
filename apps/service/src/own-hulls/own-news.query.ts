import { Injectable } from '@nestjs/common';
import type { OwnNews } from '@hull-record/contracts';
import { DataSource, type EntityManager } from 'typeorm';
import { personNow } from '../platform/access/call.js';
import { standing } from '../platform/facts/standing.js';
import { lastDealerOf } from '../platform/life/own-hull.sql.js';

const NUMBER = `(select k.as_printed from fact.hull_number k where k.hull_id = h.id and k.kind = 'hull number') as hull`;

/** Letters to the dealer, and withdrawn certificates of hulls that the dealer has or had last. */
const ALL = `
  select m.root as id, 'notice' as what, ${NUMBER}, m.happened_at as at, n.code as notice, n.contents,
    null::text as certificate, null::int as issue, null::jsonb as changed
  from fact.notice_mailing m join fact.notice n on n.root = m.notice_id and ${standing('n')}
  join fact.hull h on h.id = m.hull_id
  where m.dealer_id = $1 and ${standing('m')}
  union all
  select w.root, 'certificate withdrawn', ${NUMBER}, w.happened_at, null, null, c.number, c.issue, w.changed
  from fact.certificate_withdrawn w join fact.certificate c on c.id = w.certificate_id
  join fact.hull h on h.id = c.hull_id
  where ${lastDealerOf('h.id')} = $1 and ${standing('w')}`;

const NEWS = `
  select a.id, a.what, a.hull, a.at, a.notice, a.contents, a.certificate, a.issue, a.changed, k.happened_at as "acknowledgedAt"
  from (${ALL}) a left join fact.dealer_acknowledged k on k.about_id = a.id and k.dealer_id = $1
  where $2::uuid is null or a.id = $2 order by k.id is not null, a.at desc, a.id limit 200`;

type Row = Omit<OwnNews, 'at' | 'acknowledgedAt'> & { readonly at: Date; readonly acknowledgedAt: Date | null };

/** What a dealer is told, what was not acknowledged first; or one thing of it. */
export const loadNews = async (tx: EntityManager, about: string | null = null): Promise<OwnNews[]> => {
  const { dealerId } = personNow();
  const rows = dealerId === null ? [] : await tx.query<Row[]>(NEWS, [dealerId, about]);
  return rows.map((row) => ({
    ...row,
    at: row.at.toISOString(),
    acknowledgedAt: row.acknowledgedAt?.toISOString() ?? null,
  }));
};

/** What the dealer who asks is told of own hulls. */
@Injectable()
export class ReadOwnNews {
  constructor(private readonly db: DataSource) {}

  run(): Promise<OwnNews[]> {
    return loadNews(this.db.manager);
  }
}
