import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import type { PageQuery, RecomputationsPage, RecomputationView } from '@hull-record/contracts';
import { readAsOne } from '../platform/database/read-as-one.js';
import { readTimeCursor, toPage } from '../platform/http/cursor.js';
import { uuidOrNull } from '../platform/lookups/uuid-or-null.js';
import { NotThere } from '../platform/refusals.js';

/** SQL: how many of the things that a recomputation marked there are, and how many are left. */
const progress = (total: string, marked: string, thing: string): string => `
  (select json_build_object('total', greatest(${total}, count(distinct s.${thing})),
      'left', count(distinct s.${thing}) filter (where not s.done))
    from work.${marked} s where s.recomputation_id = r.id`;

const READ = `
  select r.id, j.kind as because, r.asked_at as "askedAt", r.finished_at as "finishedAt", r.nonconformities, r.trouble,
    ${progress('r.tank_lots', 'stale_lot', 'lot_id')} and s.tank) as "tankLots",
    ${progress('r.places', 'stale_place', 'place_id')}) as places
  from work.recomputation r join fact.journal j on j.id = r.id`;

/** What corrections reached that is, or was, worked out anew by a job. */
@Injectable()
export class Recomputations {
  constructor(private readonly db: DataSource) {}

  list({ cursor, limit }: PageQuery): Promise<RecomputationsPage> {
    const after = readTimeCursor(cursor);
    return readAsOne(this.db, async (tx) => {
      const rows = await tx.query<RecomputationView[]>(
        `${READ} where $1::timestamptz is null or (r.asked_at, r.id) < ($1, $2::uuid) order by r.asked_at desc, r.id desc limit $3`,
        [after.at, after.id, limit + 1],
      );
      return toPage(rows, limit, (row) => [new Date(row.askedAt).toISOString(), row.id]);
    });
  }

  read(correction: string): Promise<RecomputationView> {
    return readAsOne(this.db, async (tx: EntityManager) => {
      const [found] = await tx.query<RecomputationView[]>(`${READ} where r.id = ${uuidOrNull('$1::text')}`, [
        correction,
      ]);
      if (!found) throw new NotThere('recomputation', correction);
      return found;
    });
  }
}
