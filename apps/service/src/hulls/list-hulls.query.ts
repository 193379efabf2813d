import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { normaliseNumber } from '@hull-record/trade';
import type { HullListItem, HullPage, ListHullsQuery } from '@hull-record/contracts';
import { readTimeCursor, toPage } from '../platform/http/cursor.js';
import { standing } from '../platform/facts/standing.js';
import { whereabouts } from '../platform/life/whereabouts.js';
import { HULL_COLUMNS, HULL_TABLES } from './hull-columns.js';

const LIST = `
  select ${HULL_COLUMNS} from ${HULL_TABLES}
  where ${standing('h')} and ($1::text is null or m.code = $1)
    and ($2::text is null or exists (select from fact.hull_number n where n.hull_id = h.id and strpos(n.normalised, $2) > 0))
    and ($3::timestamptz is null or (h.happened_at, h.id) < ($3, $4::uuid))
    and ($6::text is null or ${whereabouts('h.id')} ->> 'what' = $6)
    and ($7::text is null or ${whereabouts('h.id')} ->> 'dealer' = (select d.name from fact.dealer d where d.code = $7 and ${standing('d')}))
    and ($8::text is null or ($8 = 'yes') = exists (select from fact.life_fact r where r.hull_id = h.id and r.what = 'released' and ${standing('r')}))
  order by h.happened_at desc, h.id desc limit $5`;

/** Hulls, the newest first. */
@Injectable()
export class ListHulls {
  constructor(private readonly db: DataSource) {}

  async run(query: ListHullsQuery): Promise<HullPage> {
    const { at, id } = readTimeCursor(query.cursor);
    const search = query.search === undefined ? null : normaliseNumber(query.search);
    type Row = Omit<HullListItem, 'startedAt'> & { startedAt: Date };
    const rows = await this.db.query<Row[]>(LIST, [
      ...[query.model ?? null, search, at, id, query.limit + 1],
      ...[query.now ?? null, query.dealer ?? null, query.released ?? null],
    ]);
    return toPage(rows, query.limit, (hull) => [hull.startedAt.toISOString(), hull.id]) as unknown as HullPage;
  }
}
