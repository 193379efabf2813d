import { standing } from '../facts/standing.js';
import { textOf } from '../texts/text-of.sql.js';

/** SQL: the mark of a claim on its hull: C1, C2 ... in the order they were recorded. It never changes. */
export const claimMark = (alias: string): string => `('C' || ${alias}.number)`;

/**
 * SQL: the letters of notices on the hull of a claim that were mailed before the day it was reported on, in the plant's
 * days, and did not come back. `what` is selected of them: `m` is the mailing.
 */
const lettersBefore = (alias: string, what: string, asOf?: string): string => `
  select ${what} from fact.notice_mailing m join fact.plant lp on lp.id = m.plant_id
  where m.hull_id = ${alias}.hull_id and ${standing('m', asOf)} and (m.happened_at at time zone lp.time_zone)::date < ${alias}.reported_on
    and not exists (select from fact.mailing_returned r where r.mailing_id = m.root and ${standing('r', asOf)})`;

/** SQL: how a claim came to light, by the newest word on it; nobody's word goes before a letter that had reached its hull. */
export const foundBy = (alias: string, asOf?: string): string => `coalesce((
  select m.found_by from fact.claim_mark m where m.claim_id = ${alias}.root and ${standing('m', asOf)}
  order by m.happened_at desc, m.recorded_at desc, m.id limit 1),
  case when ${alias}.found_by = 'owner or dealer' and exists (${lettersBefore(alias, '', asOf)}) then 'after a notice' end,
  ${alias}.found_by)`;

/** SQL: why a claim counts as it does: the reason of the newest word on it, or the first letter before it. */
export const foundByReason = (alias: string): string => `coalesce((
  select ${textOf('m', 'reason')} from fact.claim_mark m where m.claim_id = ${alias}.root and ${standing('m')}
  order by m.happened_at desc, m.recorded_at desc, m.id limit 1),
  case when ${alias}.found_by = 'owner or dealer' then (${lettersBefore(
    alias,
    `'A letter of notice ' || (select n.code from fact.notice n where n.root = m.notice_id and ${standing('n')}) || ' was mailed on '
      || to_char(m.happened_at at time zone lp.time_zone, 'YYYY-MM-DD') || ', before it was reported.'`,
  )} order by m.happened_at, m.id limit 1) end)`;

/** SQL that is true for a claim that a hold's inspection or a notice brought to light: it says nothing about lots. */
export const isPrompted = (alias: string, asOf?: string): string =>
  `${foundBy(alias, asOf)} in ('inspection of a hold', 'after a notice')`;

/** SQL: the day on which what is claimed was first known of. */
export const claimedOn = (alias: string): string => `coalesce(${alias}.noticed_on, ${alias}.reported_on)`;

/** SQL that is true for the first claim of a hull and kind; the others are kept, and not analysed. */
export const isFirstClaim = (alias: string, asOf?: string): string => `not exists (
  select from fact.claim earlier
  where earlier.hull_id = ${alias}.hull_id and earlier.kind = ${alias}.kind and ${standing('earlier', asOf)}
    and (${claimedOn('earlier')}, earlier.recorded_at, earlier.id) < (${claimedOn(alias)}, ${alias}.recorded_at, ${alias}.id))`;

/** SQL: what was decided on a claim last; null when nothing was. */
export const lastDecision = (alias: string): string => `(
  select d.decision from fact.claim_decision d where d.claim_id = ${alias}.root and ${standing('d')}
  order by d.happened_at desc, d.recorded_at desc, d.id limit 1)`;
