import { standing } from '../platform/facts/standing.js';
import { bookKg } from '../platform/lots/book-kg.js';
import { stateOrDefault } from '../platform/lots/find-lots.js';
import { expiryAt, holdsOn } from '../platform/store/holds.sql.js';

/** SQL: codes of the materials that a lot is of: its own, or those that went straight into it. */
const materialsOf = (lot: string): string => `array(
  select distinct m.code from (
    select ${lot}.material_id as material union select t.material_id from fact.tank t where t.id = ${lot}.tank_id
    union select coalesce(c.material_id, ct.material_id) from fact.lot_input i
      join fact.lot c on c.root = i.input_id and ${standing('c')} left join fact.tank ct on ct.id = c.tank_id
      where i.lot_id = ${lot}.root and ${standing('i')} and ${lot}.material_id is null) of_lot
  join fact.material m on m.root = of_lot.material and ${standing('m')} order by m.code)`;

/** What came in within two years, what tanks hold, and what was mixed and cut within three days; as far as some is left. */
export const LOTS = `
  select s.* from (
    select l.code, l.origin, t.code as tank, ${materialsOf('l')} as materials, ${expiryAt('l', 'now()')}::text as "expiresOn",
      ${stateOrDefault('l', 'now()')} as state, ${holdsOn('l.root', 'null::uuid', 'now()')} as holds,
      ${bookKg('l.root')}::float8 as "leftKg", l.happened_at as "happenedAt"
    from fact.lot l left join fact.tank t on t.id = l.tank_id
    where ${standing('l')} and l.happened_at > now() - case when l.origin in ('mixed', 'cut') then interval '3 days' else interval '2 years' end) s
  where s."leftKg" > 1e-6
  order by s."expiresOn" nulls last, s."happenedAt", s.code`;

export const GUNS = `
  select e.code, e.description, array(
    select json_build_object('feed', h.feed, 'lot', coalesce(l.code, t.code), 'materials', case
        when l.root is not null then ${materialsOf('l')}
        else array(select m.code from fact.material m where m.root = t.material_id and ${standing('m')}) end)
    from (select distinct on (n.feed) n.* from fact.hook_up n where n.gun_id = e.root and n.happened_at <= now() and ${standing('n')}
      order by n.feed, n.happened_at desc, n.id) h
    left join fact.lot l on l.root = h.lot_id and ${standing('l')}
    left join fact.tank t on t.root = h.tank_id and ${standing('t')}
    where l.root is not null or t.root is not null order by h.feed) as feeds
  from fact.equipment e where e.kind = 'gun' and ${standing('e')} order by e.code`;

export const GAUGES = `
  select e.code, e.description from fact.equipment e where e.kind = 'gauge' and ${standing('e')} order by e.code`;

export const MATERIALS = `select m.code, m.name, m.role from fact.material m where ${standing('m')} order by m.code`;
