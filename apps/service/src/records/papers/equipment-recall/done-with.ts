import type { EntityManager } from 'typeorm';
import { standing } from '../../../platform/facts/standing.js';
import { standingPlaces } from '../../../platform/places/places.js';
import { placeLabel } from '../../../platform/reach/reach.sql.js';
import type { EnteredReading } from '../../word-values.js';

/** A reading taken with equipment, or an amount sprayed or dispensed with it. */
export interface DoneRow extends EnteredReading {
  readonly id: string;
  readonly kind: 'reading' | 'drawn';
  /** What was read; of an amount, the lot. */
  readonly what: string;
  readonly spot: number | null;
  readonly part: string | null;
  readonly hull: string | null;
  /** Such as "layer L2", "lot B-1", or "part". */
  readonly place: string;
  readonly by: string;
  readonly happened_at: Date;
}

const placed = (of: string): string => `
  left join lateral (${standingPlaces(`p.root = ${of}`)}) place on true`;

const named = (part: string): string => `
  left join fact.part part on part.id = ${part}
  left join fact.joint j on j.part_id = part.id and ${standing('j')}
  left join fact.hull_number n on n.hull_id = j.hull_id and n.kind = 'hull number'`;

const label = (otherwise: string): string => `case
  when place.into_kind = 'joint' then 'joint'
  when place.into_kind is not null then place.into_kind || ' ' || ${placeLabel('place.place_id', 'place.into_kind')}
  else ${otherwise} end`;

const by = (x: string): string =>
  `(select w.badge from fact.journal e join fact.person w on w.id = e.person_id where e.id = ${x}.entry_id)`;

/** Readings of places, whole parts and lots; those of a place that was withdrawn went with it. */
const READINGS = `
  select g.root as id, 'reading' as kind, g.what, g.spot, g.value::text, g.below::text, g.unit, part.number as part,
    n.as_printed as hull, ${label(`case g.of_kind when 'lot' then 'lot ' || coalesce(l.code, '') else 'the whole part' end`)} as place,
    ${by('g')} as by, g.happened_at, g.recorded_at
  from fact.reading g ${placed('g.of_id')}
  left join fact.lot l on g.of_kind = 'lot' and l.root = g.of_id and ${standing('l')}
  ${named(`coalesce(place.part_id, case when g.of_kind = 'part' then g.of_id end)`)}
  where g.equipment_id = $1 and ${standing('g')} and (place.place_id is not null or g.of_kind in ('part', 'lot'))`;

const USED = `
  select u.root, 'drawn', 'lot ' || l.code, null, u.quantity::text, null, u.unit, part.number, n.as_printed,
    ${label('u.into_kind')}, ${by('u')}, u.happened_at, u.recorded_at
  from fact.used u join fact.lot l on l.root = u.lot_id and ${standing('l')} ${placed('u.into_id')} ${named('place.part_id')}
  where u.gun_id = $1 and ${standing('u')}`;

const BUCKETS = `
  select i.root, 'drawn', 'lot ' || l.code, null, i.quantity::text, null, i.unit, null, null, 'into lot ' || made.code,
    ${by('i')}, i.happened_at, i.recorded_at
  from fact.lot_input i join fact.lot l on l.root = i.input_id and ${standing('l')}
  join fact.lot made on made.root = i.lot_id and ${standing('made')}
  where i.gun_id = $1 and ${standing('i')}`;

const DONE = `
  select d.* from (${READINGS} union all ${USED} union all ${BUCKETS}) d
  order by d.happened_at, d.part, d.place, d.what, d.spot, d.recorded_at, d.id`;

/** Everything that was read, sprayed or dispensed with a piece of equipment, the oldest first. */
export const loadDoneWith = (tx: EntityManager, equipmentId: string): Promise<DoneRow[]> =>
  tx.query(DONE, [equipmentId]);
