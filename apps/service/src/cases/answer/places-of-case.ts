import type { CasePlaces } from '@hull-record/contracts';
import { scan, seeded } from '@hull-record/statistics';
import type { CaseInputs } from '../inputs/case-inputs.js';
import type { CaseSettings } from '../settings.js';

/** Bands along the length, as shares from the transom: those of the class zones (ICS rules for FRP ships, Sec. 2). */
const ALONG = [
  { name: 'aft end', from: 0, to: 0.1 },
  { name: 'between aft end and midship', from: 0.1, to: 0.3 },
  { name: 'midship', from: 0.3, to: 0.7 },
  { name: 'between midship and fore end', from: 0.7, to: 0.9 },
  { name: 'fore end', from: 0.9, to: 1 },
] as const;
/** Halves of the girth, from the keel to the edge. */
const AROUND = [
  { name: 'inner half', from: 0, to: 0.5 },
  { name: 'outer half', from: 0.5, to: 1 },
] as const;
const HALF = 0.5;
const SIDES = [
  { name: 'port', sign: 1 },
  { name: 'starboard', sign: -1 },
] as const;

const ZONES = ALONG.flatMap((along) =>
  AROUND.flatMap((around) =>
    SIDES.map((side) => ({
      name: `${along.name}, ${around.name}, ${side.name}`,
      x: (along.from + along.to) / 2,
      y: (side.sign * (around.from + around.to)) / 2,
      areaShare: ((along.to - along.from) * (around.to - around.from)) / 2,
      holds: (x: number, y: number): boolean =>
        x >= along.from &&
        (x < along.to || along.to === 1) &&
        (side.sign > 0 ? y >= 0 : y < 0) &&
        Math.abs(y) >= around.from &&
        (Math.abs(y) < around.to || around.to === 1),
    })),
  ),
);

/**
 * Where on the hull claims are: hulls affected by zone, and the most striking group of zones with a seeded p.
 *
 * For the scan a hull counts once, in the zone of most of its places: those of one hull are one thing and no evidence of many.
 * Where the fault is one of the bottom, zones count with what lies below the waterline of them.
 */
export const placesOfCase = (
  { hulls, spots, belowWater }: CaseInputs,
  { attribution }: CaseSettings,
): CasePlaces | null => {
  const counted = spots.filter(({ hull }) => hulls[hull]?.claimed);
  const affected = new Set(counted.map(({ hull }) => hull)).size;
  if (affected === 0) return null;
  const zones = ZONES.map(({ holds, ...zone }) => {
    const inside = new Set(counted.filter(({ x, y }) => holds(x, y)).map(({ hull }) => hull)).size;
    return { ...zone, hulls: inside };
  });
  const once = mostOfEach(counted);
  const all = zones.reduce((total, zone) => total + zone.hulls, 0);
  const random = seeded(attribution.seed);
  const found = scan(
    ZONES.map((zone, i) => ({
      ...{ name: zone.name, x: zone.x, y: zone.y, cases: once[i] ?? 0 },
      population: zone.areaShare * Math.max(LEAST_WET, wetPart(zone, belowWater)),
    })),
    { random },
  );
  const cluster = found && {
    ...{ zones: [...found.zones], hulls: found.cases, expected: found.expected, ratio: found.ratio, p: found.p },
  };
  return {
    hulls: affected,
    spots: counted.map(({ hull, x, y }) => ({ x, y, hull: hulls[hull]?.number ?? '' })),
    zones: zones.map((zone) => ({ ...zone, perArea: all === 0 ? 0 : zone.hulls / (all * zone.areaShare) })),
    cluster,
    sentence: sentenceOf(cluster, affected),
    cannotSay:
      'Where nobody looked is not known: inspectors look where they found one. Zones are of the unrolled skin, each model to its own length and girth.',
  };
};

/** Claims above the water are told too, and a zone with one must have some population. */
const LEAST_WET = 0.02;

/** The part of a zone that lies below the waterline; all of it where that does not matter or is not known. */
const wetPart = ({ y }: { readonly y: number }, belowWater: number | null): number => {
  if (belowWater === null) return 1;
  const from = Math.abs(y) - HALF / 2;
  return Math.min(1, Math.max(0, (belowWater - from) / HALF));
};

/** How many hulls have most of their places in each zone; of as many, in the first. */
const mostOfEach = (spots: CaseInputs['spots']): readonly number[] => {
  const byHull = new Map<number, number[]>();
  for (const { hull, x, y } of spots) {
    const own = byHull.get(hull) ?? ZONES.map(() => 0);
    byHull.set(hull, own);
    const zone = ZONES.findIndex(({ holds }) => holds(x, y));
    if (zone >= 0) own[zone] = (own[zone] ?? 0) + 1;
  }
  const counts = ZONES.map(() => 0);
  for (const own of byHull.values()) {
    const most = own.indexOf(Math.max(...own));
    if ((own[most] ?? 0) > 0) counts[most] = (counts[most] ?? 0) + 1;
  }
  return counts;
};

const sentenceOf = (cluster: CasePlaces['cluster'], affected: number): string =>
  cluster === null || cluster.p > 0.05
    ? `Places of ${affected} hulls are known; no group of zones stands out.`
    : `Places of ${affected} hulls are known; they come together in ${cluster.zones.join('; ')} (p ${cluster.p.toPrecision(2)}, simulated; each hull counted once).`;
