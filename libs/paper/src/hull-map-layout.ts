import { checkPlace, placeOnMap, skinOutline, transomOutline, type MapPoint, type Skin } from '@hull-record/trade';
import type { PaperPoint } from './geometry.js';
import type { HullMapView, MapMark } from './hull-map-view.js';
import { placeLabels, type Labelled } from './map-labels.js';

/** Points of paper for a millimetre. */
const POINTS_PER_MM = 72 / 25.4;
const SIDE = 30;
const BAND = 16;
const GREATEST_HEIGHT = 290;

/** The hull map laid out on paper. */
export interface MapLayout {
  /** The map is drawn 1 : scale. */
  readonly scale: number;
  readonly width: number;
  readonly height: number;
  readonly bowLeft: boolean;
  /** From millimetres of the map to points from the drawing's upper left corner. */
  readonly toPaper: (point: MapPoint) => PaperPoint;
  readonly labelled: readonly Labelled[];
  /** Marks whose place is not on the skin. */
  readonly offSkin: readonly string[];
  /** Marks drawn without their name for want of room. */
  readonly unnamed: readonly string[];
}

/**
 * Lays the map out to the largest whole scale that fits the width; the skin must be free of problems.
 *
 * `nameWidth` gives the width of a mark's name in points.
 */
export const layOutMap = (view: HullMapView, width: number, nameWidth: (name: string) => number): MapLayout => {
  const { scale, height, toPaper, bowLeft } = fit(view, width);
  const onSkin = view.marks.filter(({ place }) => checkPlace(place, view.skin).length === 0);
  const spots = onSkin.map((mark) => ({ mark, at: toPaper(placeOnMap(mark.place)), width: nameWidth(mark.mark) }));
  const { labelled, unnamed } = placeLabels(spots, { width, height, band: BAND });
  const drawn = new Set<MapMark>(onSkin);
  const offSkin = view.marks.filter((mark) => !drawn.has(mark)).map(({ mark }) => mark);
  return { scale, width, height, bowLeft, toPaper, labelled, offSkin, unnamed };
};

const fit = ({ skin, seenFrom }: HullMapView, width: number) => {
  const { minX, maxX, maxY } = extent(skin);
  const [lengthOnPaper, breadthOnPaper] = [(maxX - minX) * POINTS_PER_MM, 2 * maxY * POINTS_PER_MM];
  const scale = Math.ceil(Math.max(lengthOnPaper / (width - 2 * SIDE), breadthOnPaper / (GREATEST_HEIGHT - 2 * BAND)));
  const perMm = POINTS_PER_MM / scale;
  const bowLeft = seenFrom === 'outside, from below';
  const left = (width - (maxX - minX) * perMm) / 2;
  const toPaper = ({ x, y }: MapPoint): PaperPoint => ({
    x: left + (bowLeft ? maxX - x : x - minX) * perMm,
    y: BAND + (maxY - y) * perMm,
  });
  return { scale, height: 2 * maxY * perMm + 2 * BAND, bowLeft, toPaper };
};

const extent = (skin: Skin): { readonly minX: number; readonly maxX: number; readonly maxY: number } => {
  const points = [...skinOutline(skin), ...transomOutline(skin)];
  const xs = points.map(({ x }) => x);
  return { minX: Math.min(...xs), maxX: Math.max(...xs), maxY: Math.max(...points.map(({ y }) => Math.abs(y))) };
};
