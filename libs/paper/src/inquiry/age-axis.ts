/** Days in a month, on the mean. */
export const MONTH_DAYS: number = 365.25 / 12;

const STEPS = [1, 2, 3, 6, 12, 24, 60, 120, 240] as const;
/** So many names fit on an axis. */
const MOST_NAMES = 7;

/** Names of ages in months along an axis that ends at an age in days: every so many months that they have room. */
export const ageNames = (mostDays: number): readonly (readonly [days: number, name: string])[] => {
  const months = mostDays / MONTH_DAYS;
  const step = STEPS.find((each) => months / each < MOST_NAMES) ?? STEPS[STEPS.length - 1] ?? 240;
  return Array.from({ length: Math.floor(months / step) + 1 }, (_, i) => [i * step * MONTH_DAYS, String(i * step)]);
};

/** Even steps up to a value, for an axis from 0: at most five, of 1, 2 or 5 times a power of ten. */
export const evenSteps = (most: number): readonly number[] => {
  if (!(most > 0)) return [0, 1];
  const power = 10 ** Math.floor(Math.log10(most / 4));
  const step = [1, 2, 5, 10].map((times) => times * power).find((each) => most / each <= 4.5) ?? 10 * power;
  const count = Math.ceil(most / step - 1e-9);
  return Array.from({ length: count + 1 }, (_, i) => Number((i * step).toPrecision(6)));
};
