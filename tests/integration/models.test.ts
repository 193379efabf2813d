import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HullView, ModelView, PartView } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { SKINS } from '../support/shop-stock.js';
import { Shop, type Answer, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
});
afterAll(() => service.close());

const models = (): Promise<ModelView[]> => shop.read('/api/models');
const hullMolding = SKINS['hull molding'];
const station = (xMm: number, edgeGirthMm: number, more: Fields = {}): Fields => ({ xMm, edgeGirthMm, ...more });

describe('a model', () => {
  it('is registered with the skins of its parts, as they were given', async () => {
    await shop.act('/api/models', { code: 'TS60', name: 'TS 60', skins: SKINS });
    const found = (await models()).find(({ code }) => code === 'TS60');
    expect(found).toMatchObject({ name: 'TS 60', skins: SKINS, schedules: [] });
  });

  it.each<[string, Fields, string]>([
    ['no skin of the hull molding', { deck: SKINS.deck }, '/skins/hull molding'],
    ['a part nobody molds', { 'hull molding': hullMolding, wheel: SKINS.deck }, '/skins'],
    [
      'stations that do not reach the length',
      { 'hull molding': { ...hullMolding, lengthMm: 9_000 } },
      '/skins/hull molding/stations/2/xMm',
    ],
    [
      'stations that go back',
      {
        'hull molding': {
          lengthMm: 900,
          stations: [station(0, 10), station(700, 10), station(600, 10), station(900, 10)],
        },
      },
      '/skins/hull molding/stations/2/xMm',
    ],
    [
      'a chine beyond the edge',
      { 'hull molding': { lengthMm: 900, stations: [station(0, 10, { chineGirthMm: 11 }), station(900, 10)] } },
      '/skins/hull molding/stations/0/chineGirthMm',
    ],
    [
      'a transom without a width',
      { 'hull molding': { ...hullMolding, transom: { halfWidthMm: 0, heightMm: 900 } } },
      '/skins/hull molding/transom/halfWidthMm',
    ],
    [
      'a wrong skin of its deck',
      { 'hull molding': hullMolding, deck: { lengthMm: 900, stations: [station(1, 10), station(900, 10)] } },
      '/skins/deck/stations/0/xMm',
    ],
  ])('with %s is refused with the field', async (_what, skins, pointer) => {
    const answer = await shop.post('/api/models', shop.envelope({ code: 'BAD', name: 'Bad', skins }));
    expect(answer).toMatchObject({ status: 400, body: { type: '/problems/invalid-request', errors: [{ pointer }] } });
    expect((await models()).map(({ code }) => code)).not.toContain('BAD');
  });

  it('has its code alone', async () => {
    const answer = await shop.post('/api/models', shop.envelope({ code: 'TS86', name: 'Twice', skins: SKINS }));
    expect(answer).toMatchObject({
      status: 409,
      body: { type: '/problems/code-taken', errors: [{ pointer: '/code' }] },
    });
  });
});

const layer = (code: string, more: Fields = {}): Fields => ({
  code,
  name: `Layer ${code}`,
  materials: [{ material: 'RES-VE' }],
  ...more,
});

const publish = (version: number, layers: readonly Fields[], model = 'TS86'): Promise<Answer> =>
  shop.post(`/api/models/${model}/schedules`, shop.envelope({ partKind: 'hatch', version, layers }));

describe('a laminate schedule', () => {
  it('never changes once it is published: the same version is refused, and the next stands beside it', async () => {
    const first = [layer('A'), layer('B', { predecessors: ['A'], holdPoint: 'HP' })];
    expect(await publish(1, first)).toMatchObject({ status: 201, body: { result: { version: 1, layers: 2 } } });
    const again = await publish(1, [layer('C')]);
    expect(again).toMatchObject({ status: 409, body: { type: '/problems/version-published' } });
    expect(again.body).toMatchObject({ errors: [{ pointer: '/version' }] });
    expect((await publish(2, [layer('C')])).status).toBe(201);
    const found = (await models()).find(({ code }) => code === 'TS86')?.schedules ?? [];
    const codes = found
      .filter(({ partKind }) => partKind === 'hatch')
      .map(({ version, layers }) => [version, layers.map(({ code }) => code)]);
    expect(codes).toEqual([
      [1, ['A', 'B']],
      [2, ['C']],
    ]);
  });

  it('is published once when two publish the same version at once', async () => {
    const both = await Promise.all([publish(9, [layer('A')]), publish(9, [layer('B')])]);
    expect(both.map(({ status }) => status).sort()).toEqual([201, 409]);
  });

  it.each<[string, readonly Fields[], string]>([
    [
      'waits for a layer that comes after it',
      [layer('A', { predecessors: ['B'] }), layer('B')],
      '/layers/0/predecessors/0',
    ],
    ['waits for itself', [layer('A'), layer('B', { predecessors: ['A', 'B'] })], '/layers/1/predecessors/1'],
    ['waits for a layer that is not there', [layer('A', { predecessors: ['Z'] })], '/layers/0/predecessors/0'],
    [
      'names a material nobody registered',
      [layer('A', { materials: [{ material: 'NIX' }] })],
      '/layers/0/materials/0/material',
    ],
    ['names no material', [layer('A', { materials: [] })], '/layers/0/materials'],
    [
      'has a limit upside down',
      [layer('A', { readings: [{ what: 'thickness', spots: 1, limits: { min: 3, max: 2, unit: 'mm' } }] })],
      '/layers/0/readings/0/limits/max',
    ],
    [
      'has a limit that limits nothing',
      [layer('A', { readings: [{ what: 'thickness', spots: 1, limits: { unit: 'mm' } }] })],
      '/layers/0/readings/0/limits/min',
    ],
  ])('with a layer that %s is refused with the field', async (_what, layers, pointer) => {
    const answer = await publish(20, layers);
    expect(answer).toMatchObject({ status: 400, body: { errors: [{ pointer }] } });
  });

  it('has no two layers of one code', async () => {
    const answer = await publish(20, [layer('A'), layer('A')]);
    expect(answer).toMatchObject({
      status: 422,
      body: { type: '/problems/layer-code-twice', errors: [{ pointer: '/layers/1/code' }] },
    });
    expect((await publish(20, [layer('A')])).status).toBe(201);
  });

  it('of a model nobody registered is not found', async () => {
    expect(await publish(1, [layer('A')], 'NIX')).toMatchObject({ status: 404, body: { type: '/problems/not-found' } });
  });
});

describe('a part', () => {
  it('follows the schedule that was the newest when it was started, also when another is published later', async () => {
    await shop.startHull('V-1');
    const schedule = { partKind: 'hull molding', version: 2, layers: [layer('N1'), layer('N2')] };
    await shop.act('/api/models/TS86/schedules', schedule);
    await shop.startHull('V-2');
    await shop.startHull('V-3', { scheduleVersion: 1 });
    const codes = async (part: string): Promise<string[]> =>
      (await shop.read<PartView>(`/api/parts/${part}`)).layers.map(({ scheduled }) => scheduled.code);
    expect(await codes('V-1-H')).toEqual(['L1', 'L2', 'L3']);
    expect(await codes('V-2-H')).toEqual(['N1', 'N2']);
    expect(await codes('V-3-H')).toEqual(['L1', 'L2', 'L3']);
    const { parts } = await shop.read<HullView>('/api/hulls/V-2');
    expect(parts).toMatchObject([{ number: 'V-2-H', scheduleVersion: 2, layersMade: 0, layersScheduled: 2 }]);
  });
});
