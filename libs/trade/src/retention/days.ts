import { requireCalendarDate } from '../calendar.js';
import { NumberInvalid } from '../numbers.js';

const DAY_MS = 86_400_000;

/** The calendar day so many days after another; both YYYY-MM-DD. Throws NotACalendarDate, NumberInvalid. */
export const daysAfter = (day: string, days: number): string => {
  if (!Number.isInteger(days)) throw new NumberInvalid('days', days, 'a whole number');
  return dayOf(Date.parse(`${requireCalendarDate(day)}T00:00:00Z`) + days * DAY_MS, 'days', days);
};

/**
 * The same day so many years later; 29 February in a common year becomes 1 March, never earlier than the full years.
 *
 * Throws NotACalendarDate, NumberInvalid.
 */
export const yearsAfter = (day: string, years: number): string => {
  if (!Number.isInteger(years) || years < 0) throw new NumberInvalid('years', years, 'a whole number, zero or more');
  const [year = '', month = '', date = ''] = requireCalendarDate(day).split('-');
  const later = new Date(0);
  later.setUTCFullYear(Number(year) + years, Number(month) - 1, Number(date));
  return dayOf(later.getTime(), 'years', years);
};

/** The calendar ends with the year 9999: what lies beyond is no day that the record can write. */
const LAST_MS = Date.UTC(9999, 11, 31);
const FIRST_MS = new Date(0).setUTCFullYear(0, 0, 1);

const dayOf = (ms: number, name: string, value: number): string => {
  if (!(ms >= FIRST_MS && ms <= LAST_MS))
    throw new NumberInvalid(name, value, 'so few that the day is in the years 0 to 9999');
  return new Date(ms).toISOString().slice(0, 10);
};
