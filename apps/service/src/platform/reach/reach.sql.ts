import { standing } from '../facts/standing.js';
import { CANDIDATES } from '../lots/candidates.sql.js';
import { standingPlaces } from '../places/places.js';
import { whereabouts } from '../life/whereabouts.js';

/** SQL of reached places of a received lot, from what is kept: `$1` is the lot. */
export const REACH_OF_SOURCE = `
  select place_id, part_id, into_kind, role, kg, basis, first_at, last_at from derived.place_source where source_id = $1`;

const COLUMN_TYPES = ['uuid', 'uuid', 'text', 'text', 'float8', 'text', 'timestamptz', 'timestamptz'];

/** SQL of reached places that were worked out: eight arrays from the parameter of this number on, a place and role each. */
export const reachGiven = (first: number): string => `
  select * from unnest(${COLUMN_TYPES.map((type, i) => `$${first + i}::${type}[]`).join(', ')})
    as given(place_id, part_id, into_kind, role, kg, basis, first_at, last_at)`;

/** SQL: how a place is called: the code of its layer, the mark of its repair, or joint. */
export const placeLabel = (place: string, kind: string): string => `case ${kind}
  when 'layer' then (select y.code from fact.layer_record r join fact.schedule_layer y on y.id = r.schedule_layer_id where r.root = ${place} and ${standing('r')})
  when 'repair' then (select 'R' || r.number from fact.repair r where r.root = ${place} and ${standing('r')})
  when 'touch-up' then (select 'T' || t.number from fact.touch_up t where t.root = ${place} and ${standing('t')})
  else 'joint' end`;

const WEAKER = "array_position(array['weighed', 'metered', 'apportioned', 'as scheduled'], basis)";
const BASIS_OF_RANK = "(array['weighed', 'metered', 'apportioned', 'as scheduled'])";

/** Parts in which a lot of the set `lots` was used, as part_id. */
const partsWith = (lots: string): string => `
    select distinct place.part_id from ${lots} lots
    join fact.used u on u.lot_id = lots.id and ${standing('u')}
    cross join lateral (${standingPlaces('p.root = u.into_id')}) place`;

/**
 * Parts that hold a lot, however little of it: walked as a set, since products of fractions would underflow. And parts
 * that possibly do: that hold unidentified material which may be of it.
 *
 * @param below SQL: whether those under the floor are asked for
 */
export const membersOf = (below: string): string => `
  down(id) as (
    select $1::uuid
    union
    select i.lot_id from down join fact.lot_input i on i.input_id = down.id and ${standing('i')}
  ),
  possible(id) as (
    select c.lot_id from down cross join lateral (select * from (${CANDIDATES}) c where c.candidate_id = down.id) c
    union
    select e.lot_id from possible cross join lateral (
      select i.lot_id from fact.lot_input i where i.input_id = possible.id and ${standing('i')}
      union all select c.lot_id from (${CANDIDATES}) c where c.candidate_id = possible.id) e
  ),
  members as (${partsWith('down')} where ${below}),
  maybe as (${partsWith('possible')})`;

/** The hull (or, of a part that is in none, the part) that each reached place belongs to, with its share there. */
export const PLACED = `
  placed as (
    select r.*, r.kg / t.kg as share, j.hull_id, coalesce(j.hull_id, r.part_id) as owner
    from reach r
    join derived.place_role t on t.place_id = r.place_id and t.role = r.role
    left join fact.joint j on j.part_id = r.part_id and ${standing('j')}
  )`;

const OWNED = `
  owned as (
    select p.owner, p.hull_id, p.role, sum(p.kg) as kg, max(p.share) as share, max(${WEAKER}) as weakest,
      min(p.first_at) as first_at, max(p.last_at) as last_at,
      sum(p.kg) / (select sum(t.kg) from derived.place_role t where t.role = p.role and t.part_id in (
        select j.part_id from fact.joint j where j.hull_id = p.hull_id and ${standing('j')}
        union select min(p.part_id::text)::uuid where p.hull_id is null)) as share_of_hull
    from placed p group by p.owner, p.hull_id, p.role
  )`;

