import { describe, expect, it } from '@jest/globals';
import {
  checkPlace,
  distanceOnSkin,
  lineOnMap,
  locate,
  placeFromMap,
  placeOnMap,
  skinOutline,
  TRANSOM_GAP_MM,
  transomOutline,
  type Place,
  type Side,
  type Skin,
} from '@hull-record/trade';
import fc from 'fast-check';

const skin: Skin = {
  lengthMm: 9000,
  stations: [
    { xMm: 0, edgeGirthMm: 1800, chineGirthMm: 1000, waterlineGirthMm: 900 },
    { xMm: 3000, edgeGirthMm: 2000, chineGirthMm: 1000 },
    { xMm: 9000, edgeGirthMm: 1000 },
  ],
  transom: { halfWidthMm: 1200, heightMm: 800 },
};
const noTransom: Skin = { lengthMm: skin.lengthMm, stations: skin.stations };

const shell = (side: Side, fromTransomMm: number, girthMm: number): Place => ({
  surface: 'shell',
  side,
  fromTransomMm,
  girthMm,
});
const transom = (side: Side, offsetMm: number, heightMm: number): Place => ({
  surface: 'transom',
  side,
  offsetMm,
  heightMm,
});

const side = fc.constantFrom<Side>('port', 'starboard', 'centreline');
const anyPlace = fc.oneof(
  fc
    .record({
      side,
      x: fc.double({ min: 0, max: 9000, noNaN: true }),
      girth: fc.double({ min: 0, max: 2000, noNaN: true }),
    })
    .map((p) => shell(p.side, p.x, p.girth)),
  fc
    .record({
      side,
      out: fc.double({ min: 0, max: 1200, noNaN: true }),
      up: fc.double({ min: 0, max: 800, noNaN: true }),
    })
    .map((p) => transom(p.side, p.out, p.up)),
);
const realPlace = anyPlace.filter((place) => checkPlace(place, skin).length === 0);

describe('places that are on the skin, and places that are not', () => {
  it.each([
    [shell('port', 0, 1800)],
    [shell('starboard', 6000, 1500)],
    [shell('centreline', 9000, 0)],
    [shell('port', 4500, 0)],
    [transom('port', 1200, 800)],
    [transom('centreline', 0, 0)],
  ])('%j is on it', (place) => {
    expect(checkPlace(place, skin)).toEqual([]);
  });

  it.each([
    [
      shell('port', 9001, 10),
      '/fromTransomMm',
      "9001 mm from the transom is beyond the hull's length, 9000 mm. Enter 0 to 9000 mm.",
    ],
    [shell('port', -1, 10), '/fromTransomMm', '-1 mm from the transom is negative. Enter 0 to 9000 mm.'],
    [shell('port', NaN, 10), '/fromTransomMm', 'not a number'],
    [
      shell('port', 6000, 1501),
      '/girthMm',
      '1501 mm along the skin is beyond the edge at 6000 mm from the transom, 1500 mm. Enter 0 to 1500 mm.',
    ],
    [shell('starboard', 0, -5), '/girthMm', '-5 mm along the skin is negative'],
    [shell('centreline', 0, 5), '/girthMm', 'Enter 0 or choose a side'],
    [transom('port', 1201, 10), '/offsetMm', 'Enter 0 to 1200 mm.'],
    [transom('port', 10, 801), '/heightMm', 'Enter 0 to 800 mm.'],
    [transom('starboard', 10, -1), '/heightMm', 'negative'],
    [transom('centreline', 3, 10), '/offsetMm', 'not 3 mm'],
  ])('%j is not: %s', (place, pointer, message) => {
    expect(checkPlace(place, skin)).toEqual([{ pointer, message: expect.stringContaining(message) }]);
  });

  it('two wrong figures are told at once', () => {
    expect(checkPlace(shell('port', 9001, -1), skin).map(({ pointer }) => pointer)).toEqual([
      '/fromTransomMm',
      '/girthMm',
    ]);
  });

  it('a molding without transom has no place on it', () => {
    expect(checkPlace(transom('port', 10, 10), noTransom).map(({ pointer }) => pointer)).toEqual(['/surface']);
  });

  it('the limit that a refusal names is accepted', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 9000, noNaN: true }), (x) => {
        const [problem] = checkPlace(shell('port', x, 5000), skin);
        const limit = Number(/Enter 0 to ([\d.]+) mm/.exec(problem?.message ?? '')?.[1]);
        expect(checkPlace(shell('port', x, limit), skin)).toEqual([]);
        expect(checkPlace(shell('port', x, limit + 0.2), skin)).toHaveLength(1);
      }),
    );
  });
});

