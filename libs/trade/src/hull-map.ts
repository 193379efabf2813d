import type { Place, Side } from './place.js';
import { girthAt, type GirthLine, type Skin } from './skin.js';

/** A point of the hull map in millimetres: x forward from the transom, y out from the keel, port positive. */
export interface MapPoint {
  readonly x: number;
  readonly y: number;
}

/** The transom is drawn behind the shell, this far from it. */
export const TRANSOM_GAP_MM = 300;

const SIGN: Readonly<Record<Side, number>> = { port: 1, starboard: -1, centreline: 0 };

const sideOf = (y: number): Side => (y === 0 ? 'centreline' : y > 0 ? 'port' : 'starboard');

/**
 * The outline of the unrolled skin: port edge from the transom forward, then starboard edge back; a closed ring whose
 * first point is not repeated. The keel is the straight line y = 0.
 */
export const skinOutline = (skin: Skin): readonly MapPoint[] => [
  ...lineOnMap(skin, 'edgeGirthMm', 'port'),
  ...lineOnMap(skin, 'edgeGirthMm', 'starboard').toReversed(),
];

/**
 * A girth line of one side, from the transom forward; stations that lack the line are left out.
 *
 * A line that is missing in the middle is drawn straight across the gap.
 */
export const lineOnMap = (skin: Skin, line: GirthLine, side: 'port' | 'starboard'): readonly MapPoint[] =>
  skin.stations.flatMap((station) => {
    const girth = station[line];
    return girth === undefined ? [] : [{ x: station.xMm, y: SIGN[side] * girth }];
  });

/** The outline of the transom, folded back about its bottom: its top is the aft-most line. Empty without a transom. */
export const transomOutline = ({ transom }: Skin): readonly MapPoint[] => {
  if (transom === undefined) return [];
  const { halfWidthMm: half, heightMm: height } = transom;
  const bottom = -TRANSOM_GAP_MM;
  const top = bottom - height;
  return [
    { x: bottom, y: half },
    { x: bottom, y: -half },
    { x: top, y: -half },
    { x: top, y: half },
  ];
};

/** Where a place is drawn: the shell at positive x, the transom at negative x beyond the gap. */
export const placeOnMap = (place: Place): MapPoint => {
  const { x, y } = unrolled(place);
  return place.surface === 'transom' ? { x: x - TRANSOM_GAP_MM, y } : { x, y };
};

/** The place under a point of the map, or undefined when the point is off the skin. The inverse of `placeOnMap`. */
export const placeFromMap = ({ x, y }: MapPoint, skin: Skin): Place | undefined => {
  const side = sideOf(y);
  const out = Math.abs(y);
  if (x >= 0) {
    const edge = girthAt(skin, x, 'edgeGirthMm');
    if (edge === undefined || !(out <= edge)) return undefined;
    return { surface: 'shell', side, fromTransomMm: x, girthMm: out };
  }
  const heightMm = -x - TRANSOM_GAP_MM;
  const { transom } = skin;
  if (transom === undefined || !(heightMm >= 0 && heightMm <= transom.heightMm && out <= transom.halfWidthMm)) {
    return undefined;
  }
  return { surface: 'transom', side, offsetMm: out, heightMm };
};

/**
 * The distance between two places along the skin in millimetres, approximately.
 *
 * It is the straight line on the unrolled skin, port and starboard joined at the keel; the distance along the hull is
 * taken in plan. A skin with double curvature does not unroll without stretching, so the figure is for telling near
 * from far, not for measuring: where the girth shrinks towards the bow it is off most. The transom is unfolded about
 * its bottom, so that a spot high on the transom and one on the topside beside it come out too far apart.
 */
export const distanceOnSkin = (a: Place, b: Place): number => {
  const from = unrolled(a);
  const to = unrolled(b);
  return Math.hypot(from.x - to.x, from.y - to.y);
};

const unrolled = (place: Place): MapPoint =>
  place.surface === 'shell'
    ? { x: place.fromTransomMm, y: outward(place.side, place.girthMm) }
    : { x: -place.heightMm, y: outward(place.side, place.offsetMm) };

// Adding 0 turns the -0 of a starboard spot on the keel into 0, which prints and compares as itself.
const outward = (side: Side, mm: number): number => SIGN[side] * mm + 0;