/** Those that hold enough, with those that hold a trace when asked, by number; one page of them. */
const PAGE = `
  found as (
    select owner, hull_id, sum(kg) as kg, max(share) as share, max(share_of_hull) as share_of_hull, max(weakest) as weakest,
      min(first_at) as first_at, max(last_at) as last_at, false as trace, false as possibly
    from owned group by owner, hull_id having max(share) >= $2
    union all
    select distinct coalesce(j.hull_id, m.part_id), j.hull_id, null::float8, null::float8, null::float8, null::int,
      null::timestamptz, null::timestamptz, true, false
    from members m left join fact.joint j on j.part_id = m.part_id and ${standing('j')}
    where $2 = 0 and coalesce(j.hull_id, m.part_id) not in (select owner from owned)
    union all
    select distinct coalesce(j.hull_id, m.part_id), j.hull_id, null::float8, null::float8, null::float8, null::int,
      null::timestamptz, null::timestamptz, false, true
    from maybe m left join fact.joint j on j.part_id = m.part_id and ${standing('j')}
    where coalesce(j.hull_id, m.part_id) not in (
      select owner from owned group by owner, hull_id having max(share) >= $2
      union all select coalesce(k.hull_id, s.part_id) from members s
        left join fact.joint k on k.part_id = s.part_id and ${standing('k')} where $2 = 0)
  ),
  named as (
    select f.*, n.as_printed as hull,
      coalesce(n.normalised, '~' || (select p.number from fact.part p where p.id = f.owner)) as key
    from found f left join fact.hull_number n on n.hull_id = f.hull_id and n.kind = 'hull number'
  ),
  page as (select * from named where $4::text is null or key > $4 order by key limit $5)`;

/** What is where in each hull of the page: worked out once for all of them, not hull by hull. */
const DETAILS = `
  part_role as (
    select t.part_id, t.role, sum(t.kg) as kg from derived.place_role t
    where t.part_id in (select part_id from placed where owner in (select owner from page)) group by t.part_id, t.role
  ),
  in_part as (
    select p.owner, p.part_id, p.role, sum(p.kg) as kg, sum(p.kg) / max(t.kg) as share,
      json_agg(json_build_object('place', ${placeLabel('p.place_id', 'p.into_kind')}, 'kind', p.into_kind, 'id', p.place_id,
        'role', p.role, 'kg', p.kg, 'share', p.share, 'basis', p.basis, 'firstAt', p.first_at, 'lastAt', p.last_at)
        order by p.first_at, p.place_id)::jsonb as places
    from placed p join part_role t on t.part_id = p.part_id and t.role = p.role
    where p.owner in (select owner from page) group by p.owner, p.part_id, p.role
  ),
  details as (
    select x.owner, json_agg(json_build_object('part', q.number, 'kind', q.kind, 'kg', x.kg, 'shareOfPart', x.share, 'places', x.places)
      order by q.number) as parts
    from (select owner, part_id, sum(kg) as kg, max(share) as share, jsonb_path_query_array(jsonb_agg(places order by role), '$[*][*]') as places
      from in_part group by owner, part_id) x
    join fact.part q on q.id = x.part_id group by x.owner
  )`;

/**
 * SQL: hulls that hold some of lot `$1`, with their largest layer share at least `$2`, members below the floor too when
 * `$3`, and those that possibly hold it, after the key `$4`, at most `$5` of them. A part that is in no hull stands for itself. In the order of the
 * hull number.
 *
 * share: kg of the lot in a place / kg of all lots of the same role in that place.
 */
export const reachedHulls = (reach: string): string => `
  with recursive ${membersOf('$3::boolean')}, reach as (${reach}), ${PLACED}, ${OWNED}, ${PAGE}, ${DETAILS}
  select n.key, n.hull,
    (select x.as_printed from fact.hull_number x where x.hull_id = n.hull_id and x.kind = 'HIN' order by x.recorded_at desc, x.id limit 1) as hin,
    n.kg, ${BASIS_OF_RANK}[n.weakest] as basis, n.share as "largestLayerShare", n.share_of_hull as "shareOfHull",
    n.first_at as "firstAt", n.last_at as "lastAt", n.trace, n.possibly,
    case when n.hull_id is null then null else ${whereabouts('n.hull_id')} end as now, coalesce(d.parts, (
      select json_agg(json_build_object('part', q.number, 'kind', q.kind, 'kg', 0, 'shareOfPart', 0, 'places', '[]'::json))
      from fact.part q where n.hull_id is null and q.id = n.owner), '[]') as parts
  from page n left join details d on d.owner = n.owner order by n.key`;
