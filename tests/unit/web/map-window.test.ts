import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  dragged,
  NEAREST_MM,
  seeing,
  wholeBoard,
  windowAround,
  zoomed,
} from '../../../apps/web/src/skin/map-window.js';

const board = { width: 10_000, height: 4_000, ratio: 0.6 };

describe('a window on the hull map', () => {
  it('shows the whole board first, which stands in its middle', () => {
    expect(wholeBoard(board)).toEqual({ x: 0, y: -1_000, width: 10_000 });
    expect(wholeBoard({ ...board, height: 9_000 })).toEqual({ x: -2_500, y: 0, width: 15_000 });
  });

  it('is zoomed about a point, which stays where it is seen', () => {
    const near = zoomed(wholeBoard(board), 4, { x: 6_000, y: 2_000 }, board);
    expect(near).toEqual({ x: 4_500, y: 1_250, width: 2_500 });
    // 60 % from the left before and after.
    expect((6_000 - near.x) / near.width).toBe(0.6);
  });

  it('goes no nearer than 300 mm, no further than the board, and not off it', () => {
    expect(zoomed(wholeBoard(board), 1e6, { x: 0, y: 0 }, board).width).toBe(NEAREST_MM);
    expect(zoomed(windowAround({ x: 5_000, y: 2_000 }, 1_000, board), 0.001, { x: 0, y: 0 }, board)).toEqual(
      wholeBoard(board),
    );
    expect(windowAround({ x: 0, y: 0 }, 1_000, board)).toEqual({ x: 0, y: 0, width: 1_000 });
    expect(dragged({ x: 0, y: 0, width: 1_000 }, { x: -100_000, y: -100_000 }, board)).toEqual({
      ...{ x: 9_000, y: 3_400, width: 1_000 },
    });
  });

  it('is dragged by as much as the finger', () => {
    expect(dragged({ x: 500, y: 500, width: 1_000 }, { x: 100, y: -50 }, board)).toMatchObject({ x: 400, y: 550 });
  });

  it('follows a mark that is moved out of sight, and stays while the mark is seen', () => {
    const at = { x: 500, y: 500, width: 1_000 };
    expect(seeing(at, { x: 900, y: 800 }, board)).toEqual(at);
    expect(seeing(at, { x: 1_500, y: 800 }, board)).toMatchObject({ x: 600, y: 500 });
    fc.assert(
      fc.property(fc.nat(10_000), fc.nat(4_000), fc.integer({ min: 300, max: 10_000 }), (x, y, width) => {
        const seen = seeing({ x: 0, y: 0, width }, { x, y }, board);
        expect(x >= seen.x && x <= seen.x + seen.width && y >= seen.y && y <= seen.y + seen.width * 0.6).toBe(true);
      }),
    );
  });
});
