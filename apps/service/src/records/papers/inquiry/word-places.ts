import type { PlacesView, TriangleView, ZoneView } from '@hull-record/paper';
import type { CaseForecast, CasePlaces } from '@hull-record/contracts';
import { decimal } from '../../word-values.js';
import { chance } from './word-figures.js';

/** Zones go around half the girth of a side. */
const HALF_GIRTH = 0.5;

/** Where on the hull claims are, with zones as rectangles of the unrolled skin. */
export const wordPlaces = (places: CasePlaces): PlacesView => {
  const inCluster = new Set(places.cluster?.zones);
  return {
    ...{ says: places.sentence, cannotSay: places.cannotSay, spots: places.spots },
    zones: places.zones.map((zone) => wordZone(zone, inCluster.has(zone.name))),
    cluster:
      places.cluster === null
        ? null
        : `Scan: ${places.cluster.zones.join('; ')}: ${places.cluster.hulls} zones of hulls affected, ${decimal(places.cluster.expected, 1)} ` +
          `if they were spread evenly; p ${chance(places.cluster.p)}, simulated, which allows for every group of zones that was looked at.`,
  };
};

/** A zone is as long as its share of the skin says: the skin is 1 long and 2 around. */
const wordZone = (
  { name, x, y, hulls, areaShare, perArea }: CasePlaces['zones'][number],
  inCluster: boolean,
): ZoneView => {
  const length = (areaShare * 2) / HALF_GIRTH;
  return {
    ...{ name, hulls, inCluster, perArea: `${decimal(perArea, 1)} times` },
    from: { x: x - length / 2, y: y - HALF_GIRTH / 2 },
    to: { x: x + length / 2, y: y + HALF_GIRTH / 2 },
  };
};

/** The triangle as it is kept in the answer. */
export const wordTriangle = ({ triangle }: CaseForecast, since: string): TriangleView | null =>
  triangle.length === 0 ? null : { rows: triangle, since };
