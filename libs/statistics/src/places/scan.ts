import { InputInvalid } from '../errors.js';
import { at, sum } from '../numbers.js';
import { below } from '../random/draws.js';
import type { Random } from '../random/xoshiro.js';
import { poissonRatio } from './scan-ratio.js';
import type { Spot } from './nearest-neighbours.js';

/** A zone of the hull map: its middle, its population (area, or hulls inspected there) and hulls affected in it. */
export interface ScanZone extends Spot {
  readonly name: string;
  readonly population: number;
  readonly cases: number;
}

/** The most striking group of neighbouring zones. */
export interface Cluster {
  readonly zones: readonly string[];
  readonly cases: number;
  readonly expected: number;
  readonly ratio: number;
  /** (1 + simulated maxima at least as large) / (1 + simulations). */
  readonly p: number;
}

interface Window {
  readonly members: readonly number[];
  readonly share: number;
}

/**
 * The spatial scan for a cluster of zones: the largest ratio over windows that grow around each zone, with a simulated p.
 *
 * Windows take in neighbours by distance up to half of the population; the p allows for having looked at all of them
 * (Kulldorff 1997). Count hulls affected, not blisters. Inspectors look where they found one: the population is what was
 * inspected. Null without a case. Throws InputInvalid when no zone has a population, or
 * one with cases has none.
 */
export const scan = (
  zones: readonly ScanZone[],
  { random, simulations = 999 }: { random: Random; simulations?: number },
): Cluster | null => {
  const population = sum(zones.map((zone) => zone.population));
  if (!(population > 0)) throw new InputInvalid('population', population, 'more than 0');
  const empty = zones.find((zone) => zone.cases > 0 && !(zone.population > 0));
  if (empty) throw new InputInvalid('population', empty.population, `more than 0 where there are cases: ${empty.name}`);
  const counts = zones.map(({ cases }) => cases);
  const all = sum(counts);
  if (all === 0) return null;
  const windows = windowsOf(zones, population);
  const found = largest(windows, counts, all);
  let beaten = 0;
  for (let i = 0; i < simulations; i += 1)
    if (largest(windows, scattered(zones, population, all, random), all).ratio >= found.ratio * (1 - 1e-12))
      beaten += 1;
  return {
    zones: found.window.members.map((i) => (zones[i] as ScanZone).name),
    cases: sum(found.window.members.map((i) => at(counts, i))),
    expected: found.window.share * all,
    ratio: found.ratio,
    p: (1 + beaten) / (1 + simulations),
  };
};

const windowsOf = (zones: readonly ScanZone[], population: number): readonly Window[] =>
  zones.flatMap((centre) => {
    const near = zones
      .map((zone, i) => ({ i, distance: Math.hypot(zone.x - centre.x, zone.y - centre.y) }))
      .sort((a, b) => a.distance - b.distance || a.i - b.i)
      .map(({ i }) => i);
    let inside = 0;
    return near.flatMap((zone, k) => {
      inside += (zones[zone] as ScanZone).population;
      return inside > 0 && inside <= population / 2
        ? [{ members: near.slice(0, k + 1), share: inside / population }]
        : [];
    });
  });

const largest = (
  windows: readonly Window[],
  counts: ArrayLike<number>,
  all: number,
): { readonly window: Window; readonly ratio: number } => {
  let best = { window: { members: [], share: 0 } as Window, ratio: -1 };
  for (const window of windows) {
    let cases = 0;
    for (const i of window.members) cases += at(counts, i);
    const ratio = poissonRatio(cases, window.share * all, all);
    if (ratio > best.ratio) best = { window, ratio };
  }
  return best;
};

/** Cases thrown on zones by population. */
const scattered = (zones: readonly ScanZone[], population: number, all: number, random: Random): Float64Array => {
  const counts = new Float64Array(zones.length);
  for (let thrown = 0; thrown < all; thrown += 1) {
    let left = (below(random, 2 ** 32) / 2 ** 32) * population;
    let zone = 0;
    while (zone < zones.length - 1 && left >= (zones[zone] as ScanZone).population) {
      left -= (zones[zone] as ScanZone).population;
      zone += 1;
    }
    counts[zone] = at(counts, zone) + 1;
  }
  return counts;
};
