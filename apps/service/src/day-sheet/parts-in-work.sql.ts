import { standing } from '../platform/facts/standing.js';
import { layersOf } from '../platform/layers/layers-of-part.sql.js';

/** So many parts at most: more are not begun and unfinished in one shop, and a tablet keeps them all. */
const MOST = 80;

/** Parts neither scrapped nor in a hull that was released, on which a layer, a reading or a signature is missing. */
export const PARTS_IN_WORK = `
  select p.id from fact.part p
  left join lateral (select max(r.ended_at) as at from fact.layer_record r where r.part_id = p.id and ${standing('r')}) last on true
  where not exists (select from fact.part_scrapped s where s.part_id = p.id and ${standing('s')})
    and not exists (select from fact.joint j join fact.life_fact f on f.hull_id = j.hull_id and f.what in ('released', 'scrapped') and ${standing('f')}
      where j.part_id = p.id and ${standing('j')})
    and exists (select from ${layersOf('p')} y
      left join fact.layer_record r on r.part_id = p.id and r.schedule_layer_id = y.id and ${standing('r')}
      where r.id is null
        or (y.hold_point is not null and not exists (select from fact.signature g where g.layer_record_id = r.id and ${standing('g')}))
        or exists (select from jsonb_to_recordset(y.readings) as q(what text, spots int)
          where q.spots > (select count(distinct d.spot) from fact.reading d where d.of_id = r.root and d.what = q.what and ${standing('d')})))
  order by coalesce(last.at, p.happened_at) desc, p.number limit ${MOST}`;
