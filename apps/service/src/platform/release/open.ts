import { standing } from '../facts/standing.js';

/** A decision is about what stood when it was made: a fact that was corrected since has to be decided on again. */
const disposed = (fact: string, as: string, asOf?: string): string =>
  `exists (select from fact.disposition o where o.of_id = ${fact}.root and o.disposition in (${as})
    and o.recorded_at >= ${fact}.recorded_at and ${standing('o', asOf)})`;

/** SQL: what was said last of a repair, at its acceptance or when it was inspected again; false when nothing was. */
const isGood = (repair: string, asOf?: string): string => `coalesce((
  select said.good from (
    select ac.accepted as good, ac.happened_at, ac.recorded_at from fact.acceptance ac where ac.repair_id = ${repair}.id and ${standing('ac', asOf)}
    union all
    select ri.passed, ri.happened_at, ri.recorded_at from fact.re_inspection ri where ri.repair_id = ${repair}.id and ${standing('ri', asOf)}) said
  order by said.happened_at desc, said.recorded_at desc, said.good limit 1), false)
  and exists (select from fact.acceptance ac where ac.repair_id = ${repair}.id and ac.accepted and ${standing('ac', asOf)})`;

/** SQL: the newest repair of this defect that stands was accepted, and did not fail when it was inspected again. */
export const isRepaired = (defect: string, asOf?: string): string => `coalesce((
  select ${isGood('rp', asOf)}
  from fact.repair_defect rd
  join fact.repair rp on rp.root = rd.repair_id and ${standing('rp', asOf)}
  where rd.defect_id = ${defect}.root and ${standing('rd', asOf)}
  order by rp.happened_at desc, rp.recorded_at desc, rp.number desc limit 1), false)`;

/** SQL: a repair of this defect was refused, or failed when it was inspected again, after an instant. */
const failedSince = (defect: string, at: string, asOf?: string): string => `exists (
  select from fact.repair_defect fd
  join fact.repair fr on fr.root = fd.repair_id and ${standing('fr', asOf)}
  where fd.defect_id = ${defect}.root and ${standing('fd', asOf)} and (
    exists (select from fact.acceptance fa where fa.repair_id = fr.id and not fa.accepted and fa.happened_at > ${at} and ${standing('fa', asOf)})
    or exists (select from fact.re_inspection fi where fi.repair_id = fr.id and not fi.passed and fi.happened_at > ${at} and ${standing('fi', asOf)})))`;

/** SQL: a defect is under concession, and no repair of it failed since: then the concession was of something else. */
export const isConceded = (defect: string, asOf?: string): string => `exists (
  select from fact.disposition given where given.of_id = ${defect}.root and given.disposition = 'use as is'
    and given.recorded_at >= ${defect}.recorded_at and ${standing('given', asOf)}
    and not ${failedSince(defect, 'given.happened_at', asOf)})`;

/** SQL: a defect that is neither repaired and accepted nor under concession. */
export const isOpenDefect = (defect: string, asOf?: string): string =>
  `not ${isConceded(defect, asOf)} and not ${isRepaired(defect, asOf)}`;

/**
 * SQL: a reading that is outside, or cannot be judged, and is neither under concession nor read again inside at the
 * same spot after it was reworked.
 */
export const isOpenReading = (reading: string, asOf?: string): string => `
  ${reading}.verdict in ('outside', 'cannot be judged')
  and not ${disposed(reading, "'use as is'", asOf)}
  and not (${disposed(reading, "'rework', 'repair'", asOf)} and exists (
    select from fact.reading again where again.of_id = ${reading}.of_id and again.what = ${reading}.what
      and again.spot = ${reading}.spot and again.verdict = 'inside' and again.happened_at > ${reading}.happened_at and ${standing('again', asOf)}))`;

/** SQL: an entry that was not proved to be of who is said to have made it, and was confirmed by that person since. */
const isConfirmed = (c: string): string => `(${c}.about_kind = 'entry' and exists (
  select from fact.entry_confirmation said where said.unproved_entry_id = ${c}.about_id and said.confirmed and ${standing('said')}))`;

/**
 * SQL: a nonconformity that quality has not closed: by a concession, or by rework or repair that was done and inspected
 * since.
 */
export const isOpenNonconformity = (c: string): string => `not ${isConfirmed(c)} and not exists (
  select from fact.disposition closing where closing.of_id = ${c}.root and ${standing('closing')} and (
    closing.disposition = 'use as is'
    or (closing.disposition in ('rework', 'repair') and exists (
      select from fact.rework done where done.disposition_id = closing.root and ${standing('done')}))))`;
