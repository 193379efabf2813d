import type { EntityManager } from 'typeorm';
import type { Obstacle } from '@hull-record/contracts';
import { lotsInParts, PLACES_OF_PARTS } from '../composition/lots-in-parts.js';
import { stateOrDefault } from '../lots/find-lots.js';
import { standing } from '../facts/standing.js';
import { isSuspect, suspectChecks } from '../equipment/suspect.sql.js';
import { withHoldsInTheWay } from '../holds/holds-in-the-way.js';
import { containerRejected, notLifted, perhapsDrawn } from '../store/holds.sql.js';
import { layersOf } from '../layers/layers-of-part.sql.js';
import { asksOf } from './asks.sql.js';
import { isUnproved } from '../facts/unproved.js';
import { isOpenDefect, isOpenNonconformity, isOpenReading } from './open.js';

/** SQL: something in the hull's parts, or in the lots `$2` in them, was drawn of a lot, and of a container as said of `x`. */
const drawn = (lot: string, container: string): string => `(
  exists (select from fact.used x join (${PLACES_OF_PARTS.replaceAll('$1', 'array(select id from parts)')}) place on place.place_id = x.into_id
    where x.lot_id = ${lot} and x.container_id ${container} and ${standing('x')})
  or exists (select from fact.lot_input x where x.input_id = ${lot} and x.lot_id = any($2::uuid[])
    and x.container_id ${container} and ${standing('x')}))`;

/** SQL of one row for a container that was drawn from, or that may have been, with words for the latter. */
const drawnFrom = (c: string): string => `
  lateral (select case when from_it then '' else ' Which container was used is not known: name it on what was used.' end as perhaps
    from (select ${drawn(`${c}.lot_id`, `= ${c}.root`)} as from_it) named
    where from_it or (${perhapsDrawn(c)} and ${drawn(`${c}.lot_id`, 'is null')}))`;

const PARTS = `parts as (
  select p.id, p.number, p.kind, p.schedule_id from fact.joint j join fact.part p on p.id = j.part_id
  where j.hull_id = $1 and ${standing('j')})`;

const PARTS_MISSING = `
  select 'part-missing' as rule, null::text as part, null::text as layer, h.id as about,
    'No ' || required.kind || ' is joined to the hull.' as detail, 0 as place
  from fact.hull h join fact.model m on m.id = h.model_id, unnest(m.required_parts) as required(kind)
  where h.id = $1 and not exists (select from parts p where p.kind = required.kind)`;

const LAYERS_MISSING = `
  select 'layer-missing', p.number, y.code, null::uuid, 'Layer ' || y.name || ' is not made.', y.position
  from parts p cross join lateral ${layersOf('p')} y
  where not exists (select from fact.layer_record r where r.part_id = p.id and r.schedule_layer_id = y.id and ${standing('r')})`;

const MADE = `made as (
  select p.number as part, r.id, r.root, y.code, y.name, y.position, y.hold_point, y.readings
  from parts p join fact.layer_record r on r.part_id = p.id and ${standing('r')}
  join fact.schedule_layer y on y.id = r.schedule_layer_id)`;

/** Layers, joints, repairs and touch-ups of the parts. */
const PLACED = `placed as (
  select p.number as part, place.place_id as root, m.code as layer, coalesce(m.name, 'a ' || place.into_kind) as place_name,
    coalesce(m.position, 0) as position
  from (${PLACES_OF_PARTS.replaceAll('$1', 'array(select id from parts)')}) place
  join parts p on p.id = place.part_id
  left join made m on m.root = place.place_id
  union all select p.number, p.id, null, 'the part itself', 0 from parts p)`;

/** A signature is of one version of a record, and of what was in it then: what comes after it must be signed again. */
const UNSIGNED = `
  select 'hold-point-unsigned', m.part, m.code, m.root, 'Hold point ' || m.hold_point || ' of ' || m.name || case
      when exists (select from fact.signature s where s.layer_record_id = m.id and ${standing('s')} and ${isUnproved('s.entry_id')})
      then ' is signed provisionally: its signer has to confirm it.'
      when exists (select from fact.signature s where s.layer_record_id = m.id and ${standing('s')})
      then ' was signed before more was used in it: sign it again.' else ' is not signed.' end, m.position
  from made m where m.hold_point is not null
    and not exists (select from fact.signature s where s.layer_record_id = m.id and ${standing('s')} and not ${isUnproved('s.entry_id')}
      and not exists (select from fact.used late where late.into_id = m.root and late.root = late.id and late.recorded_at > s.recorded_at and ${standing('late')}))`;

