import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { LotView, PartView, ReachPage, UsedView, VersionsView } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Answer, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  for (const code of ['R-1', 'R-2']) await shop.receive(code, 'RES-VE');
  for (const hull of ['A', 'B']) await shop.startHull(hull);
});
afterAll(() => service.close());

const part = (number: string): Promise<PartView> => shop.read(`/api/parts/${number}`);
const correct = (corrects: string, set?: Fields): Promise<Answer> =>
  shop.post('/api/corrections', shop.envelope({ corrects, reason: 'misread', ...(set ? { set } : {}) }));

/** Kilograms of a lot in each hull; parts in no hull stand under an empty number. */
const reach = async (lot: string): Promise<Record<string, number | null>> => {
  const { items } = await shop.read<ReachPage>(`/api/lots/${lot}/hulls`);
  return Object.fromEntries(items.map((item) => [item.hull ?? '', item.kg]));
};

const usedOn = async (number: string): Promise<readonly UsedView[]> =>
  (await part(number)).layers.flatMap(({ record }) => record?.used ?? []);

let hulls = 0;

/** A layer of a new hull with one use of a lot of its own. */
const layerWith = async (amount = 10): Promise<{ hull: string; lot: string; layer: string; use: string }> => {
  const hull = `U-${(hulls += 1)}`;
  const lot = `LOT-${hull}`;
  await shop.receive(lot, 'RES-VE');
  await shop.startHull(hull);
  const layer = await shop.layer(hull, 'L2', [{ lot, amount: kg(amount) }]);
  const [use] = await usedOn(`${hull}-H`);
  return { hull, lot, layer, use: String(use?.id) };
};

const rulesOf = async (hull: string): Promise<string[]> =>
  (await part(`${hull}-H`)).nonconformities.map(({ rule }) => rule).filter((rule) => rule !== 'layer-out-of-order');

describe('what was used', () => {
  it('in another amount: what is in the hull follows, and both versions are shown', async () => {
    const { hull, lot, use } = await layerWith(10);
    expect(await reach(lot)).toEqual({ [hull]: 10 });
    const answer = await correct(use, { kind: 'used', amount: { quantity: '20.0', unit: 'lb', basis: 'apportioned' } });
    expect(answer).toMatchObject({ status: 201, body: { result: { recomposedLots: 0, recomputedPlaces: 1 } } });
    expect((await reach(lot))[hull]).toBeCloseTo(9.0718474, 9);
    const [now] = await usedOn(`${hull}-H`);
    expect(now).toMatchObject({ corrected: true, amount: { quantity: '20.0', unit: 'lb', basis: 'apportioned' } });
    const { kind, versions } = await shop.read<VersionsView>(`/api/facts/${use}/versions`);
    expect([kind, versions.map(({ values }) => values['kg'])]).toEqual(['used', [10, now?.amount.kg]]);
    expect(versions).toMatchObject([
      { id: use, by: 'ADMIN', correctedBecause: 'misread', correctedBy: 'ADMIN', correctedAt: expect.any(String) },
      { id: answer.body.result['replacement'], correctedBecause: null, correctedBy: null, correctedAt: null },
    ]);
    expect(await shop.read(`/api/facts/${String(now?.id)}/versions`)).toEqual({ kind, versions });
  });

  it('of another lot: the one has left the hull, the other has come into it', async () => {
    const { hull, lot, use } = await layerWith();
    await shop.receive('R-OTHER', 'RES-VE');
    await shop.correct(use, { kind: 'used', lot: 'R-OTHER' });
    expect([await reach(lot), await reach('R-OTHER')]).toEqual([{}, { [hull]: 10 }]);
  });

  it('of a lot that was expired, held then, or foreign to the layer: a nonconformity is opened, once', async () => {
    await shop.receive('P-OLD', 'RES-PE', { expiresOn: '2026-01-01', state: 'quarantined' });
    const { hull, use } = await layerWith();
    const second = await shop.correct(use, { kind: 'used', lot: 'P-OLD' });
    expect((await rulesOf(hull)).sort()).toEqual(['expired-lot', 'lot-not-released', 'material-not-in-schedule']);
    await shop.correct(second, { kind: 'used', amount: kg(11) });
    expect(await rulesOf(hull)).toHaveLength(3);
  });

  it('in another layer: it is gone from the one and in the other, by the id of any version of it', async () => {
    const { hull, lot, use } = await layerWith();
    const other = await shop.layer('A', 'L3', []);
    const version = await shop.correct(other, { kind: 'layer record', note: 'second shift' });
    const moved = await shop.correct(use, { kind: 'used', into: version });
    expect(await reach(lot)).toEqual({ A: 10 });
    expect(await usedOn(`${hull}-H`)).toEqual([]);
    const answer = await correct(moved, { kind: 'used', into: use });
    expect(answer).toMatchObject({ status: 422, body: { errors: [{ pointer: '/set/into' }] } });
  });

  it('at another time: what was drawn from a tank is of the lot that was in it then', async () => {
    await shop.fill('T1-1', null, [{ lot: 'R-1', amount: kg(100) }]);
    const early = shop.tick();
    await shop.fill('T1-2', null, [{ lot: 'R-2', amount: kg(100) }]);
    await shop.startHull('TANK');
    await shop.layer('TANK', 'L2', [{ tank: 'T1', amount: kg(8) }]);
    const inHull = async (): Promise<unknown[]> => [(await reach('R-1'))['TANK'], (await reach('R-2'))['TANK']];
    expect(await inHull()).toEqual([undefined, 8]);
    const [use] = await usedOn('TANK-H');
    await shop.correct(String(use?.id), { kind: 'used', happenedAt: early });
    expect(await inHull()).toEqual([8, undefined]);
    expect(await usedOn('TANK-H')).toMatchObject([{ lot: 'T1-1', tank: 'T1', corrected: true }]);
  });

  it('by mistake is withdrawn, and nothing of it is in the hull', async () => {
    const { lot, use } = await layerWith();
    await shop.correct(use);
    expect(await reach(lot)).toEqual({});
    expect((await shop.read<LotView>(`/api/lots/${lot}`)).usedKg).toBe(0);
  });
});

