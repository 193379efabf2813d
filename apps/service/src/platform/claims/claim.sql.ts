import { standing } from '../facts/standing.js';

/** SQL: the mark of a claim on its hull: C1, C2 ... in the order they were recorded. It never changes. */
export const claimMark = (alias: string): string => `('C' || ${alias}.number)`;

/** SQL: how a claim came to light, by the newest word on it. */
export const foundBy = (alias: string, asOf?: string): string => `coalesce((
  select m.found_by from fact.claim_mark m where m.claim_id = ${alias}.root and ${standing('m', asOf)}
  order by m.happened_at desc, m.recorded_at desc, m.id limit 1), ${alias}.found_by)`;

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
