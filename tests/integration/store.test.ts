import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ContainerView, HullView, LotView, PartView, StoreOfLot } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;

beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
});
afterAll(() => service.close());

const label = (lot: string, labels: readonly string[], kilograms = 200): Promise<string> =>
  shop.act(`/api/lots/${lot}/containers`, {
    containers: labels.map((each) => ({ label: each, kind: 'drum', amount: kg(kilograms), place: 'Bay 2' })),
  });
const tell = (container: string, what: string, more: Fields = {}): Promise<string> =>
  shop.act(`/api/containers/${container}/history`, { what, ...more });
const box = (container: string): Promise<ContainerView> => shop.read(`/api/containers/${container}`);
/** Rules about material that were broken on a hull molding; its layers are out of order here, which is no matter. */
const rules = async (hull: string): Promise<readonly string[]> =>
  (await shop.read<PartView>(`/api/parts/${hull}-H`)).nonconformities
    .map(({ rule }) => rule)
    .filter((rule) => rule !== 'layer-out-of-order');
const inTheWay = async (hull: string): Promise<readonly string[]> =>
  (await shop.read<HullView>(`/api/hulls/${hull}`)).release.inTheWay.map(({ rule }) => rule);

describe('a drum of a lot', () => {
  it('has its label and place, is moved, opened, used and put back partly used', async () => {
    await shop.receive('VE-A', 'RES-VE');
    await label('VE-A', ['A-1', 'A-2']);
    await tell('A-1', 'opened');
    await shop.startHull('701');
    await shop.layer('701', 'L2', [{ container: 'A-1', amount: kg(50) }]);
    await tell('A-1', 'returned to stock', { place: 'Bay 5' });
    expect(await box('A-1')).toMatchObject({ lot: 'VE-A', place: 'Bay 5', leftKg: 150, rejected: false });
    expect((await box('A-1')).openedAt).not.toBeNull();
    expect(await box('A-2')).toMatchObject({ place: 'Bay 2', openedAt: null, leftKg: 200 });
    expect((await shop.read<LotView>('/api/lots/VE-A')).usedKg).toBe(50);
  });

  it('weighed when it came back, has left what the scale said', async () => {
    await shop.act('/api/lots/VE-A/counts', { container: 'A-1', quantity: '147.5', unit: 'kg' });
    await shop.layer('701', 'L3', [{ container: 'A-1', amount: kg(7.5) }]);
    expect((await box('A-1')).leftKg).toBe(140);
  });

  it('with water in it is rejected alone: the rest of the lot is used on', async () => {
    await shop.receive('VE-B', 'RES-VE');
    await label('VE-B', ['B-1', 'B-2']);
    await tell('B-1', 'rejected', { note: 'water in it' });
    await shop.startHull('702');
    await shop.layer('702', 'L2', [{ container: 'B-2', amount: kg(5) }]);
    expect(await rules('702')).toEqual([]);
    await shop.startHull('703');
    await shop.layer('703', 'L2', [{ container: 'B-1', amount: kg(5) }]);
    expect(await rules('703')).toEqual(['container-rejected']);
    expect(await inTheWay('703')).toContain('container-rejected');
    expect(await inTheWay('702')).not.toContain('container-rejected');
  });

  it('found to be bad after it was used, brings to light where it was, and where it may have been', async () => {
    await shop.receive('VE-C', 'RES-VE');
    await label('VE-C', ['C-1', 'C-2']);
    const before = shop.tick();
    for (const [hull, from] of [
      ['704', { container: 'C-1' }],
      ['705', { container: 'C-2' }],
      ['706', { lot: 'VE-C' }],
    ] as const) {
      await shop.startHull(hull);
      await shop.layer(hull, 'L2', [{ ...from, amount: kg(5) }]);
    }
    await tell('C-1', 'rejected', { happenedAt: before });
    expect(await Promise.all(['704', '705', '706'].map(rules))).toEqual([
      ['container-rejected'],
      [],
      ['container-rejected'],
    ]);
  });

  it('has a label of its own; of another lot it is not', async () => {
    const twice = await shop.post(
      '/api/lots/VE-C/containers',
      shop.envelope({ containers: [{ label: 'A-1', kind: 'drum', amount: kg(1) }] }),
    );
    expect(twice.status).toBe(409);
    const other = await shop.post(
      '/api/lots/VE-B/losses',
      shop.envelope({ what: 'spilled', reason: 'x', container: 'A-1', amount: kg(1) }),
    );
    expect([other.status, JSON.stringify(other.body)]).toEqual([422, expect.stringContaining('/container')]);
    const nowhere = await shop.post('/api/containers/A-1/history', shop.envelope({ what: 'moved' }));
    expect([nowhere.status, JSON.stringify(nowhere.body)]).toEqual([400, expect.stringContaining('/place')]);
  });
});

