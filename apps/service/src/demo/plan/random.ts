import { sha256 } from '../../platform/ids.js';

/** A stream of numbers that is the same whenever it is made of the same text. */
export interface Random {
  /** From 0 up to, not including, 1. */
  next(): number;
  between(min: number, max: number): number;
  /** A whole number, both ends included. */
  whole(min: number, max: number): number;
  pick<T>(of: readonly T[]): T;
  /** Scatter about a mean, as gauges and scales have it. */
  normal(mean: number, deviation: number): number;
}

/** Makes the stream of a text; two texts give streams that have nothing to do with each other. */
export const randomOf = (text: string): Random => {
  const next = mulberry32(parseInt(sha256(text).slice(0, 8), 16));
  const between = (min: number, max: number): number => min + (max - min) * next();
  const whole = (min: number, max: number): number => Math.floor(between(min, max + 1));
  return {
    next,
    between,
    whole,
    pick: <T>(of: readonly T[]): T => of[whole(0, of.length - 1)] as T,
    // The sum of twelve even numbers is near enough to a bell curve, and has no long tails.
    normal: (mean, deviation) => mean + deviation * (Array.from({ length: 12 }, next).reduce((a, b) => a + b, 0) - 6),
  };
};

/** The 32-bit generator called mulberry32, in the public domain (from memory): good enough to invent a shop. */
const mulberry32 = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
};
