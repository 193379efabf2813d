import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HullView, PartView, ReadingView } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { PORT_SIDE, Shop, type Answer, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
});
afterAll(() => service.close());

let hulls = 0;

/** A gel coat on a new hull: wet film 16 to 20 mil. */
const gelCoat = async (): Promise<{ hull: string; layer: string }> => {
  const hull = `W-${(hulls += 1)}`;
  await shop.startHull(hull);
  return { hull, layer: await shop.layer(hull, 'L1', []) };
};

const read = (layer: string, spots: readonly Fields[], more: Fields = {}): Promise<Answer> =>
  shop.post(`/api/layers/${layer}/readings`, shop.envelope({ what: 'wet film', unit: 'mil', spots, ...more }));

const readingsOf = async (hull: string): Promise<readonly ReadingView[]> =>
  (await shop.read<PartView>(`/api/parts/${hull}-H`)).layers[0]?.record?.readings ?? [];

interface Judged {
  readonly id: string;
  readonly spot: number;
  readonly verdict: string;
  readonly side: string | null;
  readonly note: string | null;
}
const judged = (answer: Answer): readonly Judged[] => answer.body.result['spots'] as unknown as readonly Judged[];

describe('readings', () => {
  it('are judged spot by spot, not by their mean, and each keeps the limits and the rule it was judged by', async () => {
    const { hull, layer } = await gelCoat();
    const answer = await read(layer, [{ value: 14 }, { value: 18 }, { value: 22 }, { value: '16.0' }, { value: 20 }]);
    expect(answer).toMatchObject({ status: 201, body: { result: { inside: 3, outside: 2, warnings: [] } } });
    expect(judged(answer).map(({ spot, verdict, side }) => [spot, verdict, side])).toEqual([
      [1, 'outside', 'low'],
      [2, 'inside', null],
      [3, 'outside', 'high'],
      [4, 'inside', null],
      [5, 'inside', null],
    ]);
    for (const { rule } of await readingsOf(hull)) {
      expect(rule.limits).toEqual({ min: 16, max: 20, unit: 'mil' });
      expect(rule.text).toContain('Schedule TS86 version 1, layer Gel coat.');
      expect(rule.text).toContain('Source: invented for tests.');
    }
    expect((await readingsOf(hull))[3]).toMatchObject({ value: '16.0', unit: 'mil', by: 'ADMIN' });
    expect((await readingsOf(hull))[3]?.si).toBeCloseTo(16 * 2.54e-5, 12);
  });

  it('by a notch gauge are intervals: judged by the last wet notch, and said where they reach over a limit', async () => {
    const { hull, layer } = await gelCoat();
    const spots = [
      { lastWet: 16, nextDry: 18 },
      { lastWet: 20, nextDry: 22 },
      { lastWet: 14, nextDry: 18 },
      { lastWet: 12, nextDry: 14 },
    ];
    const answer = await read(layer, spots, { equipment: 'MG-1' });
    expect(judged(answer)).toMatchObject([
      { verdict: 'inside', note: null },
      { verdict: 'inside', note: expect.stringContaining('from 20 to under 22 mil') },
      { verdict: 'outside', side: 'low', note: expect.stringContaining('from 14 to under 18 mil') },
      { verdict: 'outside', side: 'low', note: null },
    ]);
    expect(
      (await readingsOf(hull)).map(({ value, below, crossesLimit, equipment }) => [
        value,
        below,
        crossesLimit,
        equipment,
      ]),
    ).toEqual([
      ['16', '18', false, 'MG-1'],
      ['20', '22', true, 'MG-1'],
      ['14', '18', true, 'MG-1'],
      ['12', '14', false, 'MG-1'],
    ]);
  });

  it('in another unit of length are held to the same limits without rounding', async () => {
    const { layer } = await gelCoat();
    const answer = await read(layer, [{ value: '406.4' }, { value: '406.39' }, { value: 508 }], { unit: 'um' });
    expect(judged(answer).map(({ verdict }) => verdict)).toEqual(['inside', 'outside', 'inside']);
  });

  it('off the steps of the example gauge are taken, and said', async () => {
    const { layer } = await gelCoat();
    const answer = await read(layer, [{ lastWet: 17, nextDry: 19 }]);
    expect(answer.body.result['warnings']).toEqual([expect.stringContaining('ASTM D4414')]);
  });

  it('that the schedule sets no limit for are kept without a verdict on them', async () => {
    const { hull, layer } = await gelCoat();
    const answer = await read(layer, [{ value: 38 }], { what: 'Barcol hardness', unit: 'Barcol' });
    expect(judged(answer)).toMatchObject([{ verdict: 'no limit' }]);
    expect((await readingsOf(hull))[0]?.rule.limits).toBeNull();
  });

  it.each<[string, Fields, string]>([
    ['a unit of another dimension', { unit: 'C' }, '/unit'],
    ['a unit nobody knows', { unit: 'mils' }, '/unit'],
    ['a kind nobody reads', { what: 'gloss' }, '/what'],
    ['no spot', { spots: [] }, '/spots'],
    ['more than 1000 spots', { spots: Array.from({ length: 1_001 }, () => ({ value: 1 })) }, '/spots'],
    ['a spot that is no number', { spots: [{ value: 18 }, { value: 'thick' }] }, '/spots/1/value'],
    ['both a value and an interval', { spots: [{ value: 18, lastWet: 16, nextDry: 18 }] }, '/spots/0/value'],
    ['half an interval', { spots: [{ lastWet: 16 }] }, '/spots/0/nextDry'],
    ['an interval upside down', { spots: [{ lastWet: 18, nextDry: 16 }] }, '/spots/0/nextDry'],
    [
      'a place off the part',
      { spots: [{ value: 18, place: { ...PORT_SIDE, girthMm: 9_999 } }] },
      '/spots/0/place/girthMm',
    ],
  ])('with %s are refused with the field', async (_what, wrong, pointer) => {
    const { hull, layer } = await gelCoat();
    expect(await read(layer, [{ value: 18 }], wrong)).toMatchObject({ status: 400, body: { errors: [{ pointer }] } });
    expect(await readingsOf(hull)).toEqual([]);
  });

  it('by a gauge nobody registered are refused', async () => {
    const { layer } = await gelCoat();
    const answer = await read(layer, [{ value: 18 }], { equipment: 'NIX' });
    expect(answer).toMatchObject({ status: 422, body: { errors: [{ pointer: '/equipment' }] } });
  });
});

