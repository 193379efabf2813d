import { standing } from '../facts/standing.js';

const takenUntil = (lot: string, until: string): string => `(
  coalesce((select sum(u.kg) from fact.used u where u.lot_id = ${lot} and ${standing('u')}${until.replaceAll('@', 'u')}), 0)
  + coalesce((select sum(i.kg) from fact.lot_input i where i.input_id = ${lot} and ${standing('i')}${until.replaceAll('@', 'i')}), 0))`;

const lostUntil = (lot: string, until: string): string =>
  `coalesce((select sum(o.kg) from fact.lot_loss o where o.lot_id = ${lot} and ${standing('o')}${until.replaceAll('@', 'o')}), 0)`;

/** SQL: kilograms of a lot that were used on parts and molds, or went into other lots. */
export const takenKg = (lot: string): string => takenUntil(lot, '');

/** SQL: kilograms of a lot that were lost to use: scrapped, purged, kept as samples. */
export const lostKg = (lot: string): string => lostUntil(lot, '');

const weight = (lot: string): string =>
  `(select booked.kg from fact.lot booked where booked.root = ${lot} and ${standing('booked')})`;

/**
 * SQL of one row, the newest measurement of what was left of a lot, as at and kg: a count of all of it, or, of a tank
 * lot, the next fill, after whose heel nothing of it is left.
 */
const MEASURED = (lot: string): string => `(
  select found.at, found.kg from (
    select n.happened_at as at, n.kg from fact.lot_count n where n.lot_id = ${lot} and n.container_id is null and ${standing('n')}
    union all
    select min(later.happened_at), 0 from fact.lot filled
    join fact.lot later on later.tank_id = filled.tank_id and later.happened_at > filled.happened_at and ${standing('later')}
    where filled.root = ${lot} and ${standing('filled')} having min(later.happened_at) is not null) found
  order by found.at desc limit 1)`;

/**
 * SQL: what a lot was measured to weigh more (gain) or less (loss, negative) than the book says. Null while nothing was
 * measured.
 *
 * It is worked out, not kept, so it follows corrections of anything that was drawn.
 */
export const measuredDifferenceKg = (lot: string): string => `(
  select m.kg - (${weight(lot)} - ${takenUntil(lot, ' and @.happened_at <= m.at')} - ${lostUntil(lot, ' and @.happened_at <= m.at')})
  from ${MEASURED(lot)} m)`;

/**
 * SQL: kilograms left of a lot by the book; negative is an overdraw, which asks for a count.
 *
 * @param lot SQL of its id; an alias in it must be none of those used here (`booked`, `filled`, `later`, `found`, `m`,
 *   `n`, `o`, `u`, `i`), which would be taken for the inner ones
 */
export const bookKg = (lot: string): string =>
  `(${weight(lot)} - ${takenKg(lot)} - ${lostKg(lot)} + coalesce(${measuredDifferenceKg(lot)}, 0))`;
