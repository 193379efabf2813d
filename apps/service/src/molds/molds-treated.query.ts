import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { MoldTreated } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { uuidOrNull } from '../platform/lookups/uuid-or-null.js';
import { NotThere } from '../platform/refusals.js';

const TREATED = `
  select d.code as mold, c.what, c.happened_at as "treatedAt",
    coalesce((select json_agg(json_build_object('part', p.number, 'hull', n.as_printed, 'startedAt', p.happened_at) order by p.happened_at, p.number)
      from fact.part p
      left join fact.joint j on j.part_id = p.id and ${standing('j')}
      left join fact.hull_number n on n.hull_id = j.hull_id and n.kind = 'hull number'
      where p.mold_id = d.root and ${standing('p')} and p.happened_at >= c.happened_at and p.happened_at < coalesce((
        select min(next.happened_at) from fact.mold_care next
        where next.mold_id = d.root and next.what = c.what and next.happened_at > c.happened_at and ${standing('next')}), 'infinity')), '[]') as parts
  from fact.used u
  join fact.mold_care c on c.root = u.into_id and ${standing('c')}
  join fact.mold d on d.root = c.mold_id and ${standing('d')}
  where u.lot_id = $1 and ${standing('u')} order by c.happened_at, d.code`;

/** Molds that were treated with a lot, and the parts molded on that surface until it was treated alike again. */
@Injectable()
export class MoldsTreated {
  constructor(private readonly db: DataSource) {}

  async run(lot: string): Promise<MoldTreated[]> {
    const [found] = await this.db.query<{ root: string }[]>(
      `select l.root from fact.lot l where (l.code = $1 or l.root = ${uuidOrNull('$1::text')}) and ${standing('l')} limit 1`,
      [lot],
    );
    if (!found) throw new NotThere('lot', lot);
    return this.db.query(TREATED, [found.root]);
  }
}
