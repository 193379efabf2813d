import type { Limits } from '@hull-record/trade';

/** A tooth of a wet-film gauge that may be the last wet one, with the next, which stays dry. */
export interface Tooth {
  readonly last: number;
  readonly next: number;
}

/** Steps of the example gauge of ASTM D4414-95(2020) 7.1.2, as `libs/trade` has them; finer ones are left out for gloves. */
const STEPS = {
  mil: [
    [10, 1],
    [30, 2],
    [80, 5],
  ],
  um: [
    [250, 25],
    [750, 50],
    [2_000, 125],
  ],
} as const;

/** All teeth of the gauge in a unit, ascending. */
export const teethOf = (unit: 'mil' | 'um'): readonly Tooth[] => {
  const marks: number[] = [];
  let at = 0;
  for (const [upTo, step] of STEPS[unit])
    while (at + step <= upTo) {
      at += step;
      marks.push(at);
    }
  return marks.slice(0, -1).map((last, i) => ({ last, next: marks[i + 1] as number }));
};

/**
 * The teeth to show: so many around the middle of the limits, moved by whole pages.
 *
 * @param count how many are shown at once
 * @param page 0 around the limits, negative thinner, positive thicker
 */
export const teethAround = (
  limits: Pick<Limits, 'min' | 'max'>,
  unit: 'mil' | 'um',
  count: number,
  page: number,
): readonly Tooth[] => {
  const all = teethOf(unit);
  const middle = ((limits.min ?? limits.max ?? 0) + (limits.max ?? limits.min ?? 0)) / 2;
  const at = all.findIndex(({ next }) => next > middle);
  const first = Math.max(0, (at < 0 ? all.length : at) - Math.floor(count / 2)) + page * count;
  const from = Math.min(Math.max(0, first), Math.max(0, all.length - count));
  return all.slice(from, from + count);
};
