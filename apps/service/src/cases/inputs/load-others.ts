import type { EntityManager } from 'typeorm';
import { standing } from '../../platform/facts/standing.js';
import { moldStateAt } from '../../platform/molds/mold.sql.js';
import type { OtherInHulls } from './case-inputs.js';

/** SQL: parts of the hulls, with their place in the list. */
const PARTS = `
  parts as (
    select at.place, q.root as part_id, q.kind, q.mold_id, q.happened_at
    from unnest($1::uuid[]) with ordinality as at(hull_id, place)
    join fact.joint j on j.hull_id = at.hull_id and ${standing('j')}
    join fact.part q on q.id = j.part_id)`;

const PULLS = `(select count(*) from fact.part o where o.mold_id = p.mold_id and o.happened_at <= p.happened_at and ${standing('o')}
  and o.happened_at >= coalesce((select max(c.happened_at) from fact.mold_care c
    where c.mold_id = p.mold_id and c.happened_at <= p.happened_at and ${standing('c')}), '-infinity'))`;

/** What else hulls may have in common. Never people. */
const OTHERS = `
  with ${PARTS}
  select 'mold state' as family, d.code || ', state ' || ${moldStateAt('p.mold_id', 'p.happened_at')} as name, p.place
  from parts p join fact.mold d on d.root = p.mold_id and ${standing('d')}
  union select 'pulls since care', p.kind || ', ' || case when pulled.n <= 5 then '1 to 5' when pulled.n <= 10 then '6 to 10' else '11 or more' end, p.place
  from parts p cross join lateral (select ${PULLS} as n) pulled
  union select 'week begun', p.kind || ', ' || to_char(p.happened_at, 'IYYY-"W"IW'), p.place from parts p
  union select 'gun or equipment', e.code || ' in ' || p.kind || ', ' || y.name, p.place
  from parts p join fact.layer_record r on r.part_id = p.part_id and ${standing('r')}
  join fact.schedule_layer y on y.id = r.schedule_layer_id
  join fact.used u on u.into_id = r.root and u.gun_id is not null and ${standing('u')}
  join fact.equipment e on e.root = u.gun_id and ${standing('e')}
  union select case when v.topic like '%climate%' or v.topic like '%surface%' then 'climate excursion' else 'verdict outside' end,
    v.topic || ' outside, ' || p.kind, p.place
  from parts p join fact.verdict v on v.part_id = p.part_id and v.verdict = 'outside' and v.about_kind <> 'defect' and ${standing('v')}
  union select 'reading out of limits', g.what || ' of ' || p.kind || ', ' || y.name, p.place
  from parts p join fact.layer_record r on r.part_id = p.part_id and ${standing('r')}
  join fact.schedule_layer y on y.id = r.schedule_layer_id
  join fact.reading g on g.of_id = r.root and g.verdict = 'outside' and ${standing('g')}
  order by 1, 2, 3`;

/** Other exposures of hulls, by family and name; places are those of the ids given, from 0. */
export const loadOthers = async (tx: EntityManager, ids: readonly string[]): Promise<readonly OtherInHulls[]> => {
  const rows = await tx.query<{ family: string; name: string; place: string }[]>(OTHERS, [ids]);
  const found = new Map<string, { family: string; name: string; hulls: number[] }>();
  for (const { family, name, place } of rows) {
    const key = JSON.stringify([family, name]);
    const own = found.get(key) ?? { family, name, hulls: [] };
    own.hulls.push(Number(place) - 1);
    found.set(key, own);
  }
  return [...found.values()];
};
