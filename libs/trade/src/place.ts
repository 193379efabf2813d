import { girthAt, type Skin } from './skin.js';

/** Port is left and starboard right, facing the bow. */
export type Side = 'port' | 'starboard' | 'centreline';

/**
 * A spot on the outer skin, in millimetres, none of them negative.
 *
 * On the shell: distance forward of the transom, and girth along the skin from the keel. On the transom: offset from
 * the centreline, and height up the transom from its lowest point. The side says which way; on the centreline girth
 * and offset are 0. No standard was found that fixes how such a place is written; this model is our own.
 */
export type Place =
  | { readonly surface: 'shell'; readonly side: Side; readonly fromTransomMm: number; readonly girthMm: number }
  | { readonly surface: 'transom'; readonly side: Side; readonly offsetMm: number; readonly heightMm: number };

/** Why a place is not on a skin; `pointer` is a JSON pointer into the place, the message names limit and remedy. */
export interface PlaceProblem {
  readonly pointer: string;
  readonly message: string;
}

/** Interpolated limits carry rounding error; a spot this little beyond one is on it. */
const TOLERANCE_MM = 1e-6;

/** Everything wrong with a place on a skin, empty when the place exists. */
export const checkPlace = (place: Place, skin: Skin): readonly PlaceProblem[] => {
  if (place.surface === 'shell') {
    const { fromTransomMm: x, girthMm: girth, side } = place;
    const along = checkRange('/fromTransomMm', 'from the transom', x, skin.lengthMm, "the hull's length");
    const edge = along.length === 0 ? girthAt(skin, Math.min(x, skin.lengthMm), 'edgeGirthMm') : undefined;
    const up = checkRange('/girthMm', 'along the skin', girth, edge, `the edge at ${x} mm from the transom`);
    return [...along, ...up, ...checkCentreline('/girthMm', side, girth)];
  }
  if (skin.transom === undefined) {
    return [{ pointer: '/surface', message: 'This molding has no transom; place the spot on the shell.' }];
  }
  const { offsetMm, heightMm, side } = place;
  return [
    ...checkRange('/offsetMm', 'from the centreline', offsetMm, skin.transom.halfWidthMm, "the transom's half width"),
    ...checkRange('/heightMm', 'up the transom', heightMm, skin.transom.heightMm, "the transom's height"),
    ...checkCentreline('/offsetMm', side, offsetMm),
  ];
};

const checkRange = (
  pointer: string,
  direction: string,
  value: number,
  limit: number | undefined,
  limitName: string,
): readonly PlaceProblem[] => {
  const remedy = limit === undefined ? 'Enter 0 mm or more.' : `Enter 0 to ${mm(limit)}.`;
  if (!Number.isFinite(value)) return [{ pointer, message: `The distance ${direction} is not a number. ${remedy}` }];
  if (value < 0) return [{ pointer, message: `${value} mm ${direction} is negative. ${remedy}` }];
  if (limit === undefined || value <= limit + TOLERANCE_MM) return [];
  return [{ pointer, message: `${value} mm ${direction} is beyond ${limitName}, ${mm(limit)}. ${remedy}` }];
};

const checkCentreline = (pointer: string, side: Side, value: number): readonly PlaceProblem[] =>
  side === 'centreline' && value !== 0
    ? [{ pointer, message: `A spot on the centreline is 0 mm off it, not ${value} mm. Enter 0 or choose a side.` }]
    : [];

/** A limit, rounded down to a tenth so that the limit as printed is one that will be accepted. */
const mm = (limit: number): string => `${Math.floor(limit * 10 + TOLERANCE_MM) / 10} mm`;
