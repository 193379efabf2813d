import { describe, expect, it } from '@jest/globals';
import { CURE_IN_THE_SHOP, judgeClimate, SHOP_WINDOWS, type ClimatePoint, type ShopWindow } from '@hull-record/trade';
import fc from 'fast-check';

const H = 3_600_000;
/** A reading at an hour. */
const p = (hour: number, airC: number, humidityPercent = 60): ClimatePoint => ({ at: hour * H, airC, humidityPercent });
/** Work from hour 48 to hour 52. */
const brushed = { startedAt: 48 * H, endedAt: 52 * H, sprayed: false };
const sprayed = { ...brushed, sprayed: true };

const FREE: ShopWindow = {
  name: 'of an invented plant',
  minC: null,
  maxC: null,
  maxHumidityPercent: null,
  minHumiditySprayingPercent: null,
  hoursBefore: null,
  driftC: null,
  source: 'an invented rule',
};

describe('published shop windows', () => {
  it('are two, each with its source', () => {
    expect(SHOP_WINDOWS).toEqual({
      'class rule': {
        name: 'class rule',
        minC: 18,
        maxC: null,
        maxHumidityPercent: 80,
        minHumiditySprayingPercent: 40,
        hoursBefore: 24,
        driftC: 3,
        source: 'ICS rules for FRP ships, section 1, 102.2-5 (degrees C by context)',
      },
      'recommended workshop': {
        name: 'recommended workshop',
        minC: 18,
        maxC: 22,
        maxHumidityPercent: 70,
        minHumiditySprayingPercent: null,
        hoursBefore: null,
        driftC: null,
        source: 'ICS approval of manufacturing process, Table 2.13.1',
      },
    });
  });

  it('a laminate stays in the shop for 48 h of at least 18 C', () => {
    expect(CURE_IN_THE_SHOP).toEqual({ hours: 48, atLeastC: 18 });
  });
});

describe('the climate while work was done', () => {
  it.each([
    ['no log', []],
    ['a log before and after it', [p(47.9, 20), p(52.1, 20)]],
  ])('is not known from %s, whatever the window', (_, log) => {
    const none = { rule: 'no reading', detail: 'The climate log has no reading while the work was done.' };
    expect(judgeClimate(log, brushed, FREE)).toEqual([none]);
    expect(judgeClimate(log, sprayed, SHOP_WINDOWS['class rule'])).toEqual([none]);
  });

  it.each([48, 50, 52])('is judged by a reading at hour %d, the start and the end included', (hour) => {
    const cold = [{ rule: 'too cold', detail: '14 C is under 15 C.' }];
    expect(judgeClimate([p(hour, 14)], brushed, { ...FREE, minC: 15 })).toEqual(cold);
  });

  it('is free where the window asks nothing', () => {
    expect(judgeClimate([p(0, 50), p(48, -40, 1), p(50, 55, 100)], sprayed, FREE)).toEqual([]);
  });

  it.each([
    ['minC', p(50, 14.9), 'too cold', '14.9 C is under 15 C.'],
    ['maxC', p(50, 15.1), 'too warm', '15.1 C is over 15 C.'],
    ['maxHumidityPercent', p(50, 20, 15.5), 'too humid', '15.5 % is over 15 %.'],
    ['minHumiditySprayingPercent', p(50, 20, 14), 'too dry to spray', '14 % is under 15 % where material is sprayed.'],
  ] as const)('keeps to %s by itself, the limit included', (limit, out, rule, detail) => {
    const window = { ...FREE, [limit]: 15 };
    expect(judgeClimate([p(50, 15, 15)], sprayed, window)).toEqual([]);
    expect(judgeClimate([out], sprayed, window)).toEqual([{ rule, detail }]);
    expect(judgeClimate([p(47, 15, 15), out], { ...sprayed, startedAt: 47 * H, endedAt: 49 * H }, window)).toEqual([]);
  });

  it.each([0, -10])('keeps to a limit of %d C as to any other', (limit) => {
    const window = { ...FREE, minC: limit, maxC: limit };
    const cold = { rule: 'too cold', detail: `${limit - 1} C is under ${limit} C.` };
    const warm = { rule: 'too warm', detail: `${limit + 1} C is over ${limit} C.` };
    expect(judgeClimate([p(49, limit - 1), p(50, limit), p(51, limit + 1)], brushed, window)).toEqual([cold, warm]);
  });

  it('may be dry where material is brushed', () => {
    expect(judgeClimate([p(50, 20, 5)], brushed, { ...FREE, minHumiditySprayingPercent: 40 })).toEqual([]);
  });

  it('is judged at each reading in the order of time, every fault of it named', () => {
    const log = [p(52, 23, 71), p(48, 17.5, 70), p(50, 22, 30)];
    expect(
      judgeClimate(log, sprayed, { ...SHOP_WINDOWS['recommended workshop'], minHumiditySprayingPercent: 40 }),
    ).toEqual([
      { rule: 'too cold', detail: '17.5 C is under 18 C.' },
      { rule: 'too dry to spray', detail: '30 % is under 40 % where material is sprayed.' },
      { rule: 'too warm', detail: '23 C is over 22 C.' },
      { rule: 'too humid', detail: '71 % is over 70 %.' },
    ]);
  });
});

