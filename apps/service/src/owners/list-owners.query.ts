import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { OwnerView } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { findHull } from '../platform/lookups/find-hull.js';

/** Owners of a hull, the first purchaser first; what was erased is gone. */
@Injectable()
export class ListOwners {
  constructor(private readonly db: DataSource) {}

  async run(number: string): Promise<OwnerView[]> {
    const hullId = await findHull(this.db.manager, number);
    return this.db.query(
      `select o.root as id, o.what, o.happened_at as since, case when n.at is null then w.detail end as owner,
         n.at as "narrowedAt", e.happened_at as "erasedAt"
       from fact.owner o
       left join work.owner_detail w on w.owner_id = o.root
       left join fact.owner_erased e on e.owner_id = o.root
       left join lateral (select max(c.happened_at) as at from fact.owner_changed c
         where c.owner_id = o.root and c.what = 'narrowed') n on true
       where o.hull_id = $1 and ${standing('o')} order by o.happened_at, o.root`,
      [hullId],
    );
  }
}
