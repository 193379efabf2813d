import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HullView, MoldDetail, MoldTreated, PartView, ReachPage } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { SCHEDULES } from '../support/shop-stock.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;

beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.act('/api/materials', { code: 'WAX', name: 'Mold wax', role: 'release' });
  await shop.receive('WAX-1', 'WAX', { amount: kg(20) });
  await shop.receive('VE', 'RES-VE');
});
afterAll(() => service.close());

const care = (what: string, more: Fields = {}): Promise<string> =>
  shop.act('/api/molds/M-86-D/care', { what, doneBy: ['LAM-1'], ...more });
const mold = (): Promise<MoldDetail> => shop.read('/api/molds/M-86-D');
const deck = async (number: string, more: Fields = {}): Promise<readonly string[]> => {
  const fields = { number, kind: 'deck', model: 'TS86', mold: 'M-86-D', ...more };
  return (await shop.receipt('/api/parts', fields)).result['warnings'] as unknown as string[];
};

describe('a mold', () => {
  it('keeps its care with the lots, which are in no part but in the balance', async () => {
    await care('waxed', { used: [{ lot: 'WAX-1', amount: kg(0.5) }], duePulls: 2 });
    expect((await mold()).care).toMatchObject([{ what: 'waxed', lots: ['WAX-1'], duePulls: 2 }]);
    expect(await shop.read('/api/lots/WAX-1')).toMatchObject({ usedKg: 0.5, leftKg: 19.5 });
    expect((await shop.read<ReachPage>('/api/lots/WAX-1/hulls')).items).toEqual([]);
  });

  it('warns of care that is due after so many pulls; it stops nobody', async () => {
    expect([await deck('MD-1'), await deck('MD-2')]).toEqual([[], []]);
    expect(await deck('MD-3')).toEqual(['Care of the mold is overdue: waxed was due after 2 pulls.']);
    expect((await mold()).overdue).toEqual(['waxed was due after 2 pulls']);
    await care('waxed', { duePulls: 5 });
    expect(await deck('MD-4')).toEqual([]);
  });

  it('tells which parts were molded on a surface treated with a lot, until it was treated alike again', async () => {
    const [treated] = await shop.read<MoldTreated[]>('/api/lots/WAX-1/molds');
    expect(treated).toMatchObject({ mold: 'M-86-D', what: 'waxed' });
    expect(treated?.parts.map(({ part }) => part)).toEqual(['MD-1', 'MD-2', 'MD-3']);
  });

  it('begins a new state when it is reworked, also when that is entered late', async () => {
    const before = shop.tick();
    await deck('MD-5');
    expect((await mold()).state).toBe(1);
    await care('reworked', { happenedAt: before, note: 'sanded back and sprayed anew' });
    expect(await mold()).toMatchObject({
      state: 2,
      pulls: 5,
      pullsOfState: 1,
      parts: [{ part: 'MD-5', state: 2 }, { part: 'MD-4', state: 1 }, {}, {}, {}],
    });
  });
});

describe('the order of layers', () => {
  const at = (started: string, more: Fields = {}): Fields => ({
    startedAt: started,
    endedAt: started,
    happenedAt: started,
    ...more,
  });
  const rules = async (hull: string): Promise<readonly string[]> =>
    (await shop.read<PartView>(`/api/parts/${hull}-H`)).nonconformities.map(({ rule }) => rule).sort();
  const inTheWay = async (hull: string): Promise<readonly string[]> =>
    (await shop.read<HullView>(`/api/hulls/${hull}`)).release.inTheWay.map(({ rule }) => rule);

  it('is judged by when they were made, not by when they were entered', async () => {
    await shop.startHull('M1');
    const [gel, signed, skin] = [shop.tick(), shop.tick(), shop.tick()];
    await shop.layer('M1', 'L2', [], at(skin));
    expect(await rules('M1')).toEqual(['layer-out-of-order']);
    const layer = await shop.layer('M1', 'L1', [], at(gel));
    expect(await rules('M1')).toEqual(['hold-point-passed']);
    await shop.sign(layer, { happenedAt: signed });
    expect(await rules('M1')).toEqual([]);
  });

  it('is found broken when a correction shows that the layer before was made later', async () => {
    await shop.startHull('M2');
    const layer = await shop.layer('M2', 'L1', []);
    await shop.sign(layer);
    await shop.layer('M2', 'L2', []);
    expect(await rules('M2')).toEqual([]);
    const later = shop.tick();
    await shop.correct(layer, { kind: 'layer record', startedAt: later, endedAt: later });
    expect(await rules('M2')).toEqual(['layer-out-of-order']);
  });

  it('holds a signature to what was in the layer when it was given: more must be signed again', async () => {
    await shop.startHull('M3');
    const layer = await shop.layer('M3', 'L1', []);
    await shop.sign(layer);
    expect(await inTheWay('M3')).not.toContain('hold-point-unsigned');
    expect((await shop.post(`/api/layers/${layer}/signatures`, shop.envelope({ enteredBy: 'INS-1' }))).status).toBe(
      409,
    );
    await shop.act(`/api/layers/${layer}/used`, { used: [{ lot: 'VE', amount: kg(1) }] });
    expect(await inTheWay('M3')).toContain('hold-point-unsigned');
    await shop.sign(layer);
    expect(await inTheWay('M3')).not.toContain('hold-point-unsigned');
    expect((await shop.read<PartView>('/api/parts/M3-H')).layers[0]?.record?.signature).toMatchObject({ by: 'INS-1' });
  });
});

