import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { DaySheet } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('GEL', 'GEL-W');
  await shop.receive('RES', 'RES-VE');
  await shop.receive('MAT', 'MAT-450');
});
afterAll(() => service.close());

const sheet = (): Promise<DaySheet> => shop.read<DaySheet>('/api/day-sheet');
const partOf = async (number: string) => (await sheet()).parts.find((part) => part.number === number);

describe('the day sheet of a station', () => {
  it('has a part from its start, with what its schedule asks for', async () => {
    await shop.startHull('DS-1');
    const part = await partOf('DS-1-H');
    expect(part).toMatchObject({ hull: 'DS-1', kind: 'hull molding', model: 'TS86' });
    expect(part?.layers.map(({ scheduled, record }) => [scheduled.code, record])).toEqual([
      ['L1', null],
      ['L2', null],
      ['L3', null],
    ]);
  });

  it('has the layer as made, with its window, readings and signature', async () => {
    const layer = await shop.layer('DS-1', 'L1', [{ lot: 'GEL', amount: kg(9) }]);
    await shop.act(`/api/layers/${layer}/readings`, {
      what: 'wet film',
      unit: 'mil',
      equipment: 'MG-1',
      spots: [{ lastWet: '18', nextDry: '20' }],
    });
    await shop.sign(layer);
    const made = (await partOf('DS-1-H'))?.layers[0]?.record;
    expect(made).toMatchObject({ id: layer, doneBy: ['LAM-1'], signature: { by: 'INS-1' } });
    expect(made?.readings).toMatchObject([
      { what: 'wet film', spot: 1, value: expect.stringMatching(/^18/), verdict: 'inside' },
    ]);
  });

  it('leaves out a part that was scrapped', async () => {
    await shop.startHull('DS-2');
    expect(await partOf('DS-2-H')).toBeDefined();
    await shop.act('/api/parts/DS-2-H/scrapping', { reason: 'dropped' });
    expect(await partOf('DS-2-H')).toBeUndefined();
  });

  it('has the lots of which some is left, held ones too and why, and not those used up', async () => {
    await shop.receive('GONE', 'RES-VE', { amount: kg(5) });
    await shop.act('/api/lots/RES/holds', { kind: 'quality', reason: 'viscosity' });
    await shop.act('/api/lots/GONE/losses', { what: 'scrapped', amount: kg(5), reason: 'gelled' });
    const { lots } = await sheet();
    expect(lots.find(({ code }) => code === 'RES')).toMatchObject({
      materials: ['RES-VE'],
      holds: ['quality: viscosity'],
    });
    expect(lots.find(({ code }) => code === 'GEL')).toMatchObject({
      materials: ['GEL-W'],
      holds: [],
      state: 'released',
    });
    expect(lots.map(({ code }) => code)).not.toContain('GONE');
  });

  it('has people with their roles, gauges, and guns with what feeds them', async () => {
    await shop.act('/api/equipment', { code: 'GUN-9', kind: 'gun', description: 'Resin gun' });
    await shop.act('/api/guns/GUN-9/hook-ups', { feed: 'resin', lot: 'RES' });
    const { people, gauges, guns } = await sheet();
    expect(people.find(({ badge }) => badge === 'INS-1')?.roles).toContain('inspector');
    expect(gauges).toContainEqual({ code: 'MG-1', description: 'Mil gauge' });
    expect(guns).toContainEqual({
      code: 'GUN-9',
      description: 'Resin gun',
      feeds: [{ feed: 'resin', lot: 'RES', materials: ['RES-VE'] }],
    });
  });
});

describe('a layer of several parts that names a lot which is not there', () => {
  it('is told which field to mend, where it stands in the request', async () => {
    await shop.startHull('DS-3');
    const at = shop.tick();
    const sent = await shop.post(
      '/api/layers',
      shop.envelope({
        ...{ layer: 'L1', startedAt: at, endedAt: at, happenedAt: at, doneBy: ['LAM-1'] },
        ...{ parts: [{ part: 'DS-3-H', weight: 1 }], used: [{ lot: 'G-TYPO', amount: kg(9) }] },
      }),
    );
    expect(sent).toMatchObject({ status: 422, body: { errors: [{ pointer: '/used/0/lot' }] } });
  });
});
