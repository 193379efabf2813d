import { standing } from '../facts/standing.js';
import { moldStateAt } from '../molds/mold.sql.js';
import { PLACE_TABLES, standingPlaces } from '../places/places.js';
import { membersOf, PLACED } from '../reach/reach.sql.js';

/** Zone of a layer that is said when the schedule names none. */
const ALL_ZONES = 'whole part';

/** SQL: a place is in zone `$3`, or the zone of it is not known, which leaves it in. */
const inZone = (place: string): string => `($3::text is null or not exists (
  select from fact.layer_record zoned join fact.schedule_layer zone_of on zone_of.id = zoned.schedule_layer_id
  where zoned.root = ${place} and ${standing('zoned')} and zone_of.zone not in ($3, '${ALL_ZONES}')))`;

/** SQL: something was made within the range `$4`. */
const inTime = (from: string, until: string): string =>
  `($4::tstzrange is null or tstzrange(${from}, ${until}, '[]') && $4)`;

/** SQL: a row of `owner` is asked for: all when `$2` is null, else the hull of that id. */
const asked = (owner: string): string => `($2::uuid is null or ${owner} = $2)`;

/** Those that hold a lot with kilograms and shares; `possibly` when more of it may be there. */
const WITH_SHARES = `
  select p.owner, p.hull_id, sum(p.kg) as kg,
    max(p.share) filter (where ${inZone('p.place_id')} and ${inTime('p.first_at', 'p.last_at')}) as share,
    p.owner in (select owner from maybe_there) as possibly, false as trace
  from placed p where ${asked('p.owner')} group by p.owner, p.hull_id`;

const owners = (set: string): string => `
  select distinct coalesce(j.hull_id, m.part_id) as owner, j.hull_id
  from ${set} m left join fact.joint j on j.part_id = m.part_id and ${standing('j')}
  where ${asked('coalesce(j.hull_id, m.part_id)')}`;

/**
 * SQL: who holds some of a lot, as owner (the hull, or the part that is in none), with the largest share within zone and
 * period. `$1` is the lot, `$2` the one hull asked for, `$3` the zone and `$4` the range, each null for all. What is
 * possibly there stays in whatever the scope is: nobody knows where it went.
 *
 * @param reach SQL of the places reached
 * @param members SQL of `members` and `maybe`, each of parts
 */
export const ownersOfLot = (reach: string, members = membersOf('true')): string => `
  with recursive ${members}, reach as (${reach}), ${PLACED}, maybe_there as (${owners('maybe')}), shared as (${WITH_SHARES})
  select * from shared
  union all select owner, hull_id, null, null, true, false from maybe_there where owner not in (select owner from shared)
  union all select owner, hull_id, null, null, false, true from (${owners('members')}) m
    where owner not in (select owner from shared union all select owner from maybe_there)`;

/** SQL: the parts in which something was drawn of a lot without naming the container, and which of it is not known. */
const PERHAPS = `
  perhaps(id) as (
    select i.lot_id from fact.lot_input i where i.input_id = $1 and i.container_id is null and ${standing('i')}
    union select i.lot_id from perhaps join fact.lot_input i on i.input_id = perhaps.id and ${standing('i')})`;

/** Members of a container: none below the floor, since it is walked by name; and those that are perhaps of it when `$13`. */
export const CONTAINER_MEMBERS = `${PERHAPS},
  members as (select null::uuid as part_id where false),
  maybe as (select distinct place.part_id from fact.used u cross join lateral (${standingPlaces('p.root = u.into_id')}) place
    where $13::boolean and ${standing('u')} and ((u.lot_id = $1 and u.container_id is null) or u.lot_id in (select id from perhaps)))`;

/** SQL of places and parts touched by equipment `$1`, as part_id, place_id (null: the whole part) and at. */
const BY_EQUIPMENT = `
  made(id) as (
    select i.lot_id from fact.lot_input i where i.gun_id = $1 and ${standing('i')} and ${inTime('i.happened_at', 'i.happened_at')}
    union select i.lot_id from made join fact.lot_input i on i.input_id = made.id and ${standing('i')}),
  touched as (
    select place.part_id, place.place_id, u.happened_at as at from fact.used u
    cross join lateral (${standingPlaces('p.root = u.into_id')}) place where u.gun_id = $1 and ${standing('u')}
    union all select place.part_id, place.place_id, null from made join fact.used u on u.lot_id = made.id and ${standing('u')}
    cross join lateral (${standingPlaces('p.root = u.into_id')}) place
    union all select place.part_id, place.place_id, g.happened_at from fact.reading g
    cross join lateral (${standingPlaces('p.root = g.of_id')}) place where g.equipment_id = $1 and ${standing('g')}
    union all select g.of_id, null, g.happened_at from fact.reading g where g.equipment_id = $1 and g.of_kind = 'part' and ${standing('g')})`;

/** SQL of the parts molded in state `$5` of mold `$1`. */
const BY_MOLD = `
  touched as (select p.id as part_id, null::uuid as place_id, p.happened_at as at from fact.part p
    where p.mold_id = $1 and ${standing('p')} and ${moldStateAt('p.mold_id', 'p.happened_at')} = $5::int)`;

/** SQL of what was made or begun in plant `$1`. */
const BY_PERIOD = `
  touched as (
    ${Object.values(PLACE_TABLES)
      .map(
        (table) =>
          `select p.part_id, p.root as place_id, p.happened_at as at from fact.${table} p where p.plant_id = $1 and ${standing('p')} and $4::tstzrange @> p.happened_at`,
      )
      .join(' union all ')}
    union all select p.id, null, p.happened_at from fact.part p where p.plant_id = $1 and ${standing('p')} and $4::tstzrange @> p.happened_at)`;

/** SQL: who was touched, as `ownersOfLot` gives them; there is no share, and in scope is 1. */
const ownersTouched = (touched: string): string => `
  with recursive ${touched}
  select coalesce(j.hull_id, t.part_id) as owner, j.hull_id, null::float8 as kg,
    max(1::float8) filter (where (t.place_id is null or ${inZone('t.place_id')}) and (t.at is null or ${inTime('t.at', 't.at')})) as share,
    false as possibly, false as trace
  from touched t left join fact.joint j on j.part_id = t.part_id and ${standing('j')}
  where ${asked('coalesce(j.hull_id, t.part_id)')}
  group by coalesce(j.hull_id, t.part_id), j.hull_id`;

export const OWNERS_OF_EQUIPMENT = ownersTouched(BY_EQUIPMENT);
export const OWNERS_OF_MOLD = ownersTouched(BY_MOLD);
export const OWNERS_OF_PERIOD = ownersTouched(BY_PERIOD);