describe('several parts in one entry', () => {
  it('share crew, times and bucket; what was used is spread over them to the last digit', async () => {
    for (const part of ['H-1', 'H-2', 'H-3']) await deck(part);
    const started = shop.tick();
    const { result } = await shop.receipt('/api/layers', {
      ...{ layer: 'D1', startedAt: started, endedAt: started, doneBy: ['LAM-1', 'LAM-2'] },
      parts: ['H-1', 'H-2', 'H-3'].map((part) => ({ part, weight: 1 })),
      used: [
        { lot: 'VE', amount: kg(10) },
        { unidentified: { role: 'glass', looks: 'mat end' }, amount: kg(3) },
      ],
    });
    expect(result).toMatchObject({ kg: 13, layers: [{ part: 'H-1' }, { part: 'H-2' }, { part: 'H-3' }] });
    const used = async (part: string): Promise<unknown> =>
      (await shop.read<PartView>(`/api/parts/${part}`)).layers[0]?.record?.used
        .map(({ amount }) => [amount.quantity, amount.basis])
        .sort();
    expect(await used('H-1')).toEqual([
      ['1', 'apportioned'],
      ['3.334', 'apportioned'],
    ]);
    expect(await used('H-3')).toEqual([
      ['1', 'apportioned'],
      ['3.333', 'apportioned'],
    ]);
  });

  it('with one that has the layer already, is kept for none of them, and the part named', async () => {
    await deck('H-4');
    const started = shop.tick();
    const body = { layer: 'D1', startedAt: started, endedAt: started, doneBy: ['LAM-1'] };
    const parts = ['H-4', 'H-1'].map((part) => ({ part, weight: 1 }));
    expect((await shop.post('/api/layers', shop.envelope({ ...body, parts }))).status).toBe(409);
    expect((await shop.read<PartView>('/api/parts/H-4')).layers[0]?.record).toBeNull();
    const twice = await shop.post('/api/layers', shop.envelope({ ...body, parts: [parts[0], parts[0]] }));
    expect([twice.status, JSON.stringify(twice.body)]).toEqual([400, expect.stringContaining('/parts/1/part')]);
  });
});

describe('a schedule', () => {
  it('for infusion is refused: it is out of scope, and the message says so', async () => {
    const { status, body } = await shop.post(
      '/api/models/TS86/schedules',
      shop.envelope({ ...SCHEDULES[1], version: 2, process: 'infusion' }),
    );
    expect([status, JSON.stringify(body)]).toEqual([400, expect.stringContaining('out of scope')]);
    await shop.act('/api/models/TS86/schedules', { ...SCHEDULES[1], version: 2, process: 'spray-up' });
  });
});

describe('a part that is moved to another version', () => {
  const part = (number: string): Promise<PartView> => shop.read(`/api/parts/${number}`);
  const move = (fields: Fields): Promise<{ readonly status: number; readonly body: unknown }> =>
    shop.post('/api/parts/MV-H/schedule', shop.envelope({ version: 2, reason: 'the core is changed', ...fields }));

  it('keeps what is made, judged by what held then, and follows the new version from the layer named', async () => {
    const layers = (SCHEDULES[0] as { layers: readonly Fields[] }).layers;
    const changed = [
      ...layers.slice(0, 2),
      { ...layers[2], materials: [{ material: 'WAX' }] },
      { code: 'L4', name: 'Core', materials: [{ material: 'PASTE' }] },
    ];
    await shop.act('/api/models/TS86/schedules', { partKind: 'hull molding', version: 2, layers: changed });
    await shop.startHull('MV', { scheduleVersion: 1 });
    await shop.layer('MV', 'L1', []);
    const made = await move({ fromLayer: 'L1' });
    expect([made.status, JSON.stringify(made.body)]).toEqual([409, expect.stringContaining('layer-made-already')]);
    const unknown = await move({ fromLayer: 'L4' });
    expect([unknown.status, JSON.stringify(unknown.body)]).toEqual([422, expect.stringContaining('/fromLayer')]);
    expect((await move({ fromLayer: 'L3', enteredBy: 'REC-1' })).status).toBe(403);
    expect((await move({ fromLayer: 'L3' })).status).toBe(201);
    expect((await part('MV-H')).layers.map(({ scheduled }) => scheduled.code)).toEqual(['L1', 'L2', 'L3', 'L4']);
    expect(await part('MV-H')).toMatchObject({
      scheduleVersion: 2,
      layers: [{ record: { doneBy: ['LAM-1'] } }, {}, {}, {}],
    });
    const missing = (await shop.read<HullView>('/api/hulls/MV')).release.inTheWay.filter(
      ({ rule }) => rule === 'layer-missing',
    );
    expect(missing.map(({ layer }) => layer)).toEqual(['L2', 'L3', 'L4']);
    await shop.layer('MV', 'L3', [{ lot: 'VE', amount: kg(3) }]);
    expect((await part('MV-H')).nonconformities.map(({ rule }) => rule)).toContain('material-not-in-schedule');
    expect((await move({ fromLayer: 'L4' })).status).toBe(422);
  });
});
