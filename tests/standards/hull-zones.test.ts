import { describe, expect, it } from '@jest/globals';
import { checkPlace, locate, placeOnMap, zonesAlong, type Place, type Skin } from '@hull-record/trade';

const CLASS = 'ICS rules for FRP ships, Sec. 2 (204-206)';

const skin: Skin = {
  lengthMm: 10000,
  stations: [
    { xMm: 0, edgeGirthMm: 2000, chineGirthMm: 1200, waterlineGirthMm: 1000 },
    { xMm: 10000, edgeGirthMm: 1500, chineGirthMm: 600, waterlineGirthMm: 500 },
  ],
  transom: { halfWidthMm: 1300, heightMm: 900 },
};

const shell = (fromTransomMm: number, girthMm = 100): Place => ({
  surface: 'shell',
  side: 'port',
  fromTransomMm,
  girthMm,
});

describe(`zones along a hull of 10 m (${CLASS})`, () => {
  it.each([
    [4200, 42, 'midship'],
    [800, 8, 'aft end'],
    [9300, 93, 'fore end'],
    [2000, 20, 'between'],
    [0, 0, 'aft end'],
    [1000, 10, 'aft end'],
    [1001, 10.01, 'between'],
    [2999, 29.99, 'between'],
    [3000, 30, 'midship'],
    [7000, 70, 'midship'],
    [7001, 70.01, 'between'],
    [8999, 89.99, 'between'],
    [9000, 90, 'fore end'],
    [10000, 100, 'fore end'],
  ])('%d mm from the transom is %d percent of the length: %s', (x, percent, zone) => {
    expect(locate(shell(x), skin)).toMatchObject({ percentOfLength: percent, zone });
    expect(checkPlace(shell(x), skin)).toEqual([]);
  });

  it('10 500 mm on a hull of 10 000 mm is refused (derived)', () => {
    expect(checkPlace(shell(10500), skin)).toEqual([
      { pointer: '/fromTransomMm', message: expect.stringContaining('10000 mm') },
    ]);
  });
});

describe('sides of the map', () => {
  it('the bow up, port is left and starboard right, as seen facing the bow (many guides)', () => {
    const y = (side: 'port' | 'starboard') => placeOnMap({ surface: 'shell', side, fromTransomMm: 10, girthMm: 5 }).y;
    // y grows to port; the map is drawn with the bow to the right and port up, which is the same turn.
    expect([y('port'), y('starboard')]).toEqual([5, -5]);
  });
});

describe('heights and sides (survey practice: topsides, below waterline, transom, deck)', () => {
  it('50 mm below the waterline is below the waterline, on it or above is not (derived)', () => {
    expect(locate(shell(0, 950), skin).belowWaterline).toBe(true);
    expect(locate(shell(0, 1000), skin).belowWaterline).toBe(false);
    expect(locate(shell(0, 1050), skin).belowWaterline).toBe(false);
  });

  it('the waterline between stations is interpolated (derived)', () => {
    expect(locate(shell(5000, 749), skin).belowWaterline).toBe(true);
    expect(locate(shell(5000, 751), skin).belowWaterline).toBe(false);
  });

  it.each([
    [{ surface: 'shell', side: 'centreline', fromTransomMm: 4200, girthMm: 30 }, '/girthMm'],
    [{ surface: 'transom', side: 'centreline', offsetMm: 30, heightMm: 100 }, '/offsetMm'],
  ] as const)('a spot on the centreline with an offset is refused (derived): %j', (place, pointer) => {
    expect(checkPlace(place, skin).map((problem) => problem.pointer)).toEqual([pointer]);
  });
});

describe(`the zones along a length (${CLASS})`, () => {
  it('are told with their ends', () => {
    expect(zonesAlong(10_000)).toEqual([
      { zone: 'aft end', fromMm: 0, toMm: 1_000 },
      { zone: 'between', fromMm: 1_000, toMm: 3_000 },
      { zone: 'midship', fromMm: 3_000, toMm: 7_000 },
      { zone: 'between', fromMm: 7_000, toMm: 9_000 },
      { zone: 'fore end', fromMm: 9_000, toMm: 10_000 },
    ]);
  });

  it('are those that a spot in the middle of each lies in', () => {
    for (const { zone, fromMm, toMm } of zonesAlong(skin.lengthMm))
      expect(locate(shell((fromMm + toMm) / 2), skin).zone).toBe(zone);
  });
});
