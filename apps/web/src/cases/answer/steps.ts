/** A value that holds from an age on, days. */
export interface Step {
  readonly days: number;
  readonly value: number;
}

interface Point {
  readonly x: number;
  readonly y: number;
}
type At = (step: Step) => Point;

const MONTH_DAYS = 365.25 / 12;

/** Months of an age in days. */
export const monthsOf = (days: number): number => days / MONTH_DAYS;

const written = (value: number): string => String(Math.round(value * 10) / 10);

/** A line of steps: each value holds until the next age. */
export const stepsOf = (steps: readonly Step[], at: At): string =>
  steps
    .map((step, i) => {
      const { x, y } = at(step);
      return i === 0 ? `M${written(x)} ${written(y)}` : `H${written(x)}V${written(y)}`;
    })
    .join('');

interface Limits {
  readonly days: number;
  readonly lower: number;
  readonly upper: number;
}

/** The ground between two lines of steps; nothing when there is none. */
export const bandOf = (limits: readonly Limits[], at: At): string => {
  if (limits.length < 2) return '';
  const upper = limits.map(({ days, upper: value }) => ({ days, value }));
  const lower = limits.map(({ days, lower: value }) => ({ days, value }));
  const back = lower
    .map((step, i) => ({ ...at(step), next: lower[i - 1] === undefined ? undefined : at(lower[i - 1] as Step) }))
    .reverse()
    .map(({ x, y, next }) => `V${written(y)}H${written(x)}${next === undefined ? '' : `V${written(next.y)}`}`)
    .join('');
  return `${stepsOf(upper, at)}${back}Z`;
};
