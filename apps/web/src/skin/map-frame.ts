import { TRANSOM_GAP_MM, type MapPoint, type Skin } from '@hull-record/trade';

/** From where a part is seen on its map: each is a text of the catalogue. */
export type SeenFrom = 'outsideBelow' | 'insideAbove' | 'outsideAbove';

/** The board a map is drawn on: its size in millimetres, and where a point of the map lies on it, from the upper left. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly bowLeft: boolean;
  readonly seenFrom: SeenFrom;
  readonly at: (point: MapPoint) => MapPoint;
  /** Which point of the map lies there; the inverse of `at`. */
  readonly back: (onBoard: MapPoint) => MapPoint;
}

/** Room left around the skin, mm. */
const MARGIN_MM = 250;

const SEEN_FROM: Readonly<Record<string, SeenFrom>> = {
  'hull molding': 'outsideBelow',
  liner: 'insideAbove',
  'stringer grid': 'insideAbove',
};

/**
 * The frame of a part's map. Port is always up, as on the printed map: a hull molding is seen from below, so its bow is
 * on the left; a deck is seen from above, and its bow is on the right.
 */
export const frameOf = (kind: string, skin: Skin): Frame => {
  const half = Math.max(...skin.stations.map(({ edgeGirthMm }) => edgeGirthMm), skin.transom?.halfWidthMm ?? 0);
  const aft = skin.transom === undefined ? 0 : TRANSOM_GAP_MM + skin.transom.heightMm;
  const seenFrom = SEEN_FROM[kind] ?? 'outsideAbove';
  const bowLeft = seenFrom === 'outsideBelow';
  return {
    width: aft + skin.lengthMm + 2 * MARGIN_MM,
    height: 2 * (half + MARGIN_MM),
    bowLeft,
    seenFrom,
    at: ({ x, y }) => ({ x: MARGIN_MM + (bowLeft ? skin.lengthMm - x : x + aft), y: half + MARGIN_MM - y }),
    back: ({ x, y }) => ({
      x: bowLeft ? skin.lengthMm - (x - MARGIN_MM) : x - MARGIN_MM - aft,
      y: half + MARGIN_MM - y,
    }),
  };
};
