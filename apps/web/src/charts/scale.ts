import type { Spot } from './series-of.js';

export const HEIGHT = 190;
export const LEFT = 12;
export const RIGHT = 84;
const [TOP, FOOT] = [14, 24];
const [LEAST_WIDTH, PER_HULL] = [620, 9];

/** Where things are drawn in a chart of hulls. */
export interface Scale {
  readonly width: number;
  readonly x: (hull: number) => number;
  readonly y: (value: number) => number;
  /** The hull nearest to a place across. */
  readonly hullAt: (x: number) => number;
}

/** The scale of a chart: values and limits with some room, a hull at least so wide that it can be told from the next. */
export const scaleOf = (spots: readonly Spot[]): Scale => {
  const width = Math.max(LEAST_WIDTH, LEFT + RIGHT + spots.length * PER_HULL);
  const all = spots.flatMap(({ value, second, limit }) =>
    [value, second, limit?.centre, limit?.lower, limit?.upper].filter((each) => typeof each === 'number'),
  );
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const room = (most - least) * 0.08 || Math.abs(most) * 0.1 || 1;
  const step = (width - LEFT - RIGHT) / Math.max(1, spots.length);
  return {
    width,
    x: (hull) => LEFT + (hull + 0.5) * step,
    y: (value) => TOP + ((most + room - value) / (most - least + 2 * room)) * (HEIGHT - TOP - FOOT),
    hullAt: (x) => Math.min(spots.length - 1, Math.max(0, Math.floor((x - LEFT) / step))),
  };
};

/** A line that steps from hull to hull, for limits that hold for each by itself; broken where there is none. */
export const stepsOf = ({ x }: Scale, ys: readonly (number | null)[]): string => {
  const half = (x(1) - x(0)) / 2;
  return ys
    .map((y, i) => {
      if (y === null) return '';
      const start = ys[i - 1] === null || i === 0 ? 'M' : 'L';
      return `${start}${(x(i) - half).toFixed(1)} ${y.toFixed(1)}H${(x(i) + half).toFixed(1)}`;
    })
    .join('');
};

/** A line from hull to hull; broken where one has no value. */
export const lineOf = ({ x }: Scale, ys: readonly (number | null)[]): string =>
  ys
    .map((y, i) => (y === null ? '' : `${ys[i - 1] === null || i === 0 ? 'M' : 'L'}${x(i).toFixed(1)} ${y.toFixed(1)}`))
    .join('');