describe('a lot input', () => {
  it('of another lot: every hull behind the bucket, the tank and the kit follows', async () => {
    await shop.receive('GOOD', 'RES-VE');
    await shop.receive('BAD', 'RES-VE');
    await shop.mix('MIX', [{ lot: 'GOOD', amount: kg(50) }]);
    await shop.act('/api/tanks', { code: 'T9', material: 'RES-VE', capacityKg: 900 });
    const inputs = ['MIX', 'R-1'].map((lot) => ({ lot, amount: kg(25) }));
    await shop.act('/api/tanks/T9/fills', { code: 'T9-1', heel: null, inputs });
    await shop.startHull('BEHIND');
    await shop.layer('BEHIND', 'L2', [{ tank: 'T9', amount: kg(20) }]);
    expect([await reach('GOOD'), await reach('BAD')]).toEqual([{ BEHIND: 10 }, {}]);
    const [input] = (await shop.read<LotView>('/api/lots/MIX')).inputs;
    const { body } = await correct(String(input?.id), { kind: 'lot input', input: 'BAD' });
    expect(body.result).toMatchObject({ recomposedLots: 1, recomputedPlaces: 1 });
    expect([await reach('GOOD'), await reach('BAD')]).toEqual([{}, { BEHIND: 10 }]);
  });
});

describe('a layer', () => {
  it('made on another part: lots, readings and nonconformities go there, and each part has its own layer', async () => {
    const { hull, lot, layer } = await layerWith();
    await shop.act(`/api/layers/${layer}/readings`, { what: 'thickness', unit: 'mm', spots: [{ value: 3 }] });
    await shop.correct(layer, { kind: 'layer record', part: 'B-H' });
    expect(await reach(lot)).toEqual({ B: 10 });
    const moved = await part('B-H');
    expect(moved.layers[1]?.record).toMatchObject({ corrected: true, readings: [{ value: '3' }], used: [{ lot }] });
    expect(moved.nonconformities).toMatchObject([{ rule: 'layer-out-of-order' }]);
    expect(await part(`${hull}-H`)).toMatchObject({ nonconformities: [], layers: [{}, { record: null }, {}] });
    const at = shop.tick();
    const body = { layer: 'L2', startedAt: at, endedAt: at, doneBy: ['LAM-1'], used: [] };
    const onB = await shop.post('/api/parts/B-H/layers', shop.envelope(body));
    expect(onB).toMatchObject({ status: 409, body: { type: '/problems/layer-recorded' } });
    await shop.act(`/api/parts/${hull}-H/layers`, body);
    const back = await correct(String(moved.layers[1]?.record?.id), { kind: 'layer record', part: `${hull}-H` });
    expect(back).toMatchObject({
      status: 409,
      body: { type: '/problems/layer-recorded', errors: [{ pointer: '/set' }] },
    });
  });

  it('made in another climate than was entered: what that broke is opened', async () => {
    await shop.startHull('COLD');
    const warm = { airTemperature: { value: 20, unit: 'C' } };
    const layer = await shop.layer('COLD', 'L1', [], { climate: warm });
    expect(await rulesOf('COLD')).toEqual([]);
    await shop.correct(layer, { kind: 'layer record', climate: { airTemperature: { value: 12, unit: 'C' } } });
    expect(await rulesOf('COLD')).toEqual(['climate-outside']);
  });

  it('never made: it is withdrawn with what it used, its readings and its signature, and is recorded as it was', async () => {
    await shop.receive('R-NEVER', 'RES-VE');
    await shop.startHull('NEVER');
    const layer = await shop.layer('NEVER', 'L1', [{ lot: 'R-NEVER', amount: kg(5) }]);
    await shop.film(layer, [[16, 18]]);
    await shop.sign(layer);
    await shop.correct(layer);
    expect(await reach('R-NEVER')).toEqual({});
    expect((await part('NEVER-H')).layers[0]?.record).toBeNull();
    const standing = await service.asOwner(
      `select x.id from (select id, into_id as of from fact.used union all select id, of_id from fact.reading
         union all select id, layer_record_id from fact.signature) x
       where x.of = $1 and not exists (select from fact.correction c where c.corrects = x.id)`,
      [layer],
    );
    expect(standing).toEqual([]);
    const again = await shop.layer('NEVER', 'L1', [{ lot: 'R-NEVER', amount: kg(4) }]);
    expect((await part('NEVER-H')).layers[0]?.record?.id).toBe(again);
    expect(await reach('R-NEVER')).toEqual({ NEVER: 4 });
  });
});

