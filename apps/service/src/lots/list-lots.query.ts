import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { ListLotsQuery, LotListItem, LotPage } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { readTimeCursor, toPage } from '../platform/http/cursor.js';
import { LOT_COLUMNS, LOT_TABLES } from './lot-columns.js';

const LIST = `
  select * from (select ${LOT_COLUMNS} from ${LOT_TABLES} where ${standing('l')}) lot
  where ($1::text is null or material = $1)
    and ($2::text is null or state = $2)
    and ($3::text is null or origin = $3)
    and ($4::text is null or strpos(lower(code), lower($4)) > 0 or strpos(lower("supplierLot"), lower($4)) > 0)
    and ($5::timestamptz is null or ("happenedAt", id) < ($5, $6::uuid))
  order by "happenedAt" desc, id desc limit $7`;

/** Lots, the newest first. */
@Injectable()
export class ListLots {
  constructor(private readonly db: DataSource) {}

  async run(query: ListLotsQuery): Promise<LotPage> {
    const { at, id } = readTimeCursor(query.cursor);
    const { material = null, state = null, origin = null, search = null } = query;
    const rows = await this.db.query<(Omit<LotListItem, 'happenedAt'> & { happenedAt: Date })[]>(LIST, [
      material,
      state,
      origin,
      search,
      at,
      id,
      query.limit + 1,
    ]);
    const page = toPage(rows, query.limit, (lot) => [lot.happenedAt.toISOString(), lot.id]);
    return page as unknown as LotPage;
  }
}
