import { requireCalendarDate } from '../calendar.js';
import { NumberInvalid } from '../numbers.js';

const DAY_MS = 86_400_000;

/** The calendar day so many days after another; both YYYY-MM-DD. Throws NotACalendarDate, NumberInvalid. */
export const daysAfter = (day: string, days: number): string => {
  if (!Number.isInteger(days)) throw new NumberInvalid('days', days, 'a whole number');
  return new Date(Date.parse(`${requireCalendarDate(day)}T00:00:00Z`) + days * DAY_MS).toISOString().slice(0, 10);
};

/**
 * The same day so many years later; 29 February in a common year becomes 1 March, never earlier than the full years.
 *
 * Throws NotACalendarDate, NumberInvalid.
 */
export const yearsAfter = (day: string, years: number): string => {
  if (!Number.isInteger(years) || years < 0) throw new NumberInvalid('years', years, 'a whole number, zero or more');
  const [year = '', month = '', date = ''] = requireCalendarDate(day).split('-');
  const later = new Date(Date.UTC(Number(year) + years, Number(month) - 1, Number(date)));
  return later.toISOString().slice(0, 10);
};
