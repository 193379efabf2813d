import { standing } from '../facts/standing.js';

/** SQL: kilograms of a lot that were used in layers, joints and repairs, or went into other lots. */
export const takenKg = (lot: string): string => `(
  coalesce((select sum(u.kg) from fact.used u where u.lot_id = ${lot} and ${standing('u')}), 0)
  + coalesce((select sum(i.kg) from fact.lot_input i where i.input_id = ${lot} and ${standing('i')}), 0))`;

const weight = (lot: string): string =>
  `(select booked.kg from fact.lot booked where booked.root = ${lot} and ${standing('booked')})`;

/**
 * SQL: what a tank lot weighed more (gain) or less (loss, negative) than the book says, known from the heel that was
 * measured before the next fill: after it nothing of the lot is left. Null while nothing was measured.
 *
 * It is worked out, not kept, so it follows corrections of anything that was drawn.
 */
export const measuredDifferenceKg = (lot: string): string => `(
  select ${takenKg(lot)} - filled.kg from fact.lot filled where filled.root = ${lot} and ${standing('filled')} and exists (
    select from fact.lot later where later.tank_id = filled.tank_id and later.happened_at > filled.happened_at and ${standing('later')}))`;

/**
 * SQL: kilograms left of a lot by the book; negative is an overdraw, which asks for a count.
 *
 * @param lot SQL of its id; an alias in it must be none of `booked`, `filled`, `later`, `u`, `i`, which would be taken
 *   for the inner ones
 */
export const bookKg = (lot: string): string =>
  `(${weight(lot)} - ${takenKg(lot)} + coalesce(${measuredDifferenceKg(lot)}, 0))`;
