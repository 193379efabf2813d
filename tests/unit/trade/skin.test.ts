import { describe, expect, it } from '@jest/globals';
import { checkSkin, girthAt, type Skin } from '@hull-record/trade';

const skin: Skin = {
  lengthMm: 8000,
  stations: [
    { xMm: 0, edgeGirthMm: 1800, chineGirthMm: 1100, waterlineGirthMm: 900 },
    { xMm: 4000, edgeGirthMm: 2000, chineGirthMm: 1000, waterlineGirthMm: 800 },
    { xMm: 8000, edgeGirthMm: 1200 },
  ],
  transom: { halfWidthMm: 1200, heightMm: 800 },
};

const withStation = (index: number, change: object): Skin => ({
  ...skin,
  stations: skin.stations.map((station, i) => (i === index ? { ...station, ...change } : station)),
});

describe('the skin of a model', () => {
  it('a skin with ascending stations from transom to bow has no problem, with or without transom', () => {
    expect(checkSkin(skin)).toEqual([]);
    expect(checkSkin({ ...skin, transom: undefined })).toEqual([]);
  });

  it('a pointed bow has no girth at its end', () => {
    expect(checkSkin(withStation(2, { edgeGirthMm: 0, chineGirthMm: 0 }))).toEqual([]);
  });

  it.each([
    ['no length', { ...skin, lengthMm: 0 }, ['/lengthMm', '/stations/2/xMm']],
    ['no station', { ...skin, stations: [] }, ['/stations']],
    ['one station', { lengthMm: 8000, stations: [{ xMm: 0, edgeGirthMm: 1 }] }, ['/stations']],
    ['a first station off the transom', withStation(0, { xMm: 10 }), ['/stations/0/xMm']],
    ['a last station short of the bow', withStation(2, { xMm: 7990 }), ['/stations/2/xMm']],
    ['two stations at one place', withStation(1, { xMm: 0 }), ['/stations/1/xMm']],
    ['a station that is nowhere', withStation(1, { xMm: NaN }), ['/stations/1/xMm', '/stations/2/xMm']],
    ['a negative girth', withStation(2, { edgeGirthMm: -1 }), ['/stations/2/edgeGirthMm']],
    ['a girth that is no number', withStation(2, { edgeGirthMm: NaN }), ['/stations/2/edgeGirthMm']],
    ['a chine above the edge', withStation(0, { chineGirthMm: 1801 }), ['/stations/0/chineGirthMm']],
    ['a waterline below the keel', withStation(1, { waterlineGirthMm: -1 }), ['/stations/1/waterlineGirthMm']],
    ['a flat transom', { ...skin, transom: { halfWidthMm: 1200, heightMm: 0 } }, ['/transom/heightMm']],
    [
      'no girth anywhere',
      {
        lengthMm: 1,
        stations: [
          { xMm: 0, edgeGirthMm: 0 },
          { xMm: 1, edgeGirthMm: 0 },
        ],
      },
      ['/stations'],
    ],
  ] as const)('%s is a problem', (_what, wrong: Skin, paths) => {
    expect(checkSkin(wrong).map(({ path }) => path)).toEqual(paths);
  });

  it.each([
    [0, 'edgeGirthMm', 1800],
    [1000, 'edgeGirthMm', 1850],
    [4000, 'edgeGirthMm', 2000],
    [6000, 'edgeGirthMm', 1600],
    [8000, 'edgeGirthMm', 1200],
    [2000, 'chineGirthMm', 1050],
    [4000, 'chineGirthMm', 1000],
    [6000, 'chineGirthMm', undefined],
    [8000, 'waterlineGirthMm', undefined],
    [8001, 'edgeGirthMm', undefined],
    [-1, 'edgeGirthMm', undefined],
    [NaN, 'edgeGirthMm', undefined],
  ] as const)('at %d mm the %s is %s', (x, line, girth) => {
    expect(girthAt(skin, x, line)).toBe(girth);
  });
});
