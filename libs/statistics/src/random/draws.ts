import { normalQuantile } from '../special/normal.js';
import type { Random } from './xoshiro.js';

const WORDS = 2 ** 32;

/** A number above 0 and below 1. */
export const unit = (random: Random): number => (random() + 0.5) / WORDS;

/** A whole number from 0 to below n, each equally likely; n up to 2^32. */
export const below = (random: Random, n: number): number => {
  const fair = WORDS - (WORDS % n);
  let drawn = random();
  while (drawn >= fair) drawn = random();
  return drawn % n;
};

/** A standard normal value: the quantile of a unit draw. */
export const normal = (random: Random): number => normalQuantile(unit(random));

/** The largest mean that is drawn at once: e^-500 is far above the smallest number. */
const AT_ONCE = 500;

/** A Poisson count of a mean from 0, by adding chances until a unit draw is passed; large means in parts. */
export const poisson = (random: Random, mean: number): number => {
  let count = 0;
  for (let left = mean; left > 0; left -= AT_ONCE) count += poissonAtOnce(random, Math.min(left, AT_ONCE));
  return count;
};

const poissonAtOnce = (random: Random, mean: number): number => {
  const passed = unit(random);
  let chance = Math.exp(-mean);
  let total = chance;
  let count = 0;
  while (total < passed && chance > 0) {
    count += 1;
    chance *= mean / count;
    total += chance;
  }
  return count;
};

/**
 * A binomial count of n trials of one chance, by waiting times between successes: never above n, and as many draws as there
 * are successes.
 */
export const binomialCount = (random: Random, n: number, chance: number): number => {
  if (chance > 0.5) return n - binomialCount(random, n, 1 - chance);
  if (!(chance > 0)) return 0;
  const log = Math.log1p(-chance);
  let count = 0;
  for (let trial = waited(random, log); trial <= n; trial += waited(random, log)) count += 1;
  return count;
};

/** Trials up to and with the next success. */
const waited = (random: Random, log: number): number => 1 + Math.floor(Math.log(unit(random)) / log);

/** The quantile of numbers: linear between the two nearest (type 7 of Hyndman and Fan 1996). */
export const quantile = (ordered: ArrayLike<number>, share: number): number => {
  const place = share * (ordered.length - 1);
  const low = Math.floor(place);
  const high = Math.min(low + 1, ordered.length - 1);
  return (ordered[low] as number) + (place - low) * ((ordered[high] as number) - (ordered[low] as number));
};