describe('where a place lies', () => {
  it('the chine belongs to the bottom, above it is topside', () => {
    expect(locate(shell('port', 1500, 1000), skin).height).toBe('bottom');
    expect(locate(shell('port', 1500, 1001), skin).height).toBe('topside');
  });

  it('what the skin does not tell is left out', () => {
    expect(locate(shell('port', 8000, 10), skin)).toEqual({ percentOfLength: (100 * 8000) / 9000, zone: 'between' });
    expect(locate(shell('port', 3000, 10), skin)).not.toHaveProperty('belowWaterline');
  });

  it('the transom is the aft end', () => {
    expect(locate(transom('port', 10, 10), skin)).toEqual({ percentOfLength: 0, zone: 'aft end', height: 'transom' });
  });
});

describe('the map', () => {
  it('has port up, starboard down, and the transom behind', () => {
    expect(placeOnMap(shell('port', 100, 50))).toEqual({ x: 100, y: 50 });
    expect(placeOnMap(shell('starboard', 100, 50))).toEqual({ x: 100, y: -50 });
    expect(placeOnMap(shell('centreline', 100, 0))).toEqual({ x: 100, y: 0 });
    expect(placeOnMap(transom('starboard', 20, 30))).toEqual({ x: -TRANSOM_GAP_MM - 30, y: -20 });
  });

  it('is outlined by the edges of both sides, forward on port and back on starboard', () => {
    expect(skinOutline(skin)).toEqual([
      { x: 0, y: 1800 },
      { x: 3000, y: 2000 },
      { x: 9000, y: 1000 },
      { x: 9000, y: -1000 },
      { x: 3000, y: -2000 },
      { x: 0, y: -1800 },
    ]);
  });

  it('draws a line where stations have it', () => {
    expect(lineOnMap(skin, 'chineGirthMm', 'starboard')).toEqual([
      { x: 0, y: -1000 },
      { x: 3000, y: -1000 },
    ]);
  });

  it('outlines the transom behind the gap, or not at all', () => {
    const xs = transomOutline(skin).map(({ x }) => x);
    expect([Math.max(...xs), Math.min(...xs)]).toEqual([-TRANSOM_GAP_MM, -TRANSOM_GAP_MM - 800]);
    expect(transomOutline(skin).map(({ y }) => Math.abs(y))).toEqual([1200, 1200, 1200, 1200]);
    expect(transomOutline(noTransom)).toEqual([]);
  });

  it('a touched point is the place that is drawn there', () => {
    fc.assert(
      fc.property(realPlace, (place) => {
        const point = placeOnMap(place);
        const touched = placeFromMap(point, skin);
        if (touched === undefined) throw new Error('the point is off the skin');
        expect(touched.surface).toBe(place.surface);
        expect(placeOnMap(touched).x).toBeCloseTo(point.x, 6);
        expect(placeOnMap(touched).y).toBe(point.y);
        expect(checkPlace(touched, skin)).toEqual([]);
      }),
    );
  });

  it.each([
    [0, 1800],
    [9000, -1000],
    [0, 0],
    [-TRANSOM_GAP_MM, 0],
    [-TRANSOM_GAP_MM - 800, 1200],
  ])('the point (%d, %d) on an edge is on the skin', (x, y) => {
    expect(placeFromMap({ x, y }, skin)).toBeDefined();
  });

  it.each([
    [9001, 0],
    [100, 1900],
    [-10, 0],
    [-TRANSOM_GAP_MM - 801, 0],
    [-TRANSOM_GAP_MM - 10, 1201],
    [NaN, 0],
    [100, NaN],
  ])('the point (%d, %d) is off the skin', (x, y) => {
    expect(placeFromMap({ x, y }, skin)).toBeUndefined();
  });

  it('a molding without transom has nothing behind the gap', () => {
    expect(placeFromMap({ x: -TRANSOM_GAP_MM - 10, y: 0 }, noTransom)).toBeUndefined();
  });
});

describe('distances along the skin', () => {
  it.each([
    [shell('port', 0, 30), shell('port', 40, 0), 50],
    [shell('port', 100, 30), shell('starboard', 100, 40), 70],
    [shell('port', 100, 30), shell('centreline', 100, 0), 30],
    [transom('port', 30, 10), transom('starboard', 10, 40), 50],
    [shell('centreline', 60, 0), transom('centreline', 0, 20), 80],
  ])('from %j to %j', (a, b, mm) => {
    expect(distanceOnSkin(a, b)).toBeCloseTo(mm, 9);
  });

  it('are the same both ways, nothing to itself, and never longer than by way of a third place', () => {
    fc.assert(
      fc.property(anyPlace, anyPlace, anyPlace, (a, b, c) => {
        expect(distanceOnSkin(a, b)).toBe(distanceOnSkin(b, a));
        expect(distanceOnSkin(a, a)).toBe(0);
        expect(distanceOnSkin(a, b)).toBeLessThanOrEqual(distanceOnSkin(a, c) + distanceOnSkin(c, b) + 1e-6);
      }),
    );
  });
});
