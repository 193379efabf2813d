import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { NonconformitiesQuery, NonconformityPage, NonconformityView } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { readTimeCursor, toPage } from '../platform/http/cursor.js';
import { goOnOf } from '../platform/release/go-on.sql.js';
import { isOpenNonconformity } from '../platform/release/open.js';

const LIST = `
  select * from (
    select c.root as id, c.rule, c.detail, c.about_kind as "aboutKind", c.about_id as "about", p.number as part, n.as_printed as hull,
      c.happened_at as "happenedAt", o.disposition, o.concession, o.root as "dispositionId", ${isOpenNonconformity('c')} as open, ${goOnOf('c')} as "goOn"
    from fact.nonconformity c
    left join fact.part p on p.id = c.part_id
    left join fact.joint j on j.part_id = c.part_id and ${standing('j')}
    left join fact.hull_number n on n.hull_id = coalesce(j.hull_id, case when c.about_kind = 'hull' then c.about_id end) and n.kind = 'hull number'
    left join lateral (select * from fact.disposition o where o.of_id = c.root and ${standing('o')} order by o.recorded_at desc limit 1) o on true
    where ${standing('c')} and ($1::text is null or c.rule = $1)) found
  where ($2::boolean is null or open = $2) and ($3::text is null or hull = $3) and ($4::text is null or part = $4)
    and ($5::timestamptz is null or ("happenedAt", id) < ($5, $6::uuid))
  order by "happenedAt" desc, id desc limit $7`;

/** What was done against a rule, the newest first, with what was decided about it. */
@Injectable()
export class ListNonconformities {
  constructor(private readonly db: DataSource) {}

  async run(query: NonconformitiesQuery): Promise<NonconformityPage> {
    const { at, id } = readTimeCursor(query.cursor);
    const { rule = null, open, hull = null, part = null } = query;
    const wanted = open === undefined ? null : open === 'yes';
    const rows = await this.db.query<(Omit<NonconformityView, 'happenedAt'> & { happenedAt: Date })[]>(LIST, [
      ...[rule, wanted, hull, part, at, id],
      query.limit + 1,
    ]);
    const told = rows.map((row) => ({ ...row, happenedAt: row.happenedAt.toISOString() }));
    return toPage(told, query.limit, (row) => [row.happenedAt, row.id]);
  }
}