const READINGS_MISSING = `
  select 'reading-missing', m.part, m.code, m.root,
    q.what || ' of ' || m.name || ': ' || n.taken || ' of ' || q.spots || ' spots read.', m.position
  from made m, jsonb_to_recordset(m.readings) as q(what text, spots int),
    lateral (select count(distinct g.spot)::int as taken from fact.reading g where g.of_id = m.root and g.what = q.what
      and g.verdict <> 'no limit' and ${standing('g')}) n
  where n.taken < q.spots`;

const NOTHING_USED = `
  select 'nothing-used', m.part, m.code, m.root, 'Nothing is recorded as used in ' || m.name || '.', m.position
  from made m where not exists (select from fact.used u where u.into_id = m.root and ${standing('u')})`;

const READINGS_OUTSIDE = `
  select 'reading-outside', p.number, o.layer, g.root,
    g.what || ' spot ' || g.spot || ': ' || g.value || ' ' || g.unit || ' is ' || g.verdict
      || ': rework it and read it again, or give a concession.', o.position
  from parts p
  cross join lateral (
    select r.root, y.code as layer, y.position from fact.layer_record r
      join fact.schedule_layer y on y.id = r.schedule_layer_id where r.part_id = p.id and ${standing('r')}
    union all select root, 'joint', 0 from fact.joint r where r.part_id = p.id and ${standing('r')}
    union all select root, null, 0 from fact.repair r where r.part_id = p.id and ${standing('r')}
    union all select p.id, null, 0) o
  join fact.reading g on g.of_id = o.root and ${standing('g')}
  where ${isOpenReading('g')}`;

const DEFECTS_OPEN = `
  select 'defect-open', p.number, (select y.code from fact.schedule_layer y where y.id = d.schedule_layer_id), d.root,
    'Defect (' || d.kind || ') is open: repair it and have the repair accepted, or give a concession.', 0
  from parts p join fact.defect d on d.part_id = p.id and ${standing('d')} where ${isOpenDefect('d')}`;

const ASKS_OPEN = `
  select 'defect-asks', p.number, (select y.code from fact.schedule_layer y where y.id = d.schedule_layer_id), d.root,
    'Defect D' || d.number || ' (' || d.kind || ') asks for: ' || array_to_string(${asksOf('d')}, ', ') || '.', 0
  from parts p join fact.defect d on d.part_id = p.id and ${standing('d')} where cardinality(${asksOf('d')}) > 0`;

const TOUCH_UPS_OPEN = `
  select 'touch-up-not-accepted', p.number, null, t.root, 'Touch-up T' || t.number || ' is not accepted: have another person look at it.', 0
  from parts p join fact.touch_up t on t.part_id = p.id and ${standing('t')}
  where not exists (select from fact.touch_up_acceptance a where a.touch_up_id = t.id and a.accepted and ${standing('a')})`;

const PARTS_SCRAPPED = `
  select 'part-scrapped', p.number, null, s.root, 'Part ' || p.number || ' is scrapped: ' || s.reason, 0
  from parts p join fact.part_scrapped s on s.part_id = p.id and ${standing('s')}`;

const NONCONFORMITIES_OPEN = `
  select 'nonconformity-open', (select number from parts where id = c.part_id), null, c.root, c.detail, 0
  from fact.nonconformity c
  where ${standing('c')} and (c.part_id in (select id from parts) or (c.about_kind = 'hull' and c.about_id = $1)
      or (c.part_id is null and c.about_id = any($2::uuid[])))
    and ${isOpenNonconformity('c')}`;

