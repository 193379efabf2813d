import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { BalancePage, BalancesQuery, LotOutOfBalance } from '@hull-record/contracts';
import { verdictOf, weakestBasis, type Basis } from '@hull-record/trade';
import { standing } from '../platform/facts/standing.js';
import { readCursor, toPage } from '../platform/http/cursor.js';
import { bookKg, lostKg, measuredDifferenceKg, takenKg } from '../platform/lots/book-kg.js';

/** How whatever went out of a lot is known. */
const BASES_OF = (lot: string): string => `array(
  select u.basis from fact.used u where u.lot_id = ${lot} and ${standing('u')}
  union select i.basis from fact.lot_input i where i.input_id = ${lot} and ${standing('i')}
  union select o.basis from fact.lot_loss o where o.lot_id = ${lot} and ${standing('o')})`;

/** The same judgement as `verdictOf`, to find the lots; the words come from there. */
const LIST = `
  select s.lot, s."lotId", s.material, s."receivedKg", s."takenKg", s."lostKg", s."differenceKg", s."leftKg", s."lossAllowance", array_cat(array[s.basis], ${BASES_OF('s."lotId"')}) as bases
  from (
    select l.code as lot, l.root as "lotId", m.name as material, l.kg as "receivedKg", ${takenKg('l.root')} as "takenKg", ${lostKg('l.root')} as "lostKg",
      coalesce(${measuredDifferenceKg('l.root')}, 0) as "differenceKg", ${bookKg('l.root')} as "leftKg", m.loss_allowance as "lossAllowance", l.basis
    from fact.lot l
    left join fact.tank t on t.id = l.tank_id
    left join fact.material m on m.root = coalesce(l.material_id, t.material_id) and ${standing('m')}
    where ${standing('l')} and l.origin <> 'unidentified' and ($1::text is null or l.code > $1) and ($3::text is null or m.code = $3)) s
  where s."leftKg" < -1e-6 or (s."lossAllowance" is not null and abs(s."differenceKg") > s."receivedKg" * s."lossAllowance" + 1e-6)
  order by s.lot limit $2`;

/** The lots that do not balance: overdrawn, or lost or found more than their loss allowance. */
@Injectable()
export class ListBalances {
  constructor(private readonly db: DataSource) {}

  async run(query: BalancesQuery): Promise<BalancePage> {
    const [after] = readCursor(query.cursor, 1);
    type Row = Omit<LotOutOfBalance, 'verdict' | 'basis'> & { bases: Basis[] };
    const rows = await this.db.query<Row[]>(LIST, [after ?? null, query.limit + 1, query.material ?? null]);
    const told = rows.map(({ bases, ...row }) => ({
      ...row,
      basis: weakestBasis(bases),
      verdict: verdictOf(row.receivedKg, row.leftKg, row.differenceKg, row.lossAllowance),
    }));
    return toPage(told, query.limit, (row) => [row.lot]);
  }
}
