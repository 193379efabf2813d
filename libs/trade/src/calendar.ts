import { TradeError } from './errors.js';

/** A text that should be a calendar date is none. Data: `text`. */
export class NotACalendarDate extends TradeError {
  readonly code = 'not-a-calendar-date';

  constructor(text: string) {
    super(`"${text}" is not a calendar date. Write the year, month and day as YYYY-MM-DD.`, { text });
  }
}

/** Whether a text is a real day written YYYY-MM-DD (ISO 8601 calendar date, years 0000 to 9999). */
export const isCalendarDate = (text: string): boolean => {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const day = new Date(`${text}T00:00:00Z`);
  // 30 February parses as 1 March, so the day must also print as it was written.
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
};

/** Returns the text, or throws NotACalendarDate. */
export const requireCalendarDate = (text: string): string => {
  if (!isCalendarDate(text)) throw new NotACalendarDate(text);
  return text;
};

/**
 * Whether material that expires on one day has expired on another.
 *
 * Both are calendar days of the plant, YYYY-MM-DD; throws NotACalendarDate. Use on the expiry day itself is still
 * fine: no batch is used later than its expiry (LR Rules for the Manufacture, Testing and Certification of
 * Materials, July 2022, Ch 14 Sec 5, 5.3.4).
 */
export const isExpired = (expiresOn: string, on: string): boolean =>
  requireCalendarDate(on) > requireCalendarDate(expiresOn);
