import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HullView, LayerRecordView, PartView } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Answer, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('G', 'GEL-W');
  await shop.receive('R', 'RES-VE');
  await shop.receive('P', 'RES-PE');
  await shop.receive('C', 'MEKP');
  await shop.receive('M', 'MAT-450');
});
afterAll(() => service.close());

const part = (number: string): Promise<PartView> => shop.read(`/api/parts/${number}`);
const record = async (hull: string, code: string): Promise<LayerRecordView | null | undefined> =>
  (await part(`${hull}-H`)).layers.find(({ scheduled }) => scheduled.code === code)?.record;

/** Records a layer as it is given, and gives the answer. */
const make = (hull: string, layer: string, used: readonly Fields[], more: Fields = {}): Promise<Answer> => {
  const at = shop.tick();
  const times = { startedAt: at, endedAt: at, happenedAt: at };
  return shop.post(`/api/parts/${hull}-H/layers`, shop.envelope({ layer, ...times, doneBy: ['LAM-1'], used, ...more }));
};

const broken = (answer: Answer): string[] =>
  (answer.body.result['nonconformities'] as unknown as { rule: string }[]).map(({ rule }) => rule);

const use = (lot: string, amount = 1) => ({ lot, amount: kg(amount) });
const refusal = (status: number, code: string, pointer: string) => ({
  status,
  body: { type: `/problems/${code}`, errors: [{ pointer }] },
});

