/** What is seen of a board, in its own units: upper left corner, and how wide; as high as the board is to its width. */
export interface Seen {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** The size of a board. */
export interface BoardSize {
  readonly width: number;
  readonly height: number;
}

/** A point of a board. */
export interface BoardPoint {
  readonly x: number;
  readonly y: number;
}

/** So many times it is enlarged at most. */
export const ZOOM_AT_MOST = 16;

/** All of a board. */
export const whole = ({ width }: BoardSize): Seen => ({ x: 0, y: 0, width });

const within = (value: number, least: number, most: number): number => Math.min(Math.max(value, least), most);

/** What is seen after a move, kept on the board. */
export const moved = ({ x, y, width }: Seen, by: BoardPoint, board: BoardSize): Seen => {
  const height = (width * board.height) / board.width;
  return {
    x: within(x + by.x, 0, board.width - width),
    y: within(y + by.y, 0, board.height - height),
    width,
  };
};

/**
 * What is seen after it is enlarged about a point, which stays where it is.
 *
 * @param times above 1 enlarges, below 1 makes smaller; from the whole board to 16 times
 */
export const zoomed = (seen: Seen, times: number, about: BoardPoint, board: BoardSize): Seen => {
  const width = within(seen.width / times, board.width / ZOOM_AT_MOST, board.width);
  const part = width / seen.width;
  const corner = { x: about.x - (about.x - seen.x) * part, y: about.y - (about.y - seen.y) * part, width };
  return moved(corner, { x: 0, y: 0 }, board);
};

/** The middle of what is seen. */
export const middleOf = ({ x, y, width }: Seen, board: BoardSize): BoardPoint => ({
  x: x + width / 2,
  y: y + (width * board.height) / board.width / 2,
});

/** As the attribute of a drawing. */
export const viewBoxOf = ({ x, y, width }: Seen, board: BoardSize): string =>
  [x, y, width, (width * board.height) / board.width].map((value) => value.toFixed(1)).join(' ');
