import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { BalancePage, BalancesQuery, LotOutOfBalance } from '@hull-record/contracts';
import { verdictOf } from '@hull-record/trade';
import { standing } from '../platform/facts/standing.js';
import { readCursor, toPage } from '../platform/http/cursor.js';
import { bookKg, lostKg, measuredDifferenceKg, takenKg } from '../platform/lots/book-kg.js';

/** The same judgement as `verdictOf`, to find the lots; the words come from there. */
const LIST = `
  select s.* from (
    select l.code as lot, l.root as "lotId", m.name as material, l.kg as "receivedKg", ${takenKg('l.root')} as "takenKg", ${lostKg('l.root')} as "lostKg",
      coalesce(${measuredDifferenceKg('l.root')}, 0) as "differenceKg", ${bookKg('l.root')} as "leftKg", m.loss_allowance as allowance
    from fact.lot l
    left join fact.tank t on t.id = l.tank_id
    left join fact.material m on m.root = coalesce(l.material_id, t.material_id) and ${standing('m')}
    where ${standing('l')} and l.origin <> 'unidentified' and ($1::text is null or l.code > $1)) s
  where s."leftKg" < -1e-6 or (s.allowance is not null and abs(s."differenceKg") > s."receivedKg" * s.allowance + 1e-6)
  order by s.lot limit $2`;

/** The lots that do not balance: overdrawn, or lost or found more than their loss allowance. */
@Injectable()
export class ListBalances {
  constructor(private readonly db: DataSource) {}

  async run(query: BalancesQuery): Promise<BalancePage> {
    const [after] = readCursor(query.cursor, 1);
    type Row = Omit<LotOutOfBalance, 'verdict'> & { allowance: number | null };
    const rows = await this.db.query<Row[]>(LIST, [after ?? null, query.limit + 1]);
    const told = rows.map(({ allowance, ...row }) => ({
      ...row,
      verdict: verdictOf(row.receivedKg, row.leftKg, row.differenceKg, allowance),
    }));
    return toPage(told, query.limit, (row) => [row.lot]);
  }
}