describe('a layer', () => {
  it('is recorded as it was made: crew, times, climate, and what was used with the suppliers behind it', async () => {
    await shop.startHull('A-1');
    await shop.mix('B-1', [use('G', 19.6), use('C', 0.4)]);
    const climate = { airTemperature: { value: 72, unit: 'F' }, relativeHumidity: { value: 55, unit: '%' } };
    const used = [{ lot: 'B-1', amount: { quantity: '39.50', unit: 'lb', basis: 'apportioned' } }];
    const answer = await make('A-1', 'L1', used, { climate, doneBy: ['LAM-2', 'LAM-1'], note: 'second pass thin' });
    expect(answer).toMatchObject({ status: 201, body: { result: { nonconformities: [] } } });
    expect(answer.body.result['kg']).toBeCloseTo(17.9169, 4);
    const made = await record('A-1', 'L1');
    expect(made).toMatchObject({ doneBy: ['LAM-1', 'LAM-2'], enteredBy: 'ADMIN', climate, note: 'second pass thin' });
    expect(made?.used[0]?.amount).toMatchObject({ quantity: '39.50', unit: 'lb', basis: 'apportioned' });
    const behind = made?.used[0]?.supplierLots ?? [];
    expect(behind.map(({ supplierLot }) => supplierLot)).toEqual(['S-G', 'S-C']);
    expect(behind[0]?.fraction).toBeCloseTo(0.98, 12);
  });

  it('begun before the one it waits for is kept, and so is one begun before its hold point was signed', async () => {
    await shop.startHull('A-2');
    expect(broken(await make('A-2', 'L2', [use('R')]))).toEqual(['layer-out-of-order']);
    await shop.startHull('A-3');
    const gel = await shop.layer('A-3', 'L1', [use('G')]);
    expect(broken(await make('A-3', 'L2', [use('R')]))).toEqual(['hold-point-passed']);
    await shop.sign(gel);
    await shop.startHull('A-4');
    const signed = await shop.layer('A-4', 'L1', [use('G')]);
    const before = shop.tick();
    await shop.sign(signed);
    const early = { startedAt: before, endedAt: before };
    expect(broken(await make('A-4', 'L2', [use('R')], early))).toEqual(['hold-point-passed']);
  });

  it('entered late but begun in order has broken nothing', async () => {
    await shop.startHull('A-5');
    const began = shop.tick();
    await shop.sign(await shop.layer('A-5', 'L1', [use('G')], { startedAt: began, endedAt: began }));
    expect(broken(await make('A-5', 'L2', [use('R')]))).toEqual([]);
  });

  it.each<[string, Fields, string[]]>([
    ['18 C, the lowest limit', { airTemperature: { value: 18, unit: 'C' } }, []],
    ['64.4 F, which is 18 C', { airTemperature: { value: 64.4, unit: 'F' } }, []],
    ['17.99 C', { airTemperature: { value: 17.99, unit: 'C' } }, ['climate-outside']],
    ['301.2 K', { airTemperature: { value: 301.2, unit: 'K' } }, ['climate-outside']],
    ['any humidity, which has no limit here', { relativeHumidity: { value: 99, unit: '%' } }, []],
  ])('made at %s is judged by the limits of its schedule', async (what, climate, rules) => {
    const hull = `CL-${what.replace(/\W.*/, '')}-${rules.length}`;
    await shop.startHull(hull);
    expect(broken(await make(hull, 'L1', [use('G')], { climate }))).toEqual(rules);
  });

  it('made of a material that its schedule does not name is kept; what is mixed in is not named by schedules', async () => {
    await shop.startHull('A-6');
    await shop.mix('B-6', [use('P', 5), use('C', 0.1)]);
    const answer = await make('A-6', 'L1', [use('G'), use('B-6')]);
    expect(broken(answer)).toEqual(['material-not-in-schedule']);
    expect(answer.body.result['nonconformities']).toMatchObject([{ detail: expect.stringContaining('lot P') }]);
    const id = (await record('A-6', 'L1'))?.id ?? '';
    const later = await shop.receipt(`/api/layers/${id}/used`, { used: [use('R')] });
    expect(later.result).toMatchObject({ kg: 1, nonconformities: [{ rule: 'material-not-in-schedule' }] });
  });

  it('made of an expired or held lot is kept as it was, blocks the release, and says so on the part', async () => {
    await shop.startHull('A-7');
    await shop.receive('G-OLD', 'GEL-W', { expiresOn: '2026-01-01' });
    await shop.receive('G-HELD', 'GEL-W', { state: 'quarantined' });
    const answer = await make('A-7', 'L1', [use('G-OLD'), use('G-HELD')]);
    expect(broken(answer)).toEqual(['expired-lot', 'lot-not-released']);
    const found = await part('A-7-H');
    expect(found.layers[0]?.record?.used.map(({ lot }) => lot).sort()).toEqual(['G-HELD', 'G-OLD']);
    expect(found.nonconformities.map(({ rule, disposition }) => [rule, disposition])).toEqual([
      ['expired-lot', null],
      ['lot-not-released', null],
    ]);
    const { release } = await shop.read<HullView>('/api/hulls/A-7');
    expect(release.inTheWay.filter(({ rule }) => rule === 'nonconformity-open')).toHaveLength(2);
  });

  it('made of a lot that was held only afterwards has broken nothing', async () => {
    await shop.startHull('A-8');
    await shop.receive('G-LATER', 'GEL-W');
    const at = shop.tick();
    await shop.setState('G-LATER', 'held');
    const times = { startedAt: at, endedAt: at, happenedAt: at };
    expect(broken(await make('A-8', 'L1', [use('G-LATER')], times))).toEqual([]);
  });

  it('is recorded once: again is refused, also when two record it at once', async () => {
    await shop.startHull('A-9');
    const both = await Promise.all([make('A-9', 'L1', [use('G')]), make('A-9', 'L1', [use('G')])]);
    expect(both.map(({ status }) => status).sort()).toEqual([201, 409]);
    expect(await make('A-9', 'L1', [use('G')])).toMatchObject(refusal(409, 'layer-recorded', '/layer'));
    expect((await record('A-9', 'L1'))?.used).toHaveLength(1);
  });

  let wrongs = 0;
  const future = new Date(Date.now() + 3_600_000).toISOString();
  it.each<[string, Fields, number, string, string]>([
    ['a layer its schedule has not', { layer: 'L9' }, 422, 'not-found', '/layer'],
    [
      'an end before its start',
      { startedAt: '2026-01-05T09:00:00Z', endedAt: '2026-01-05T08:00:00Z' },
      400,
      'invalid-request',
      '/endedAt',
    ],
    ['an end that is still to come', { endedAt: future }, 400, 'invalid-request', '/endedAt'],
    ['an unknown badge in its crew', { doneBy: ['LAM-1', 'X'] }, 403, 'unknown-badge', '/doneBy/1'],
    ['nobody who made it', { doneBy: [] }, 400, 'invalid-request', '/doneBy'],
    ['an unknown lot', { used: [use('G'), use('NIX')] }, 422, 'not-found', '/used/1/lot'],
    [
      'litres of glass',
      { used: [{ lot: 'M', amount: { quantity: 1, unit: 'L', basis: 'weighed' } }] },
      422,
      'unit-without-conversion',
      '/used/0/amount/unit',
    ],
    [
      'a humidity of 101 %',
      { climate: { relativeHumidity: { value: 101, unit: '%' } } },
      400,
      'invalid-request',
      '/climate/relativeHumidity/value',
    ],
  ])('with %s is refused, and nothing of it is kept', async (_what, wrong, status, code, pointer) => {
    const hull = `WRONG-${(wrongs += 1)}`;
    await shop.startHull(hull);
    expect(await make(hull, 'L1', [use('G')], wrong)).toMatchObject(refusal(status, code, pointer));
    expect(await record(hull, 'L1')).toBeNull();
  });

  it('of a part that is not there is not found', async () => {
    expect(await make('NIX', 'L1', [])).toMatchObject({ status: 404, body: { type: '/problems/not-found' } });
  });
});

