/** The first working day of the demo, a Monday. Its hours are those of a plant in UTC, the default time zone. */
const FIRST_DAY = Date.UTC(2025, 0, 6);

const DAY_MS = 86_400_000;

/** Weeks, counted from the first, in which the plant rests: two in summer, two at the turn of the year. */
const REST_WEEKS = [29, 30, 50, 51] as const;

/** The calendar week of a working week: those in which the plant rests are passed over. */
const calendarWeek = (working: number): number =>
  REST_WEEKS.reduce((week, rest) => (week >= rest ? week + 1 : week), working);

/** How many weeks of rest lie before a calendar week, itself included. */
const restUpTo = (calendar: number): number => REST_WEEKS.filter((rest) => rest <= calendar).length;

/** The instant of a time of day on a working day; day 0 is Monday 6 January 2025, day 5 the Monday after. */
export const instant = (workingDay: number, time: string): string => {
  const days = calendarWeek(Math.floor(workingDay / 5)) * 7 + (workingDay % 5);
  const [hours = 0, minutes = 0] = time.split(':').map(Number);
  return new Date(FIRST_DAY + days * DAY_MS + (hours * 60 + minutes) * 60_000).toISOString();
};

/** The working day of an instant; a weekend, or a week of rest, counts as the Friday before it. */
export const workingDayOf = (at: string): number => {
  const days = Math.floor((Date.parse(at) - FIRST_DAY) / DAY_MS);
  const week = Math.floor(days / 7);
  const rests = (REST_WEEKS as readonly number[]).includes(week);
  return (week - restUpTo(week)) * 5 + (rests ? 4 : Math.min(days % 7, 4));
};

/** Some minutes later, or earlier when negative. */
export const later = (at: string, minutes: number): string => new Date(Date.parse(at) + minutes * 60_000).toISOString();

/** The calendar day of an instant, some days later or earlier. */
export const dayOf = (at: string, days = 0): string => later(at, days * 24 * 60).slice(0, 10);

/** Whether a working day is a Friday: nothing is begun that must go on the next morning. */
export const isFriday = (workingDay: number): boolean => workingDay % 5 === 4;