describe('a hold', () => {
  const hold = (lot: string, more: Fields = {}): Promise<string> =>
    shop.act(`/api/lots/${lot}/holds`, { enteredBy: 'QUA-1', kind: 'quality', reason: 'gel time', ...more });

  it('stands in the way of release of what holds the lot, also through a bucket, until it is lifted', async () => {
    await shop.receive('VE-D', 'RES-VE');
    await shop.startHull('711');
    await shop.mix('BU-D', [{ lot: 'VE-D', amount: kg(10) }]);
    await shop.layer('711', 'L2', [{ lot: 'BU-D', amount: kg(10) }]);
    const id = await hold('VE-D');
    expect(await rules('711')).toEqual([]);
    expect(await inTheWay('711')).toContain('lot-on-hold');
    await shop.act(`/api/holds/${id}/lifts`, { reason: 'retested' });
    expect(await inTheWay('711')).not.toContain('lot-on-hold');
    expect((await shop.read<StoreOfLot>('/api/lots/VE-D/store')).holds).toMatchObject([
      { kind: 'quality', lifted: { reason: 'retested' } },
    ]);
    expect((await shop.post(`/api/holds/${id}/lifts`, shop.envelope({ reason: 'x' }))).status).toBe(409);
  });

  it('is broken by what is used under it, which a later lift does not undo', async () => {
    await shop.receive('VE-E', 'RES-VE');
    const id = await hold('VE-E');
    await shop.startHull('712');
    await shop.layer('712', 'L2', [{ lot: 'VE-E', amount: kg(1) }]);
    await shop.act(`/api/holds/${id}/lifts`, { reason: 'retested' });
    await shop.layer('712', 'L3', [{ lot: 'VE-E', amount: kg(1) }]);
    expect(await rules('712')).toEqual(['lot-on-hold']);
  });

  it('entered late brings to light what was used since', async () => {
    await shop.receive('VE-F', 'RES-VE');
    const from = shop.tick();
    await shop.startHull('713');
    await shop.layer('713', 'L2', [{ lot: 'VE-F', amount: kg(1) }]);
    await hold('VE-F', { happenedAt: from });
    expect(await rules('713')).toEqual(['lot-on-hold']);
  });

  it('for safety is lifted by quality alone', async () => {
    await shop.receive('VE-G', 'RES-VE');
    const id = await hold('VE-G', { kind: 'safety' });
    const refused = await shop.post(
      `/api/holds/${id}/lifts`,
      shop.envelope({ enteredBy: 'REC-1', reason: 'looks fine' }),
    );
    expect(refused).toMatchObject({ status: 403, body: { type: '/problems/not-allowed' } });
    await shop.act(`/api/holds/${id}/lifts`, { enteredBy: 'QUA-1', reason: 'sampled' });
  });

  it('placed while material is used sees the use, or is seen by it', async () => {
    await shop.receive('VE-H', 'RES-VE');
    for (let round = 0; round < 8; round += 1) {
      const hull = `72${round}`;
      await shop.startHull(hull);
      const at = shop.tick();
      const use = shop.layer(hull, 'L2', [{ lot: 'VE-H', amount: kg(1) }], {
        startedAt: at,
        endedAt: at,
        happenedAt: at,
      });
      const [, id] = await Promise.all([use, hold('VE-H', { happenedAt: at })]);
      expect([round, await rules(hull)]).toEqual([round, ['lot-on-hold']]);
      await shop.act(`/api/holds/${id}/lifts`, { reason: 'next round', happenedAt: at });
    }
  });
});
