import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { GunView } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { NotThere } from '../platform/refusals.js';

const READ = `
  select e.root as id, e.code, e.description,
    coalesce((select json_agg(json_build_object('id', h.id, 'feed', h.feed, 'lot', l.code, 'tank', t.code, 'from', h.happened_at,
        'until', (select min(n.happened_at) from fact.hook_up n where n.gun_id = h.gun_id and n.feed = h.feed
          and n.happened_at > h.happened_at and ${standing('n')})) order by h.happened_at, h.feed, h.id)
      from fact.hook_up h
      left join fact.lot l on l.root = h.lot_id and ${standing('l')}
      left join fact.tank t on t.root = h.tank_id and ${standing('t')}
      where h.gun_id = e.root and ${standing('h')}), '[]') as "hookUps",
    coalesce((select json_agg(json_build_object('id', s.id, 'catalystPercent', s.catalyst_percent, 'from', s.happened_at) order by s.happened_at, s.id)
      from fact.gun_setting s where s.gun_id = e.root and ${standing('s')}), '[]') as settings
  from fact.equipment e where e.code = $1 and e.kind = 'gun' and ${standing('e')}`;

/** One gun: what fed it when, and how it was set. */
@Injectable()
export class ReadGun {
  constructor(private readonly db: DataSource) {}

  async run(gun: string): Promise<GunView> {
    const [found] = await this.db.query<GunView[]>(READ, [gun]);
    if (!found) throw new NotThere('gun', gun);
    return found;
  }
}
