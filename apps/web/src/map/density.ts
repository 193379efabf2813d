import { TRANSOM_GAP_MM } from '@hull-record/trade';
import { onMap, type Area, type Spot } from './area.js';

/** A square of the map with the defects in it. */
export interface Cell {
  /** Its corner nearest to the origin of the map, mm: x forward, y to port. */
  readonly x: number;
  readonly y: number;
  readonly count: number;
  /** On how many parts they are. */
  readonly parts: number;
  readonly area: Area;
}

/** A defect to be counted. */
export interface Counted extends Spot {
  readonly part: string;
}

/** Steps of shade, the palest first. */
export const SHADES = 4;

/** The side of a square, mm: a round number, with some forty along the skin. */
export const cellSizeMm = (lengthMm: number): number => Math.max(50, Math.round(lengthMm / 40 / 50) * 50);

/** The squares with any defect in them, the fullest first; of as many, the aft-most first. */
export const cellsOf = (spots: readonly Counted[], sizeMm: number): readonly Cell[] => {
  const cells = new Map<string, { count: number; parts: Set<string>; x: number; y: number; spot: Counted }>();
  for (const spot of spots) {
    const point = onMap(spot);
    const [x, y] = [Math.floor(point.x / sizeMm) * sizeMm, Math.floor(point.y / sizeMm) * sizeMm];
    // The gap between shell and transom need not end where a square does.
    const key = `${spot.surface}/${x}/${y}`;
    const cell = cells.get(key) ?? { count: 0, parts: new Set<string>(), x, y, spot };
    cell.count += 1;
    cell.parts.add(spot.part);
    cells.set(key, cell);
  }
  return [...cells.values()]
    .map(({ count, parts, x, y, spot }) => ({
      count,
      parts: parts.size,
      x,
      y,
      area: areaOf(spot.surface, x, y, sizeMm),
    }))
    .sort((a, b) => b.count - a.count || a.x - b.x || a.y - b.y);
};

const areaOf = (surface: Spot['surface'], x: number, y: number, size: number): Area => {
  const across = [y, y + size] as const;
  if (surface === 'shell') return { surface, along: [Math.max(0, x), x + size], across };
  return { surface, along: [Math.max(0, -TRANSOM_GAP_MM - x - size), Math.max(0, -TRANSOM_GAP_MM - x)], across };
};

/** How dark a square is, 0 to SHADES - 1: by its share of the fullest. */
export const shadeOf = (count: number, most: number): number =>
  Math.min(SHADES - 1, Math.floor((SHADES * (count - 1)) / Math.max(1, most)));
