import type { Place } from './place.js';
import { girthAt, type Skin } from './skin.js';

/** Class zones along the hull: midship is 0.4 L amidships, the ends 0.1 L each; the rules name none between. */
export type Zone = 'aft end' | 'midship' | 'fore end' | 'between';

/** Bands up the skin: the bottom reaches from the keel to the chine, which belongs to it; the topside is above. */
export type HeightBand = 'bottom' | 'topside' | 'transom';

/** Where a spot lies, in the words of rules and survey reports. What the skin does not tell is left out. */
export interface Location {
  readonly percentOfLength: number;
  readonly zone: Zone;
  readonly height?: HeightBand;
  readonly belowWaterline?: boolean;
}

/**
 * Says where a place lies on a skin; the place must pass `checkPlace`.
 *
 * Percent counts forward from the transom, unrounded. The height band needs a chine there, below the waterline (which
 * itself is not below) a waterline. A spot on the transom is at 0 percent, and its waterline is not known.
 */
export const locate = (place: Place, skin: Skin): Location => {
  if (place.surface === 'transom') return { percentOfLength: 0, zone: 'aft end', height: 'transom' };
  const { fromTransomMm: x, girthMm } = place;
  const chine = girthAt(skin, x, 'chineGirthMm');
  const waterline = girthAt(skin, x, 'waterlineGirthMm');
  return {
    percentOfLength: (100 * x) / skin.lengthMm,
    zone: zoneAt(x, skin.lengthMm),
    ...(chine === undefined ? {} : { height: girthMm <= chine ? 'bottom' : 'topside' }),
    ...(waterline === undefined ? {} : { belowWaterline: girthMm < waterline }),
  };
};

/**
 * The class zones along a length from the transom forward, each with its ends in mm; "between" stands twice.
 *
 * ICS rules for FRP ships, Sec. 2 (204-206): midship 0.3 L to 0.7 L, fore and aft ends 0.1 L each.
 */
export const zonesAlong = (lengthMm: number): readonly ZoneAlong[] =>
  TENTHS.map(([zone, from, to]) => ({ zone, fromMm: (from * lengthMm) / 10, toMm: (to * lengthMm) / 10 }));

/** A zone with its ends, mm forward from the transom. */
export interface ZoneAlong {
  readonly zone: Zone;
  readonly fromMm: number;
  readonly toMm: number;
}

const TENTHS = [
  ['aft end', 0, 1],
  ['between', 1, 3],
  ['midship', 3, 7],
  ['between', 7, 9],
  ['fore end', 9, 10],
] as const satisfies readonly (readonly [zone: Zone, from: number, to: number])[];

/**
 * The class zone at a distance from the transom, bounds included in the named zones.
 *
 * ICS rules for FRP ships, Sec. 2 (204-206): midship 0.3 L to 0.7 L, fore and aft ends 0.1 L each.
 */
const zoneAt = (x: number, length: number): Zone => {
  // Tenfold instead of a fraction of the length: 0.7 * 10000 is not 7000 in binary.
  if (10 * x <= length) return 'aft end';
  if (10 * x >= 9 * length) return 'fore end';
  return 10 * x >= 3 * length && 10 * x <= 7 * length ? 'midship' : 'between';
};
