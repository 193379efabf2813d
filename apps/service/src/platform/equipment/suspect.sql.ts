import { standing } from '../facts/standing.js';

/**
 * SQL: a bad check of a piece of equipment makes what was done with it at an instant suspect.
 *
 * From the last good check of the same kind (not included) to the bad one (included), and after it until the next good
 * one: when equipment is found unfit, it is determined whether previous results are affected (ISO 9001:2015 7.1.5.2).
 */
const reaches = (at: string, asOf?: string): string => `(
  (bad_check.happened_at >= ${at} and not exists (
    select from fact.equipment_check good_check where good_check.equipment_id = bad_check.equipment_id and good_check.what = bad_check.what and good_check.good
      and good_check.happened_at >= ${at} and good_check.happened_at < bad_check.happened_at and ${standing('good_check', asOf)}))
  or (bad_check.happened_at < ${at} and not exists (
    select from fact.equipment_check good_check where good_check.equipment_id = bad_check.equipment_id and good_check.what = bad_check.what and good_check.good
      and good_check.happened_at > bad_check.happened_at and good_check.happened_at <= ${at} and ${standing('good_check', asOf)})))`;

/** SQL: what was done with this equipment at this instant is suspect. */
export const isSuspect = (equipment: string, at: string, asOf?: string): string => `exists (
  select from fact.equipment_check bad_check where bad_check.equipment_id = ${equipment} and not bad_check.good and ${standing('bad_check', asOf)} and ${reaches(at, asOf)})`;

/** SQL of the bad checks, as id and what, that make it suspect and that quality has not disposed of. */
export const suspectChecks = (equipment: string, at: string): string => `
  select bad_check.root as id, bad_check.what, bad_check.happened_at from fact.equipment_check bad_check
  where bad_check.equipment_id = ${equipment} and not bad_check.good and ${standing('bad_check')} and ${reaches(at)}
    and not exists (select from fact.disposition o where o.of_id = bad_check.root and o.disposition = 'use as is' and ${standing('o')})`;
