import { standing } from '../facts/standing.js';
import { containerRejected, drawnByName, holdsOn } from './holds.sql.js';

/** SQL of containers that meet a condition on `c`, as the API shows them. What is left counts draws that named it. */
export const CONTAINERS = (where: string): string => `
  select c.root as id, c.label, l.code as lot, c.kind,
    json_build_object('quantity', c.quantity::text, 'unit', c.unit, 'basis', c.basis, 'kg', c.kg) as amount,
    (select f.place from fact.container_fact f where f.container_id = c.root and f.place is not null and ${standing('f')}
      order by f.happened_at desc, f.recorded_at desc, f.id limit 1) as place,
    (select min(f.happened_at) from fact.container_fact f where f.container_id = c.root and f.what = 'opened' and ${standing('f')}) as "openedAt",
    ${containerRejected('c.root', 'now()')} as rejected,
    ${holdsOn('c.lot_id', 'c.root', 'now()')} as holds,
    coalesce(n.kg, c.kg) - coalesce((select sum(o.kg) from (${drawnByName('c')}) o where n.happened_at is null or o.happened_at > n.happened_at), 0) as "leftKg",
    coalesce((select json_agg(json_build_object('id', f.id, 'what', f.what, 'place', f.place, 'note', f.note, 'happenedAt', f.happened_at)
        order by f.happened_at, f.recorded_at, f.id)
      from fact.container_fact f where f.container_id = c.root and ${standing('f')}), '[]') as history
  from fact.container c
  join fact.lot l on l.root = c.lot_id and ${standing('l')}
  left join lateral (select n.kg, n.happened_at from fact.lot_count n where n.lot_id = c.lot_id and n.container_id = c.root and ${standing('n')}
    order by n.happened_at desc, n.recorded_at desc, n.id limit 1) n on true
  where ${where} and ${standing('c')} order by c.label`;
