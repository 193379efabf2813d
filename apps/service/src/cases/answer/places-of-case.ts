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

/** Where on the hull claims are: hulls affected by zone, and the most striking group of zones with a seeded p. */
export const placesOfCase = ({ hulls, spots }: CaseInputs, { attribution }: CaseSettings): CasePlaces | null => {
  const counted = spots.filter(({ hull }) => hulls[hull]?.claimed);
  const affected = new Set(counted.map(({ hull }) => hull)).size;
  if (affected === 0) return null;
  const zones = ZONES.map(({ holds, ...zone }) => {
    const inside = new Set(counted.filter(({ x, y }) => holds(x, y)).map(({ hull }) => hull)).size;
    return { ...zone, hulls: inside };
  });
  const all = zones.reduce((total, zone) => total + zone.hulls, 0);
  const random = seeded(attribution.seed);
  const found = scan(
    zones.map(({ name, x, y, areaShare, hulls: cases }) => ({ name, x, y, population: areaShare, cases })),
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

const sentenceOf = (cluster: CasePlaces['cluster'], affected: number): string =>
  cluster === null || cluster.p > 0.05
    ? `Places of ${affected} hulls are known; no group of zones stands out.`
    : `Places of ${affected} hulls are known; they come together in ${cluster.zones.join('; ')} (p ${cluster.p.toPrecision(2)}, simulated).`;
