import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { MoldDetail } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { careOverdue, moldStateAt } from '../platform/molds/mold.sql.js';
import { NotThere } from '../platform/refusals.js';

const READ = `
  select d.root as id, d.code, m.code as model, d.part_kind as "partKind", ${moldStateAt('d.root', 'now()')} as state,
    ${careOverdue('d.root', 'now()')} as overdue,
    (select count(*)::int from fact.part p where p.mold_id = d.root and ${standing('p')}) as pulls,
    (select count(*)::int from fact.part p where p.mold_id = d.root and ${standing('p')} and p.happened_at > coalesce((
      select max(w.happened_at) from fact.mold_care w where w.mold_id = d.root and w.what = 'reworked' and ${standing('w')}), '-infinity')) as "pullsOfState",
    coalesce((select json_agg(json_build_object('id', c.root, 'what', c.what, 'doneBy', array(
        select w.badge from fact.person w where w.id = any(c.makers) order by w.badge), 'duePulls', c.due_pulls, 'dueOn', c.due_on::text, 'note', c.note,
        'happenedAt', c.happened_at, 'lots', array(select l.code from fact.used u join fact.lot l on l.root = u.lot_id and ${standing('l')}
          where u.into_id = c.root and ${standing('u')} order by l.code)) order by c.happened_at desc, c.id)
      from fact.mold_care c where c.mold_id = d.root and ${standing('c')}), '[]') as care,
    coalesce((select json_agg(json_build_object('part', p.number, 'state', ${moldStateAt('d.root', 'p.happened_at')}, 'startedAt', p.happened_at) order by p.happened_at desc, p.id)
      from fact.part p where p.mold_id = d.root and ${standing('p')}), '[]') as parts
  from fact.mold d join fact.model m on m.id = d.model_id where d.code = $1 and ${standing('d')}`;

/** One mold: its state, its care and the parts pulled from it. */
@Injectable()
export class ReadMold {
  constructor(private readonly db: DataSource) {}

  async run(mold: string): Promise<MoldDetail> {
    const [found] = await this.db.query<MoldDetail[]>(READ, [mold]);
    if (!found) throw new NotThere('mold', mold);
    return found;
  }
}
