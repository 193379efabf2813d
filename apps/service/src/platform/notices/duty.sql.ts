import { standing } from '../facts/standing.js';

/** SQL: the day of an instant in the calendar of the plant of a row. */
export const dayIn = (at: string, plant: string): string =>
  `to_char(${at} at time zone (select p.time_zone from fact.plant p where p.id = ${plant}), 'YYYY-MM-DD')`;

const ISO = `'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"'`;

/** SQL of the decisions about hold `$1`, the last one last. */
export const DECISIONS = `
  select d.root as id, d.decision, to_char(d.discovered_on, 'YYYY-MM-DD') as "discoveredOn", w.badge as "decidedBy", d.why, d.rule, d.counsel,
    to_char(d.happened_at at time zone 'UTC', ${ISO}) as "happenedAt"
  from fact.duty_decision d join fact.person w on w.id = d.decided_by
  where d.hold_id = $1 and ${standing('d')} order by d.happened_at, d.recorded_at, d.id`;

/** SQL of the notices of hold `$1`. */
export const NOTICES = `
  select n.root as id, n.code, to_char(n.happened_at at time zone 'UTC', ${ISO}) as "happenedAt" from fact.notice n
  where n.hold_id = $1 and ${standing('n')} order by n.happened_at, n.id`;

/** SQL of the days, by hold `$1` of hulls `$2`, from which somebody might argue that the builder knew. */
export const ARGUABLE = `
  select x.on, x.what from (
    select ${dayIn('h.happened_at', 'h.plant_id')} as on, 'the hold was placed' as what, h.recorded_at from fact.hold h where h.root = $1 and ${standing('h')}
    union all (select ${dayIn('d.happened_at', 'd.plant_id')}, 'the fault was first found in a hull of the hold', d.recorded_at
      from fact.hold_disposition d where d.hold_id = $1 and d.what in ('found', 'repaired') and ${standing('d')} order by d.happened_at limit 1)
    union all (select ${dayIn('f.happened_at', 'f.plant_id')}, 'hull ' || n.as_printed || ' came back', f.recorded_at
      from fact.life_fact f join fact.hull_number n on n.hull_id = f.hull_id and n.kind = 'hull number'
      where f.hull_id = any($2) and f.what = 'returned' and ${standing('f')} order by f.happened_at limit 1)
    union all (select ${dayIn('d.happened_at', 'd.plant_id')}, 'a defect (' || d.kind || ') was reported on hull ' || n.as_printed || ', which had left', d.recorded_at
      from fact.defect d join fact.joint j on j.part_id = d.part_id and ${standing('j')}
      join fact.hull_number n on n.hull_id = j.hull_id and n.kind = 'hull number'
      where j.hull_id = any($2) and d.claim_id is null and ${standing('d')} and exists (select from fact.life_fact f where f.hull_id = j.hull_id
        and f.what in ('left the place of manufacture', 'at dealer', 'sold to first purchaser', 'exported') and f.happened_at <= d.happened_at and ${standing('f')})
      order by d.happened_at limit 1)
    union all (select to_char(c.reported_on, 'YYYY-MM-DD'), 'a claim (' || c.kind || ') of hull ' || n.as_printed || ' was reported', c.recorded_at
      from fact.claim c join fact.hull_number n on n.hull_id = c.hull_id and n.kind = 'hull number'
      where c.hull_id = any($2) and ${standing('c')} order by c.reported_on, c.recorded_at, c.id limit 1)) x
  order by x.on, x.recorded_at, x.what`;

/** SQL of letters of notice `$1`, the oldest first. */
export const MAILINGS = `
  select m.root as id, m.hull_id, m.dealer_id, m.owner_id, m.to_what, m.class, m.proof, ${dayIn('m.happened_at', 'm.plant_id')} as day,
    to_char(m.happened_at at time zone 'UTC', ${ISO}) as "happenedAt",
    (select json_build_object('why', b.why, 'happenedAt', to_char(b.happened_at at time zone 'UTC', ${ISO}))
      from fact.mailing_returned b where b.mailing_id = m.root and ${standing('b')} order by b.turn desc limit 1) as returned
  from fact.notice_mailing m where m.notice_id = $1 and ${standing('m')} order by m.happened_at, m.recorded_at, m.id`;

/** SQL of the dealers and owners of hulls `$1`, without personal data. */
export const RECIPIENTS = `
  select distinct 'dealer' as kind, f.hull_id, f.dealer_id as id, d.code as dealer, true as "hasAddress", null::timestamptz as since
  from fact.life_fact f join fact.dealer d on d.root = f.dealer_id and ${standing('d')} where f.hull_id = any($1) and ${standing('f')}
  union all
  select o.what, o.hull_id, o.root, null, coalesce(w.detail ->> 'address', '') <> '', o.happened_at
  from fact.owner o left join work.owner_detail w on w.owner_id = o.root where o.hull_id = any($1) and ${standing('o')}
  order by 1, 6, 3`;

/** SQL of the reports of notice `$1`. */
export const REPORTS = `
  select r.root as id, r.what, to_char(r.sent_on, 'YYYY-MM-DD') as "sentOn", r.proof, r.figures from fact.notice_report r
  where r.notice_id = $1 and ${standing('r')} order by r.sent_on, r.turn`;
