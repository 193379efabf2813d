import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HullView, PartView, ReachPage } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { SKINS } from '../support/shop-stock.js';
import { kg, Shop, type Answer, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('P-1', 'PASTE', { amount: { quantity: 9, unit: 'pc', basis: 'weighed' } });
  await shop.receive('R-1', 'RES-VE');
  for (const hull of ['J-1', 'J-2']) await shop.startHull(hull);
});
afterAll(() => service.close());

const hull = (number: string): Promise<HullView> => shop.read(`/api/hulls/${number}`);
const join = (number: string, part: string, more: Fields = {}): Promise<Answer> =>
  shop.post(`/api/hulls/${number}/joints`, shop.envelope({ part, doneBy: ['LAM-1'], ...more }));
const start = (number: string, more: Fields = {}): Promise<Answer> =>
  shop.post('/api/parts', shop.envelope({ number, kind: 'deck', model: 'TS86', mold: 'M-86-D', ...more }));
const life = (number: string, what: string, more: Fields = {}): Promise<Answer> =>
  shop.post(`/api/hulls/${number}/life`, shop.envelope({ what, ...more }));
const refusal = (status: number, code: string, pointer: string) => ({
  status,
  body: { type: `/problems/${code}`, errors: [{ pointer }] },
});

/** Kilograms of a lot in each hull; parts in no hull stand under an empty number. */
const reach = async (lot: string): Promise<Record<string, number | null>> => {
  const { items } = await shop.read<ReachPage>(`/api/lots/${lot}/hulls`);
  return Object.fromEntries(items.map((item) => [item.hull ?? '', item.kg]));
};

describe('a part', () => {
  it('belongs to no hull until it is joined to one', async () => {
    expect((await start('D-1')).body.result).toMatchObject({ number: 'D-1', scheduleVersion: 1, warnings: [] });
    expect((await shop.read<PartView>('/api/parts/D-1')).hull).toBeNull();
    await shop.layer('', 'D1', [{ lot: 'R-1', amount: kg(7) }], { part: 'D-1' });
    expect(await reach('R-1')).toEqual({ '': 7 });
    const paste = { quantity: 0.5, unit: 'pc', basis: 'apportioned' };
    const { status, body } = await join('J-1', 'D-1', { used: [{ lot: 'P-1', amount: paste }] });
    expect([status, body.result]).toEqual([201, { kg: 6, nonconformities: [], warnings: [] }]);
    expect((await shop.read<PartView>('/api/parts/D-1')).hull).toBe('J-1');
    expect([await reach('R-1'), await reach('P-1')]).toEqual([{ 'J-1': 7 }, { 'J-1': 6 }]);
  });

  it.each<[Fields, number, string, string]>([
    [{ kind: 'hull molding' }, 400, 'invalid-request', '/kind'],
    [{ mold: 'M-86-1' }, 422, 'mold-of-another-part', '/mold'],
    [{ model: 'NIX' }, 422, 'not-found', '/model'],
    [{ scheduleVersion: 3 }, 422, 'not-found', '/scheduleVersion'],
    [{ number: 'J-1-H' }, 409, 'code-taken', '/number'],
  ])('with %j is refused with the field', async (wrong, status, code, pointer) => {
    expect(await start('D-NO', wrong)).toMatchObject(refusal(status, code, pointer));
    expect((await shop.get('/api/parts/D-NO')).status).toBe(404);
  });

  it('is in one hull at a time: a second is refused, also when both join it at once', async () => {
    await start('D-2');
    const both = await Promise.all(['J-1', 'J-2'].map((number) => join(number, 'D-2')));
    expect(both.map(({ status }) => status).sort()).toEqual([201, 409]);
    for (const number of ['J-1', 'J-2'])
      expect(await join(number, 'D-2')).toMatchObject(refusal(409, 'part-joined', '/part'));
    const parts = [...(await hull('J-1')).parts, ...(await hull('J-2')).parts];
    expect(parts.filter(({ number }) => number === 'D-2')).toHaveLength(1);
  });

  it('whose joint was a mistake is withdrawn with its paste, and then joined to the hull it is really in', async () => {
    await start('D-3');
    await shop.layer('', 'D1', [{ lot: 'R-1', amount: kg(3) }], { part: 'D-3' });
    const joint = await shop.join('J-1', 'D-3', { used: [{ lot: 'P-1', amount: kg(2) }] });
    await shop.act(`/api/joints/${joint}/used`, { used: [{ lot: 'P-1', amount: kg(1) }] });
    expect(await reach('P-1')).toEqual({ 'J-1': 9 });
    await shop.correct(joint);
    expect(await reach('P-1')).toEqual({ 'J-1': 6 });
    expect(await reach('R-1')).toEqual({ '': 3, 'J-1': 7 });
    await shop.join('J-2', 'D-3');
    expect(await reach('R-1')).toEqual({ 'J-1': 7, 'J-2': 3 });
    const used = shop.envelope({ used: [{ lot: 'P-1', amount: kg(1) }] });
    expect((await shop.post(`/api/joints/${joint}/used`, used)).status).toBe(404);
  });

  it('of another model does not fit the hull', async () => {
    await shop.act('/api/models', { code: 'TS60', name: 'TS 60', skins: SKINS });
    const layers = [{ code: 'D1', name: 'Deck', materials: [{ material: 'RES-VE' }] }];
    await shop.act('/api/models/TS60/schedules', { partKind: 'deck', version: 1, layers });
    await shop.act('/api/molds', { code: 'M-60-D', model: 'TS60', partKind: 'deck' });
    await start('D-4', { model: 'TS60', mold: 'M-60-D' });
    expect(await join('J-1', 'D-4')).toMatchObject(refusal(422, 'part-of-another-model', '/part'));
  });

  it('that is the hull molding stays in its hull', async () => {
    const [molding] = (await hull('J-1')).parts;
    const withdrawal = shop.envelope({ corrects: molding?.joint, reason: 'x' });
    expect(await shop.post('/api/corrections', withdrawal)).toMatchObject(
      refusal(409, 'hull-molding-stays', '/corrects'),
    );
    expect(await join('J-2', 'J-1-H')).toMatchObject(refusal(409, 'part-joined', '/part'));
  });

  it.each<[Fields, number, string, string]>([
    [{ part: 'NIX' }, 422, 'not-found', '/part'],
    [{ doneBy: ['LAM-1', 'NOBODY'] }, 403, 'unknown-badge', '/doneBy/1'],
    [{ doneBy: [] }, 400, 'invalid-request', '/doneBy'],
    [{ used: [{ lot: 'NIX', amount: kg(1) }] }, 422, 'not-found', '/used/0/lot'],
  ])('is not joined with %j', async (wrong, status, code, pointer) => {
    await start('D-5');
    expect(await join('J-1', 'D-5', wrong)).toMatchObject(refusal(status, code, pointer));
    expect((await shop.read<PartView>('/api/parts/D-5')).hull).toBeNull();
  });
});