describe('many readings', () => {
  it('of 500 spots are taken in one call, each with its verdict', async () => {
    const { hull, layer } = await gelCoat();
    const spots = Array.from({ length: 500 }, (_, i) => ({ value: 15 + (i % 7), place: PORT_SIDE }));
    const answer = await read(layer, spots);
    expect(answer.status).toBe(201);
    expect(judged(answer).map(({ spot }) => spot)).toEqual(spots.map((_, i) => i + 1));
    expect(answer.body.result['inside']).toBe(spots.filter(({ value }) => value >= 16 && value <= 20).length);
    expect((await readingsOf(hull)).map(({ value }) => Number(value))).toEqual(spots.map(({ value }) => value));
  });

  it('count on over several calls, each kind by itself', async () => {
    const { layer } = await gelCoat();
    const numbers = async (more: Fields = {}): Promise<number[]> =>
      judged(await read(layer, [{ value: 18 }, { value: 18 }], more)).map(({ spot }) => spot);
    expect(await numbers()).toEqual([1, 2]);
    expect(await numbers()).toEqual([3, 4]);
    expect(await numbers({ what: 'thickness' })).toEqual([1, 2]);
  });

  it('stands in the way of release until its spot is reworked and read again inside', async () => {
    const { hull, layer } = await gelCoat();
    const [low] = judged(
      await read(layer, [
        { lastWet: 14, nextDry: 16 },
        { lastWet: 18, nextDry: 20 },
      ]),
    );
    const outside = async (): Promise<number> => {
      const { release } = await shop.read<HullView>(`/api/hulls/${hull}`);
      return release.inTheWay.filter(({ rule }) => rule === 'reading-outside').length;
    };
    expect(await outside()).toBe(1);
    await shop.dispose('reading', String(low?.id), 'rework');
    expect(await outside()).toBe(1);
    const again = judged(await read(layer, [{ lastWet: 16, nextDry: 18, readsAgain: low?.id }]));
    expect(again).toMatchObject([{ spot: 1, verdict: 'inside' }]);
    expect(await outside()).toBe(0);
  });

  it('that is read again must be one of that kind in that layer', async () => {
    const { layer } = await gelCoat();
    const other = judged(await read((await gelCoat()).layer, [{ value: 18 }]))[0];
    const answer = await read(layer, [{ value: 18, readsAgain: other?.id }]);
    expect(answer).toMatchObject({ status: 400, body: { errors: [{ pointer: '/spots/0/readsAgain' }] } });
  });

  it('never share a number, also when eight calls come at once', async () => {
    const { hull, layer } = await gelCoat();
    const calls = Array.from({ length: 8 }, () => read(layer, [{ value: 18 }, { value: 19 }, { value: 20 }]));
    expect((await Promise.all(calls)).map(({ status }) => status)).toEqual(Array(8).fill(201));
    expect((await readingsOf(hull)).map(({ spot }) => spot)).toEqual(Array.from({ length: 24 }, (_, i) => i + 1));
  });
});

describe('a reading that is corrected', () => {
  const correct = (corrects: string, set: Fields): Promise<Answer> =>
    shop.post('/api/corrections', shop.envelope({ corrects, reason: 'misread', set: { kind: 'reading', ...set } }));

  it('is judged anew by the rule that it was judged by, and keeps its number', async () => {
    const { hull, layer } = await gelCoat();
    const [first] = judged(await read(layer, [{ lastWet: 14, nextDry: 16 }]));
    expect((await correct(String(first?.id), { lastWet: 18, nextDry: 20 })).status).toBe(201);
    const [reading] = await readingsOf(hull);
    expect(reading).toMatchObject({ spot: 1, value: '18', below: '20', verdict: 'inside', crossesLimit: false });
    expect(reading?.rule.limits).toEqual({ min: 16, max: 20, unit: 'mil' });
  });

  it('keeps its rule also when the layer turns out to be another one', async () => {
    const { hull, layer } = await gelCoat();
    const [first] = judged(await read(layer, [{ value: 18 }]));
    await shop.correct(layer, { kind: 'layer record', layer: 'L2' });
    await correct(String(first?.id), { value: 14 });
    const found = await shop.read<PartView>(`/api/parts/${hull}-H`);
    expect(found.layers[1]?.record?.readings).toMatchObject([{ value: '14', verdict: 'outside' }]);
  });

  it.each<[Fields, string]>([
    [{ value: 18, lastWet: 16 }, '/set/value'],
    [{ lastWet: 20, nextDry: 18 }, '/set/nextDry'],
    [{ place: { ...PORT_SIDE, fromTransomMm: 8_601 } }, '/set/place/fromTransomMm'],
  ])('with %j is refused with the field', async (set, pointer) => {
    const { layer } = await gelCoat();
    const [first] = judged(await read(layer, [{ lastWet: 16, nextDry: 18 }]));
    expect(await correct(String(first?.id), set)).toMatchObject({ status: 400, body: { errors: [{ pointer }] } });
  });
});
