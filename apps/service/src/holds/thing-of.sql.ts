import { standing } from '../platform/facts/standing.js';

/** SQL: what a hold is on, as JSON of the contract. */
export const thingOf = (h: string): string => `(case
  when ${h}.container_id is not null then (select json_build_object('what', 'container', 'code', c.label, 'lot', l.code, 'state', null)
    from fact.container c join fact.lot l on l.root = ${h}.lot_id and ${standing('l')} where c.root = ${h}.container_id and ${standing('c')} limit 1)
  when ${h}.lot_id is not null then (select json_build_object('what', 'lot', 'code', l.code, 'lot', l.code, 'state', null)
    from fact.lot l where l.root = ${h}.lot_id and ${standing('l')} limit 1)
  when ${h}.equipment_id is not null then (select json_build_object('what', 'equipment', 'code', e.code, 'lot', null, 'state', null)
    from fact.equipment e where e.root = ${h}.equipment_id and ${standing('e')} limit 1)
  when ${h}.mold_id is not null then (select json_build_object('what', 'mold state', 'code', m.code, 'lot', null, 'state', ${h}.mold_state)
    from fact.mold m where m.root = ${h}.mold_id and ${standing('m')} limit 1)
  else json_build_object('what', 'period', 'code', null, 'lot', null, 'state', null) end)`;

/** SQL: badge of who entered a fact. */
export const badgeOf = (x: string): string =>
  `(select w.badge from fact.journal e join fact.person w on w.id = e.person_id where e.id = ${x}.entry_id)`;

/** SQL: an instant as ISO 8601 text, for JSON. */
export const iso = (at: string): string => `to_char(${at} at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')`;

/** SQL: how a hold ended, as JSON; null while it is in force. */
export const endOf = (h: string): string => `(
  select json_build_object('how', case when o.closed then 'closed' else 'lifted' end, 'reason', o.reason,
    'happenedAt', ${iso('o.happened_at')}, 'by', ${badgeOf('o')})
  from fact.hold_lift o where o.hold_id = ${h}.root and ${standing('o')} order by o.turn desc limit 1)`;
