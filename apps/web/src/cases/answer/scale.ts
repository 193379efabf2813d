/** Where a value lies on a drawing, and which values are written at the axis. */
export interface Scale {
  readonly at: (value: number) => number;
  readonly ticks: readonly number[];
}

/**
 * A scale with equal steps.
 *
 * @param most the largest value that is drawn; the axis ends at a round number not below it
 * @param from where 0 lies @param to where the end lies
 */
export const evenScale = (most: number, from: number, to: number): Scale => {
  const step = roundStep(Math.max(most, 1e-9) / 4);
  const end = Math.ceil(Math.max(most, 1e-9) / step - 1e-9) * step;
  return {
    at: (value) => from + ((to - from) * Math.min(value, end)) / end,
    ticks: Array.from({ length: Math.round(end / step) + 1 }, (_, i) => Number((i * step).toPrecision(12))),
  };
};

/** The round number not below it: 1, 2, 2.5 or 5 and zeros. */
const roundStep = (step: number): number => {
  const power = 10 ** Math.floor(Math.log10(step));
  return ([1, 2, 2.5, 5, 10].find((each) => each * power >= step * (1 - 1e-9)) ?? 10) * power;
};

const RATIOS = [0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000] as const;

/**
 * A scale of ratios: twice as many is as far from 1 as half as many. It shows 1 always, and what lies beyond it at its end.
 *
 * @param values ratios that are drawn; those that are not above 0 do not count
 */
export const ratioScale = (values: readonly number[], from: number, to: number): Scale => {
  const drawn = [...values.filter((value) => value > 0 && Number.isFinite(value)), 1];
  const low = RATIOS.findLast((tick) => tick <= Math.min(...drawn)) ?? RATIOS[0];
  const high = RATIOS.find((tick) => tick >= Math.max(...drawn, 2)) ?? 1000;
  const along = (value: number): number => Math.log(value / low) / Math.log(high / low);
  return {
    at: (value) => from + (to - from) * Math.min(1, Math.max(0, value > 0 ? along(value) : 0)),
    ticks: RATIOS.filter((tick) => tick >= low && tick <= high),
  };
};
