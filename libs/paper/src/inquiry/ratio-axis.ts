import type { RatioView } from './class-view.js';

/** A logarithmic axis of ratios. */
export interface RatioAxis {
  readonly least: number;
  readonly most: number;
  /** Powers of ten, and 1. */
  readonly ticks: readonly number[];
  /** Where a ratio stands, 0 at the left end and 1 at the right one; outside it, at the end. */
  readonly at: (ratio: number) => number;
}

/** Ratios beyond these are drawn at the end, with an arrow. */
const LEAST = 0.01;
const MOST = 1000;

/** The axis on which all ratios with their limits can be seen: from a power of ten to another, around 1. */
export const ratioAxis = (ratios: readonly RatioView[]): RatioAxis => {
  const all = ratios
    .flatMap(({ ratio, lower, upper }) => [ratio, lower, upper])
    .filter((value): value is number => value !== null && Number.isFinite(value) && value > 0);
  const from = Math.floor(Math.log10(Math.max(LEAST, Math.min(0.5, ...all))));
  const to = Math.ceil(Math.log10(Math.min(MOST, Math.max(2, ...all))));
  const at = (ratio: number): number => {
    if (ratio <= 0) return 0;
    return Math.min(1, Math.max(0, (Math.log10(ratio) - from) / (to - from)));
  };
  const ticks = Array.from({ length: to - from + 1 }, (_, i) => Number((10 ** (from + i)).toPrecision(1)));
  return { least: 10 ** from, most: 10 ** to, ticks, at };
};
