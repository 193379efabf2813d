import { describe, expect, it } from '@jest/globals';
import { checkPlace, movedPlace, nearestPlace, placeOnMap, TRANSOM_GAP_MM, type Skin } from '@hull-record/trade';
import fc from 'fast-check';

const skin: Skin = {
  lengthMm: 9000.5,
  stations: [
    { xMm: 0, edgeGirthMm: 1800.4, chineGirthMm: 1000 },
    { xMm: 9000.5, edgeGirthMm: 1000.7 },
  ],
  transom: { halfWidthMm: 1200, heightMm: 800 },
};
const noTransom: Skin = { lengthMm: skin.lengthMm, stations: skin.stations };
const coordinate = fc.double({ min: -20_000, max: 20_000, noNaN: true });

describe('the place that a touch of the hull map means', () => {
  it('is what was touched, in whole millimetres', () => {
    expect(nearestPlace({ x: 3420.4, y: 900.6 }, skin)).toEqual({
      ...{ surface: 'shell', side: 'port', fromTransomMm: 3420, girthMm: 901 },
    });
    expect(nearestPlace({ x: -TRANSOM_GAP_MM - 250.2, y: -70 }, skin)).toEqual({
      ...{ surface: 'transom', side: 'starboard', offsetMm: 70, heightMm: 250 },
    });
  });

  it('is on the keel when it is within half a millimetre of it', () => {
    expect(nearestPlace({ x: 10, y: -0.4 }, skin)).toMatchObject({ side: 'centreline', girthMm: 0 });
  });

  it('is the edge beside a touch off the skin', () => {
    expect(nearestPlace({ x: 0, y: 5_000 }, skin)).toMatchObject({ fromTransomMm: 0, side: 'port', girthMm: 1800 });
    expect(nearestPlace({ x: 99_000, y: -1 }, skin)).toMatchObject({ fromTransomMm: 9000, side: 'starboard' });
  });

  it('is the nearer of shell and transom in the gap between them, and the shell where there is no transom', () => {
    expect(nearestPlace({ x: -100, y: 5 }, skin)).toMatchObject({ surface: 'shell', fromTransomMm: 0 });
    expect(nearestPlace({ x: -200, y: 5 }, skin)).toMatchObject({ surface: 'transom', heightMm: 0 });
    expect(nearestPlace({ x: -200, y: 5 }, noTransom)).toMatchObject({ surface: 'shell', fromTransomMm: 0 });
  });

  it('exists on the skin, wherever the map is touched', () => {
    fc.assert(
      fc.property(coordinate, coordinate, fc.constantFrom(skin, noTransom), (x, y, on) => {
        expect(checkPlace(nearestPlace({ x, y }, on), on)).toEqual([]);
      }),
    );
  });
});

describe('a mark that is moved', () => {
  it('moves by as much, and stops at the edge', () => {
    const from = placeOnMap({ surface: 'shell', side: 'port', fromTransomMm: 100, girthMm: 5 });
    expect(movedPlace(from, { x: 0, y: -10 }, skin)).toMatchObject({ side: 'starboard', girthMm: 5 });
    expect(movedPlace(from, { x: 10, y: 0 }, skin)).toMatchObject({ fromTransomMm: 110 });
    expect(movedPlace(from, { x: 0, y: 9_999 }, skin)).toMatchObject({ girthMm: 1791 });
  });

  it('goes over the lower edge of the transom at one step, and back again', () => {
    const low = placeOnMap({ surface: 'shell', side: 'port', fromTransomMm: 4, girthMm: 50 });
    const on = movedPlace(low, { x: -10, y: 0 }, skin);
    expect(on).toEqual({ surface: 'transom', side: 'port', offsetMm: 50, heightMm: 6 });
    expect(movedPlace(placeOnMap(on), { x: 10, y: 0 }, skin)).toEqual({
      ...{ surface: 'shell', side: 'port', fromTransomMm: 4, girthMm: 50 },
    });
  });
});
