import { requireCalendarDate } from './calendar.js';
import type { ValidHin } from './hin.js';
import { yearMonth } from './hin-years.js';

/** The days the build month of a number is held against, YYYY-MM-DD. */
export interface BuildDates {
  readonly constructionBegan?: string | undefined;
  readonly leftPlant?: string | undefined;
}

/**
 * Errors in the build month of a number, as sentences, under 33 CFR 181.25(c).
 *
 * The date in the number may not be earlier than the day construction or assembly began, nor later than the day the
 * boat left the place of manufacture or was imported for sale. A number carries a month, so months are compared: the
 * month itself is fine at both ends. Throws NotACalendarDate.
 */
export const checkBuildDates = (reading: ValidHin, dates: BuildDates): readonly string[] => {
  const built = yearMonth(reading.buildYear, reading.buildMonth);
  const { constructionBegan, leftPlant } = dates;
  const errors: string[] = [];
  if (constructionBegan !== undefined && built < monthOf(constructionBegan)) {
    errors.push(`Build month ${built} is before construction began on ${constructionBegan} (33 CFR 181.25(c)).`);
  }
  if (leftPlant !== undefined && built > monthOf(leftPlant)) {
    errors.push(`Build month ${built} is after the boat left the plant on ${leftPlant} (33 CFR 181.25(c)).`);
  }
  return errors;
};

const monthOf = (date: string): string => requireCalendarDate(date).slice(0, 7);
