import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { FittedItemsQuery, FittedItemView } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { findHulls } from '../platform/lookups/find-hull.js';

const LIST = `
  select i.root as id, i.what, i.serial, i.maker, i.customer_supplied as "customerSupplied", i.note, n.as_printed as hull,
    i.happened_at as "fittedAt", r.happened_at as "removedAt", r.reason as "removedBecause"
  from fact.fitted_item i
  join fact.hull_number n on n.hull_id = i.hull_id and n.kind = 'hull number'
  left join fact.item_removed r on r.fitted_item_id = i.root and ${standing('r')}
  where ${standing('i')} and ($1::text is null or lower(i.serial) = lower($1)) and ($2::uuid is null or i.hull_id = $2)
  order by i.happened_at, i.root limit 500`;

/** Items that are or were fitted, by serial number or by hull. */
@Injectable()
export class ListFittedItems {
  constructor(private readonly db: DataSource) {}

  async run({ serial, hull }: FittedItemsQuery): Promise<FittedItemView[]> {
    const hullId = hull === undefined ? null : (await findHulls(this.db.manager, [hull])).get(hull);
    if (hullId === undefined) return [];
    return this.db.query(LIST, [serial ?? null, hullId]);
  }
}
