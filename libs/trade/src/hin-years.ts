/** The first month in which hull identification numbers were required: November 1972 (format chart, state rules). */
export const FIRST_HIN_MONTH = '1972-11';

/** The last month of the two old formats: today's became mandatory on 1 August 1984 (format chart; AZ R12-4-505). */
export const LAST_OLD_FORMAT_MONTH = '1984-07';

/** Year and month as YYYY-MM, which sorts as text. */
export const yearMonth = (year: number, month: number): string =>
  `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}`;

/** The full year of two digits: 72 to 99 are 1972 to 1999, 00 to 71 are 2000 to 2071, since numbers start in 1972. */
export const fullYear = (twoDigits: number): number => (twoDigits >= 72 ? 1900 : 2000) + twoDigits;

/**
 * The build year that a single digit stands for beside a model year.
 *
 * No rule tells the decade. The digit is read as the latest such year that is not after the model year plus one: the
 * nearest one, except where that would date the boat more than a year after its model year.
 */
export const buildYearOf = (digit: number, modelYear: number): number => {
  const latest = modelYear + 1;
  return latest - ((latest - digit) % 10);
};
