import type { LogChances } from './hypergeometric.js';

/** Chances of whole numbers from `low` on, summing to 1. */
export interface Chances {
  readonly low: number;
  readonly values: Float64Array;
}

/**
 * The distribution under odds other than 1: P(x) in proportion to P0(x) e^(x log odds).
 *
 * Fisher's noncentral hypergeometric distribution, and its sum over tables with common odds. The largest term is taken
 * out before the exponential, so that odds up to e^60 do not overflow.
 */
export const tilt = ({ low, logs }: LogChances, logOdds: number): Chances => {
  const values = logs.map((log, i) => log + (low + i) * logOdds);
  const largest = values.reduce((most, value) => Math.max(most, value), -Infinity);
  let total = 0;
  for (let i = 0; i < values.length; i += 1) total += values[i] = Math.exp((values[i] as number) - largest);
  return { low, values: values.map((value) => value / total) };
};

/** The chance of `from` or more, summed from the small end. */
export const chanceFrom = ({ low, values }: Chances, from: number): number => {
  let total = 0;
  for (let i = values.length - 1; i >= Math.max(0, from - low); i -= 1) total += values[i] as number;
  return Math.min(1, total);
};

/** The chance of `to` or fewer, summed from the small end. */
export const chanceUpTo = ({ low, values }: Chances, to: number): number => {
  let total = 0;
  for (let i = 0; i <= Math.min(values.length - 1, to - low); i += 1) total += values[i] as number;
  return Math.min(1, total);
};

/** The mean of the distribution. */
export const meanOf = ({ low, values }: Chances): number =>
  values.reduce((total, value, i) => total + value * (low + i), 0);