describe('the warmth before the work', () => {
  const window = { ...FREE, minC: 18, hoursBefore: 24 };
  const late = (hours: string) => [
    { rule: 'warmed too late', detail: `18 C had been kept for ${hours} h before the work; 24 h are asked.` },
  ];

  it.each([
    ['24 h of it', [p(24, 18), p(49, 20)], []],
    ['more of it, told in any order', [p(49, 20), p(20, 19), p(30, 18), p(5, 10)], []],
    ['less of it', [p(25.5, 18), p(49, 20)], late('22.5')],
    ['a cold hour among it', [p(10, 20), p(40, 17), p(41, 20), p(49, 20)], late('7.0')],
    ['no log of it', [p(49, 20)], late('0.0')],
  ])('is asked for: %s', (_, log, faults) => {
    expect(judgeClimate(log, brushed, window)).toEqual(faults);
  });

  it('is not asked for where the window names no hours, or no temperature', () => {
    expect(judgeClimate([p(49, 20)], brushed, { ...window, hoursBefore: null })).toEqual([]);
    expect(judgeClimate([p(49, 20)], brushed, { ...window, minC: null })).toEqual([]);
  });
});

describe('the drift of the temperature', () => {
  const window = { ...FREE, driftC: 3 };
  const drift = (spread: string) => [
    { rule: 'drift', detail: `${spread} C between the coldest and warmest of 24 h; 6 C are allowed.` },
  ];

  it.each([
    ['as much as to either side', [p(30, 20), p(50, 26)], []],
    ['more, from a day before the work on', [p(24, 20), p(50, 26.5)], drift('6.5')],
    ['more, but before that day', [p(23.9, 10), p(50, 20)], []],
    ['more, up to the end', [p(48, 27), p(52, 20)], drift('7.0')],
    ['more, but after the end', [p(48, 27), p(52.1, 10)], []],
    ['nothing', [p(50, 20)], []],
  ])('may be so much within the day before and the work: %s', (_, log, faults) => {
    expect(judgeClimate(log, brushed, window)).toEqual(faults);
  });
});

describe('all of the class rule', () => {
  const rule = SHOP_WINDOWS['class rule'];

  it('names faults of the readings, of the warmth before and of the drift, in this order', () => {
    expect(judgeClimate([p(40, 17), p(47, 19), p(50, 24, 81), p(51, 24, 39)], sprayed, rule)).toEqual([
      { rule: 'too humid', detail: '81 % is over 80 %.' },
      { rule: 'too dry to spray', detail: '39 % is under 40 % where material is sprayed.' },
      { rule: 'warmed too late', detail: '18 C had been kept for 1.0 h before the work; 24 h are asked.' },
      { rule: 'drift', detail: '7.0 C between the coldest and warmest of 24 h; 6 C are allowed.' },
    ]);
  });

  it('finds the same in whatever order the readings come, and no less in a stricter window', () => {
    const readings = fc.uniqueArray(
      fc.tuple(fc.integer({ min: 0, max: 55 }), fc.integer({ min: 10, max: 30 }), fc.integer({ min: 20, max: 100 })),
      { maxLength: 12, selector: ([hour]) => hour },
    );
    fc.assert(
      fc.property(readings, fc.boolean(), (drawn, spray) => {
        const log = drawn.map(([hour, airC, humidity]) => p(hour, airC, humidity));
        const work = { ...brushed, sprayed: spray };
        const told = (points: readonly ClimatePoint[], window: ShopWindow): readonly string[] =>
          judgeClimate(points, work, window).map(({ rule: name, detail }) => `${name}: ${detail}`);
        expect([...told([...log].reverse(), rule)].sort()).toEqual([...told(log, rule)].sort());
        const stricter = { ...rule, minC: 20, maxHumidityPercent: 70, minHumiditySprayingPercent: 50, driftC: 2 };
        expect(told(log, stricter).length).toBeGreaterThanOrEqual(told(log, rule).length);
      }),
    );
  });
});