describe('the signature of a hold point', () => {
  const sign = (layer: string, badge: string): Promise<Answer> =>
    shop.post(`/api/layers/${layer}/signatures`, shop.envelope({ enteredBy: badge }));

  it('is given by a person who did not make the layer; the database itself refuses one who did', async () => {
    await shop.startHull('S-1');
    const layer = await shop.layer('S-1', 'L1', [use('G')], { doneBy: ['LAM-1', 'INS-1'] });
    expect(await sign(layer, 'INS-1')).toMatchObject(refusal(409, 'signer-is-maker', '/enteredBy'));
    const row = `(id, root, plant_id, entry_id, happened_at, recorded_at, layer_record_id, makers, signed_by, turn)
      select gen_random_uuid(), gen_random_uuid(), plant_id, entry_id, happened_at, recorded_at, id, makers, makers[1], 1 from fact.layer_record where id = $1`;
    await expect(service.asOwner(`insert into fact.signature ${row}`, [layer])).rejects.toMatchObject({
      constraint: 'signature_by_another_person',
    });
    const others = row.replace('id, makers, makers[1]', 'id, array[gen_random_uuid()], makers[1]');
    await expect(service.asOwner(`insert into fact.signature ${others}`, [layer])).rejects.toMatchObject({
      constraint: 'signature_of_the_record_as_made',
    });
    const { status, body } = await sign(layer, 'QUA-1');
    expect([status, body.result]).toEqual([201, { holdPoint: 'HP 1', identity: 'proved' }]);
    expect((await record('S-1', 'L1'))?.signature).toMatchObject({ by: 'QUA-1', identity: 'proved' });
  });

  it('is given once: of two at once one is told that it is signed', async () => {
    await shop.startHull('S-2');
    const layer = await shop.layer('S-2', 'L1', [use('G')]);
    const both = await Promise.all([sign(layer, 'INS-1'), sign(layer, 'QUA-1')]);
    expect(both.map(({ status }) => status).sort()).toEqual([201, 409]);
    expect(both.find(({ status }) => status === 409)?.body).toMatchObject({ type: '/problems/signed-already' });
  });

  it('must be given again when the record it was given for is corrected, and may be withdrawn and given anew', async () => {
    await shop.startHull('S-3');
    const layer = await shop.layer('S-3', 'L1', [use('G')]);
    await shop.sign(layer);
    const corrected = await shop.correct(layer, { kind: 'layer record', doneBy: ['LAM-2'] });
    expect(await record('S-3', 'L1')).toMatchObject({ signature: null, corrected: true, doneBy: ['LAM-2'] });
    expect(await sign(layer, 'LAM-2')).toMatchObject(refusal(409, 'signer-is-maker', '/enteredBy'));
    const signature = await shop.sign(corrected);
    expect((await record('S-3', 'L1'))?.signature?.by).toBe('INS-1');
    await shop.correct(signature);
    expect((await record('S-3', 'L1'))?.signature).toBeNull();
    await shop.sign(layer, { enteredBy: 'QUA-1' });
    expect((await record('S-3', 'L1'))?.signature?.by).toBe('QUA-1');
  });

  it('has nothing to sign where a layer has no hold point, or is not there', async () => {
    await shop.startHull('S-4');
    const layer = await shop.layer('S-4', 'L2', [use('R')]);
    expect(await sign(layer, 'INS-1')).toMatchObject({ status: 422, body: { type: '/problems/no-hold-point' } });
    expect(await sign('not-an-id', 'INS-1')).toMatchObject({ status: 404, body: { type: '/problems/not-found' } });
  });
});
