import { placeFromMap, TRANSOM_GAP_MM, type MapPoint } from './hull-map.js';
import type { Place } from './place.js';
import { girthAt, type Skin } from './skin.js';

const between = (low: number, value: number, high: number): number => Math.min(Math.max(value, low), high);

/**
 * The place in whole millimetres that a touch of the hull map means: the point touched, or the skin's edge beside it.
 *
 * A gloved finger is some 15 mm wide, so a touch off the skin means its edge. In the gap before the transom the nearer of
 * shell and transom is taken; without a transom the shell. A touch within half a millimetre of the keel is on it.
 */
export const nearestPlace = ({ x, y }: MapPoint, skin: Skin): Place => {
  const { transom, lengthMm } = skin;
  if (transom !== undefined && x < -TRANSOM_GAP_MM / 2) {
    const up = between(0, Math.round(-x - TRANSOM_GAP_MM), Math.floor(transom.heightMm));
    return placeAt({ x: -TRANSOM_GAP_MM - up, y: within(y, transom.halfWidthMm) }, skin);
  }
  const along = between(0, Math.round(x), Math.floor(lengthMm));
  return placeAt({ x: along, y: within(y, girthAt(skin, along, 'edgeGirthMm') ?? 0) }, skin);
};

/** A distance from the keel, whole and not beyond an edge. Adding 0 turns -0 into 0. */
const within = (y: number, edge: number): number =>
  Math.sign(y) * Math.min(Math.round(Math.abs(y)), Math.floor(edge)) + 0;

const KEEL: Place = { surface: 'shell', side: 'centreline', fromTransomMm: 0, girthMm: 0 };

const placeAt = (point: MapPoint, skin: Skin): Place => placeFromMap(point, skin) ?? KEEL;

/** A place moved over the map by so many millimetres, kept on the skin; it may go from the shell over to the transom. */
export const movedPlace = (from: MapPoint, by: MapPoint, skin: Skin): Place => {
  const to = { x: from.x + by.x, y: from.y + by.y };
  // Across the gap at one step: what is moved aft off the shell is on the transom, and the other way round.
  if (by.x < 0 && from.x >= 0 && to.x < 0) return nearestPlace({ x: to.x - TRANSOM_GAP_MM, y: to.y }, skin);
  if (by.x > 0 && from.x < 0 && to.x > -TRANSOM_GAP_MM)
    return nearestPlace({ x: to.x + TRANSOM_GAP_MM, y: to.y }, skin);
  return nearestPlace(to, skin);
};