/** One for each layer, joint, repair or touch-up and piece of equipment: until quality disposes of the bad check, or of each reading. */
const EQUIPMENT_SUSPECT = `
  select 'equipment-suspect', w.part, w.layer, k.id,
    w.what || ' ' || w.code || ' was found unfit (' || k.what || '), and ' || w.place_name || ' was made or read with it meanwhile: read again with another, or give a concession for the check.', w.position
  from (
    select m.part, m.layer, m.place_name, m.position, e.root as equipment_id, e.code, 'Equipment' as what, g.happened_at as at
    from placed m join fact.reading g on g.of_id = m.root and ${standing('g')} join fact.equipment e on e.id = g.equipment_id
    where not exists (select from fact.disposition o where o.of_id = g.root and o.disposition = 'use as is' and ${standing('o')})
      and not exists (select from fact.reading again where again.of_id = g.of_id and again.what = g.what and again.spot = g.spot
        and again.happened_at > g.happened_at and again.verdict = 'inside' and ${standing('again')}
        and again.equipment_id is not null and not ${isSuspect('again.equipment_id', 'again.happened_at')})
    union
    select m.part, m.layer, m.place_name, m.position, e.root, e.code, 'Gun', u.happened_at
    from placed m join fact.used u on u.into_id = m.root and ${standing('u')} join fact.equipment e on e.id = u.gun_id) w
  cross join lateral (${suspectChecks('w.equipment_id', 'w.at')}) k`;

const LOTS_HELD = `
  select 'lot-' || s.state, null, null, l.root, 'Lot ' || l.code || coalesce(' (' || l.supplier || ' ' || l.supplier_lot || ')', '') || ' is ' || s.state || '.', 0
  from fact.lot l, lateral (select ${stateOrDefault('l', "'infinity'")} as state) s
  where l.root = any($2::uuid[]) and ${standing('l')} and s.state <> 'released'`;

/** A hold on one container stands in the way of what was drawn from it, or from nobody knows which. */
const HOLDS = `
  select 'lot-on-hold', null, null, h.root, 'Lot ' || l.code || coalesce(', container ' || c.label, '') || ' is on hold (' || h.kind || '): ' || rtrim(h.reason, '.') || '.' || coalesce(d.perhaps, ''), 0
  from fact.hold h
  join fact.lot l on l.root = h.lot_id and ${standing('l')}
  left join fact.container c on c.root = h.container_id and ${standing('c')}
  left join ${drawnFrom('c')} d on true
  where h.lot_id = any($2::uuid[]) and ${standing('h')} and ${notLifted('h', "'infinity'")}
    and (h.container_id is null or d.perhaps is not null)`;

const CONTAINERS_REJECTED = `
  select 'container-rejected', null, null, c.root, 'Container ' || c.label || ' of lot ' || l.code || ' is rejected.' || d.perhaps, 0
  from fact.container c join fact.lot l on l.root = c.lot_id and ${standing('l')} cross join ${drawnFrom('c')} d
  where c.lot_id = any($2::uuid[]) and ${standing('c')} and ${containerRejected('c.root', "'infinity'")}`;

/** What a correction brings to light is not known before all it reaches is worked out, and judged. */
const RECOMPUTING = `
  select distinct 'being-recomputed', p.number, null::text, s.recomputation_id,
    'What a correction changed in part ' || p.number || ' is being worked out: ask again when GET /api/recomputations says it is finished.', 0
  from parts p join work.stale_place s on s.part_id = p.id`;

const ALL = `with ${PARTS}, ${MADE}, ${PLACED}
  select distinct rule, part, layer, about, detail, place from (
    ${[PARTS_MISSING, LAYERS_MISSING, UNSIGNED, NOTHING_USED, READINGS_MISSING, READINGS_OUTSIDE, DEFECTS_OPEN, NONCONFORMITIES_OPEN, EQUIPMENT_SUSPECT, LOTS_HELD, HOLDS, ASKS_OPEN, TOUCH_UPS_OPEN, PARTS_SCRAPPED, CONTAINERS_REJECTED, RECOMPUTING].join(' union all ')}
  ) found order by part nulls last, place, rule, detail, about`;

/** Everything that stands in the way of releasing a hull; nothing when it may be released. */
export const obstaclesOf = async (tx: EntityManager, hullId: string): Promise<readonly Obstacle[]> => {
  const parts = await tx.query<{ part_id: string }[]>(
    `select j.part_id from fact.joint j where j.hull_id = $1 and ${standing('j')}`,
    [hullId],
  );
  const lots = await lotsInParts(
    tx,
    parts.map((row) => row.part_id),
  );
  return withHoldsInTheWay(tx, hullId, lots, await tx.query<Obstacle[]>(ALL, [hullId, lots]));
};
