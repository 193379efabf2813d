import { describe, expect, it } from '@jest/globals';
import { checkSkin, girthAt, placeFromMap, transomOutline, type Skin } from '@hull-record/trade';

const skin: Skin = {
  lengthMm: 8000,
  stations: [
    { xMm: 0, edgeGirthMm: 1800 },
    { xMm: 4000, edgeGirthMm: 2000, chineGirthMm: 1000 },
    { xMm: 8000, edgeGirthMm: 1200, chineGirthMm: 600 },
  ],
  transom: { halfWidthMm: 1200, heightMm: 800 },
};

describe('what is said of a skin that cannot be used', () => {
  const flat = { xMm: 0, edgeGirthMm: 0 };
  const needsGirth = { path: '/stations', message: 'At least one station needs a girth above 0 mm.' };

  it.each([
    [
      'no length',
      { ...skin, lengthMm: 0 },
      [
        { path: '/lengthMm', message: 'The length must be above 0 mm.' },
        { path: '/stations/2/xMm', message: 'The last station stands at the length, 0 mm.' },
      ],
    ],
    ['no station', { ...skin, stations: [] }, [{ path: '/stations', message: 'At least two stations are needed.' }]],
    [
      'a first station off the transom',
      { ...skin, stations: [{ xMm: 1, edgeGirthMm: 1800 }, ...skin.stations.slice(1)] },
      [{ path: '/stations/0/xMm', message: 'The first station stands at the transom, 0 mm.' }],
    ],
    ['no girth', { lengthMm: 1, stations: [flat, { ...flat, xMm: 1 }] }, [needsGirth]],
    [
      'stations that do not ascend',
      { ...skin, stations: [skin.stations[0] ?? flat, flat, ...skin.stations.slice(1)] },
      [{ path: '/stations/1/xMm', message: 'Stations must be numbers and ascend from the transom forward.' }],
    ],
    [
      'a girth below zero',
      { ...skin, stations: [{ xMm: 0, edgeGirthMm: -1 }, ...skin.stations.slice(1)] },
      [{ path: '/stations/0/edgeGirthMm', message: 'A girth is 0 mm or more.' }],
    ],
    [
      'a waterline above the edge',
      { ...skin, stations: [{ xMm: 0, edgeGirthMm: 1800, waterlineGirthMm: 1801 }, ...skin.stations.slice(1)] },
      [{ path: '/stations/0/waterlineGirthMm', message: 'It must lie between 0 mm and the edge at 1800 mm.' }],
    ],
    [
      'a transom without size',
      { ...skin, transom: { halfWidthMm: 0, heightMm: NaN } },
      [
        { path: '/transom/halfWidthMm', message: 'A size of the transom must be above 0 mm.' },
        { path: '/transom/heightMm', message: 'A size of the transom must be above 0 mm.' },
      ],
    ],
  ] as const)('%s', (_what, wrong: Skin, problems) => {
    expect(checkSkin(wrong)).toEqual(problems);
  });

  it('a line that begins at the second station is not known before it', () => {
    expect(girthAt(skin, 2000, 'chineGirthMm')).toBeUndefined();
    expect(girthAt(skin, 4000, 'chineGirthMm')).toBe(1000);
    expect(girthAt(skin, 6000, 'chineGirthMm')).toBe(800);
  });
});

describe('the map of a hull', () => {
  it('the transom is folded back behind the shell, port edge first, with its top aft', () => {
    expect(transomOutline(skin)).toEqual([
      { x: -300, y: 1200 },
      { x: -300, y: -1200 },
      { x: -1100, y: -1200 },
      { x: -1100, y: 1200 },
    ]);
  });

  it('a spot on the keel line is on neither side', () => {
    const keel = { surface: 'shell', side: 'centreline', fromTransomMm: 100, girthMm: 0 };
    expect(placeFromMap({ x: 100, y: 0 }, skin)).toEqual(keel);
    const middle = { surface: 'transom', side: 'centreline', offsetMm: 0, heightMm: 100 };
    expect(placeFromMap({ x: -400, y: 0 }, skin)).toEqual(middle);
  });
});