describe('the life of a boat', () => {
  it('is told in the order in which it happened, and the newest says where the boat is', async () => {
    await shop.startHull('L-1');
    const demolded = shop.tick();
    await life('L-1', 'at dealer', { dealer: 'NLM', note: 'by road' });
    await life('L-1', 'demolded', { happenedAt: demolded });
    const found = await hull('L-1');
    expect(found.life.map(({ what }) => what)).toEqual(['part started', 'demolded', 'at dealer']);
    expect(found.now).toMatchObject({ what: 'at dealer', dealer: 'Northlight Marine' });
  });

  it.each<[string, Fields, number, string, string]>([
    ['at dealer', {}, 400, 'invalid-request', '/dealer'],
    ['at dealer', { dealer: 'NIX' }, 422, 'not-found', '/dealer'],
    ['released', {}, 400, 'invalid-request', '/what'],
    ['painted', {}, 400, 'invalid-request', '/what'],
  ])('has no "%s" with %j', async (what, more, status, code, pointer) => {
    expect(await life('J-1', what, more)).toMatchObject(refusal(status, code, pointer));
  });

  it('that went on before the release is kept as it was, and a nonconformity is in the way of the release', async () => {
    await shop.startHull('L-2');
    const { status, body } = await life('L-2', 'left the place of manufacture');
    expect([status, body.result]).toMatchObject([201, { nonconformities: [{ rule: 'left-before-release' }] }]);
    const found = await hull('L-2');
    expect(found.now.what).toBe('left the place of manufacture');
    expect(found.release.inTheWay.map(({ rule }) => rule)).toContain('nonconformity-open');
  });

  it('is corrected in time and dealer, and the first version stays in the history', async () => {
    await shop.act('/api/dealers', { code: 'SAL', name: 'Saltmere Boats', place: 'Saltmere' });
    await shop.startHull('L-3');
    const { id } = await shop.receipt('/api/hulls/L-3/life', { what: 'at dealer', dealer: 'NLM' });
    const happenedAt = shop.tick();
    await shop.correct(id, { kind: 'life fact', dealer: 'SAL', happenedAt });
    expect((await hull('L-3')).now).toMatchObject({ what: 'at dealer', dealer: 'Saltmere Boats' });
    expect((await hull('L-3')).life).toHaveLength(2);
    const { versions } = await shop.read<{ versions: unknown[] }>(`/api/facts/${id}/versions`);
    expect(versions).toHaveLength(2);
  });
});
