import type { EntityManager } from 'typeorm';
import { standing } from '../../platform/facts/standing.js';
import { moldStateAt } from '../../platform/molds/mold.sql.js';
import type { OtherInHulls } from './case-inputs.js';
import type { JudgedHulls } from './judge-hulls.js';

/** SQL: parts of the hulls, with their place in the list. */
const PARTS = `
  parts as (
    select at.place, at.origin, q.root as part_id, q.kind, q.mold_id, q.happened_at
    from unnest($1::uuid[], $2::int[]) with ordinality as at(hull_id, origin, place)
    join fact.joint j on j.hull_id = at.hull_id and ${standing('j')}
    join fact.part q on q.id = j.part_id)`;

/**
 * SQL: of every part of these molds, how many were pulled since the mold was cared for last, itself included. All parts of a
 * mold are counted in one walk over it: counting anew for each is the square of them.
 */
const PULLS = `
  pulls as (
    select o.root, count(*) over (partition by o.mold_id, o.cared_at order by o.happened_at) as n
    from (select q.root, q.mold_id, q.happened_at, (select max(c.happened_at) from fact.mold_care c
        where c.mold_id = q.mold_id and c.happened_at <= q.happened_at and ${standing('c')}) as cared_at
      from fact.part q where q.mold_id in (select mold_id from parts) and ${standing('q')}) o)`;

/**
 * SQL: whether a fact was there first by the time origin of its hull: what is found or done afterwards cannot have led to a
 * claim, and a correction later does not make it later.
 */
const inTime = (table: string, alias: string): string =>
  `(select floor(extract(epoch from o.happened_at) / 86400)::int4 from fact.${table} o where o.id = ${alias}.root) <= p.origin`;

/** What else hulls may have in common, until their time origin. Never people. */
const OTHERS = `
  with ${PARTS}, ${PULLS}
  select 'mold state' as family, d.code || ', state ' || ${moldStateAt('p.mold_id', 'p.happened_at')} as name, p.place
  from parts p join fact.mold d on d.root = p.mold_id and ${standing('d')}
  union select 'pulls since care', p.kind || ', ' || case when pulled.n <= 5 then '1 to 5' when pulled.n <= 10 then '6 to 10' else '11 or more' end, p.place
  from parts p join pulls pulled on pulled.root = p.part_id
  union select 'week begun', p.kind || ', ' || to_char(p.happened_at, 'IYYY-"W"IW'), p.place from parts p
  union select 'gun or equipment', e.code || ' in ' || p.kind || ', ' || y.name, p.place
  from parts p join fact.layer_record r on r.part_id = p.part_id and ${inTime('layer_record', 'r')} and ${standing('r')}
  join fact.schedule_layer y on y.id = r.schedule_layer_id
  join fact.used u on u.into_id = r.root and u.gun_id is not null and ${standing('u')}
  join fact.equipment e on e.root = u.gun_id and ${standing('e')}
  union select case when v.topic like '%climate%' or v.topic like '%surface%' then 'climate excursion' else 'verdict outside' end,
    v.topic || ' outside, ' || p.kind, p.place
  from parts p join fact.verdict v on v.part_id = p.part_id and v.verdict = 'outside' and v.about_kind not in ('defect', 'repair') and ${inTime('verdict', 'v')} and ${standing('v')}
  union select 'reading out of limits', g.what || ' of ' || p.kind || ', ' || y.name, p.place
  from parts p join fact.layer_record r on r.part_id = p.part_id and ${standing('r')}
  join fact.schedule_layer y on y.id = r.schedule_layer_id
  join fact.reading g on g.of_id = r.root and g.verdict = 'outside' and ${inTime('reading', 'g')} and ${standing('g')}
  order by 1, 2, 3`;

/** Other exposures of hulls, by family and name, until the day of the time origin of each; places are those of the ids, from 0. */
export const loadOthers = async (
  tx: EntityManager,
  { ids, origins }: Pick<JudgedHulls, 'ids' | 'origins'>,
): Promise<readonly OtherInHulls[]> => {
  const rows = await tx.query<{ family: string; name: string; place: string }[]>(OTHERS, [ids, origins]);
  const found = new Map<string, { family: string; name: string; hulls: number[] }>();
  for (const { family, name, place } of rows) {
    const key = JSON.stringify([family, name]);
    const own = found.get(key) ?? { family, name, hulls: [] };
    own.hulls.push(Number(place) - 1);
    found.set(key, own);
  }
  return [...found.values()];
};
