import { standing } from '../facts/standing.js';

const disposed = (fact: string, as: string, asOf?: string): string =>
  `exists (select from fact.disposition o where o.of_id = ${fact}.root and o.disposition in (${as}) and ${standing('o', asOf)})`;

/** SQL: a repair of this defect stands and was accepted. */
export const isRepaired = (defect: string, asOf?: string): string => `exists (
  select from fact.repair_defect rd
  join fact.repair rp on rp.root = rd.repair_id and ${standing('rp', asOf)}
  join fact.acceptance ac on ac.repair_id = rp.id and ac.accepted and ${standing('ac', asOf)}
  where rd.defect_id = ${defect}.root and ${standing('rd', asOf)})`;

/** SQL: a defect that is neither repaired and accepted nor under concession. */
export const isOpenDefect = (defect: string, asOf?: string): string =>
  `not ${disposed(defect, "'use as is'", asOf)} and not ${isRepaired(defect, asOf)}`;

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
