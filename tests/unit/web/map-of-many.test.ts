import { describe, expect, it } from '@jest/globals';
import { areaBetween, areaFromText, areaToText, isIn } from '../../../apps/web/src/map/area.js';
import { cellSizeMm, cellsOf, shadeOf } from '../../../apps/web/src/map/density.js';
import { moved, whole, zoomed, ZOOM_AT_MOST } from '../../../apps/web/src/map/view-box.js';

const BOARD = { width: 1_000, height: 500 };

describe('what is seen of a board', () => {
  it('is enlarged about a point that stays where it is', () => {
    const near = zoomed(whole(BOARD), 2, { x: 250, y: 250 }, BOARD);
    expect(near).toEqual({ x: 125, y: 125, width: 500 });
    // The point was a quarter along, and is.
    expect((250 - near.x) / near.width).toBe(0.25);
  });

  it('is never more than the board, never beyond its edge, and enlarged so many times at most', () => {
    expect(zoomed(whole(BOARD), 0.5, { x: 0, y: 0 }, BOARD)).toEqual(whole(BOARD));
    expect(zoomed(whole(BOARD), 1_000, { x: 0, y: 0 }, BOARD).width).toBe(1_000 / ZOOM_AT_MOST);
    expect(moved({ x: 0, y: 0, width: 500 }, { x: 9_999, y: 9_999 }, BOARD)).toEqual({ x: 500, y: 250, width: 500 });
    expect(moved({ x: 0, y: 0, width: 500 }, { x: -1, y: -1 }, BOARD)).toEqual({ x: 0, y: 0, width: 500 });
  });
});

describe('an area of the map', () => {
  it.each([
    [
      { x: 3_000, y: -200 },
      { x: 1_000, y: 400 },
      { surface: 'shell', along: [1_000, 3_000], across: [-200, 400] },
    ],
    [
      { x: -100, y: 1 },
      { x: 900, y: 2 },
      { surface: 'shell', along: [0, 900], across: [1, 2] },
    ],
    // The transom begins 300 mm behind the shell: what is drawn at -500 is 200 mm up.
    [
      { x: -500, y: 0 },
      { x: -800, y: 90 },
      { surface: 'transom', along: [200, 500], across: [0, 90] },
    ],
  ])('between %j and %j is %j', (a, b, area) => {
    expect(areaBetween(a, b)).toEqual(area);
  });

  it('stands in an address and is read from it again; what cannot be understood names none', () => {
    const area = areaBetween({ x: 10, y: -20 }, { x: 30, y: 40 });
    expect(areaFromText(areaToText(area))).toEqual(area);
    for (const text of [undefined, '', 'deck,1,2,3,4', 'shell,1,2,3', 'shell,1,2,3,x', 'shell,1,2,,4'])
      expect(areaFromText(text)).toBeUndefined();
  });

  it('holds its edges, and nothing of the other surface', () => {
    const area = { surface: 'shell', along: [0, 10], across: [-5, 5] } as const;
    expect(isIn(area, { surface: 'shell', along: 10, across: -5 })).toBe(true);
    expect(isIn(area, { surface: 'shell', along: 10.1, across: 0 })).toBe(false);
    expect(isIn(area, { surface: 'transom', along: 5, across: 0 })).toBe(false);
  });
});

describe('how dense defects are', () => {
  it('is counted by squares, port and starboard apart, with the parts they are on', () => {
    const at = (along: number, across: number, part: string) => ({ surface: 'shell' as const, along, across, part });
    const cells = cellsOf([at(10, 10, 'A'), at(90, 20, 'A'), at(50, 60, 'B'), at(50, -60, 'B'), at(150, 10, 'C')], 100);
    expect(cells.map(({ count, parts, area }) => [count, parts, area.along, area.across])).toEqual([
      [3, 2, [0, 100], [0, 100]],
      [1, 1, [0, 100], [-100, 0]],
      [1, 1, [100, 200], [0, 100]],
    ]);
  });

  it('is shaded by the share of the fullest, the fullest darkest', () => {
    expect([1, 3, 6, 10].map((count) => shadeOf(count, 10))).toEqual([0, 0, 2, 3]);
    expect(shadeOf(1, 1)).toBe(0);
    expect([cellSizeMm(8_600), cellSizeMm(1_000)]).toEqual([200, 50]);
  });
});