describe('a correction', () => {
  it('is made of the version that stands: of two at once one is told, and so is a late one', async () => {
    const { hull, lot, use } = await layerWith();
    const both = await Promise.all([5, 6].map((amount) => correct(use, { kind: 'used', amount: kg(amount) })));
    expect(both.map(({ status }) => status).sort()).toEqual([201, 409]);
    for (const refused of [both.find(({ status }) => status === 409), await correct(use)])
      expect(refused?.body).toMatchObject({
        type: '/problems/corrected-meanwhile',
        errors: [{ pointer: '/corrects' }],
      });
    const kept = both.findIndex(({ status }) => status === 201);
    expect(await reach(lot)).toEqual({ [hull]: [5, 6][kept] });
  });

  it('does not withdraw a lot that was used or went into another, and says what to do first', async () => {
    const { lot, use } = await layerWith();
    const { id } = await shop.read<LotView>(`/api/lots/${lot}`);
    const refusal = { status: 409, body: { type: '/problems/lot-is-used', errors: [{ pointer: '/corrects' }] } };
    expect(await correct(id)).toMatchObject(refusal);
    await shop.correct(use);
    const bucket = await shop.mix(`MIX-${lot}`, [{ lot, amount: kg(1) }]);
    expect(await correct(id)).toMatchObject(refusal);
    await shop.correct(bucket);
    await shop.correct(id);
    expect((await shop.get(`/api/lots/${lot}`)).status).toBe(404);
  });

  const future = new Date(Date.now() + 3_600_000).toISOString();
  it.each<[string, Fields, number, string, string]>([
    [
      'the values of another kind of fact',
      { set: { kind: 'reading', value: 3 } },
      422,
      'kind-of-another-fact',
      '/set/kind',
    ],
    ['a time still to come', { set: { kind: 'used', happenedAt: future } }, 400, 'invalid-request', '/set/happenedAt'],
    [
      'an amount in no unit of it',
      { set: { kind: 'used', amount: { quantity: 1, unit: 'm2', basis: 'weighed' } } },
      422,
      'unit-without-conversion',
      '/set/amount/unit',
    ],
    ['a lot nobody knows', { set: { kind: 'used', lot: 'NIX' } }, 422, 'not-found', '/set/lot'],
    ['a fact nobody recorded', { corrects: '00000000-0000-4000-8000-000000000000' }, 422, 'not-found', '/corrects'],
    ['no reason', { reason: ' ' }, 400, 'invalid-request', '/reason'],
  ])('with %s is refused with the field, and the fact stands', async (_what, wrong, status, code, pointer) => {
    const { hull, lot, use } = await layerWith();
    const body = { corrects: use, reason: 'misread', ...wrong };
    const answer = await shop.post('/api/corrections', shop.envelope(body));
    expect(answer).toMatchObject({ status, body: { type: `/problems/${code}`, errors: [{ pointer }] } });
    expect(await reach(lot)).toEqual({ [hull]: 10 });
  });

  it('of a fact that can only be withdrawn says so', async () => {
    await shop.receive('R-STATE', 'RES-VE');
    const state = await shop.setState('R-STATE', 'held');
    const answer = await correct(state, { kind: 'lot', supplier: 'X' });
    expect(answer).toMatchObject({ status: 422, body: { detail: expect.stringContaining('withdraw it') } });
    expect((await shop.get('/api/facts/nothing/versions')).status).toBe(404);
  });
});
