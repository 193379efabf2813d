import type { MapPoint } from '@hull-record/trade';

/** The piece of a board that is looked at, millimetres: its upper left corner and how wide it is. */
export interface MapWindow {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** A board, mm, and how high a window on it is to its width. */
export interface Board {
  readonly width: number;
  readonly height: number;
  readonly ratio: number;
}

/** As near as one can look: 300 mm across. */
export const NEAREST_MM = 300;

const between = (low: number, value: number, high: number): number =>
  Math.min(Math.max(value, low), Math.max(low, high));

/** How wide a window shows the whole board. */
const wholeWidth = ({ width, height, ratio }: Board): number => Math.max(width, height / ratio);

/** A window kept on the board; where the board is smaller than the window it stands in its middle. */
const kept = ({ x, y, width }: MapWindow, board: Board): MapWindow => {
  const wide = between(NEAREST_MM, width, wholeWidth(board));
  const along = (at: number, size: number, of: number): number =>
    size >= of ? (of - size) / 2 : between(0, at, of - size);
  return { x: along(x, wide, board.width), y: along(y, wide * board.ratio, board.height), width: wide };
};

/** The window that shows all of the board. */
export const wholeBoard = (board: Board): MapWindow => kept({ x: 0, y: 0, width: Infinity }, board);

/** A window so wide with a point in its middle, as far as the board lets it. */
export const windowAround = ({ x, y }: MapPoint, width: number, board: Board): MapWindow => {
  const wide = between(NEAREST_MM, width, wholeWidth(board));
  return kept({ x: x - wide / 2, y: y - (wide * board.ratio) / 2, width: wide }, board);
};

/** A window zoomed by a factor, above 1 nearer, so that a point of the board stays where it is seen. */
export const zoomed = (window: MapWindow, by: number, about: MapPoint, board: Board): MapWindow => {
  const width = between(NEAREST_MM, window.width / by, wholeWidth(board));
  const rest = width / window.width;
  return kept({ x: about.x - (about.x - window.x) * rest, y: about.y - (about.y - window.y) * rest, width }, board);
};

/** A window dragged, so that what was under the finger stays under it: by millimetres of the board. */
export const dragged = (window: MapWindow, { x, y }: MapPoint, board: Board): MapWindow =>
  kept({ ...window, x: window.x - x, y: window.y - y }, board);

/** Moves the window no further than is needed to see a point, a tenth of its width within its edge. */
export const seeing = (window: MapWindow, { x, y }: MapPoint, board: Board): MapWindow => {
  const rim = window.width / 10;
  const high = window.width * board.ratio;
  const moved = (at: number, size: number, point: number): number =>
    between(point - size + Math.min(rim, size / 3), at, point - Math.min(rim, size / 3));
  return kept({ ...window, x: moved(window.x, window.width, x), y: moved(window.y, high, y) }, board);
};
