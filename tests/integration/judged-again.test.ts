import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { NonconformityPage } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
});
afterAll(() => service.close());

const rules = async (part: string): Promise<readonly string[]> => {
  const { items } = await shop.read<NonconformityPage>(`/api/nonconformities?part=${part}-H`);
  return items.map(({ rule }) => rule).sort();
};
const gelOf = async (hull: string, lot: string): Promise<void> => {
  await shop.startHull(hull);
  await shop.layer(hull, 'L1', [{ lot, amount: kg(18) }]);
};

describe('a correction brings to light what was not known', () => {
  it('of the last day of use: what was used after it', async () => {
    const lot = await shop.receive('G-1', 'GEL-W', { madeOn: '2025-12-01', expiresOn: '2026-12-01' });
    await gelOf('J1', 'G-1');
    expect(await rules('J1')).toEqual([]);
    await shop.correct(lot, { kind: 'lot', expiresOn: '2026-01-01' });
    expect(await rules('J1')).toEqual(['expired-lot']);
  });

  it('of the material: that the layer does not have it, also through a bucket', async () => {
    const lot = await shop.receive('G-2', 'GEL-W');
    await shop.mix('B-2', [{ lot: 'G-2', amount: kg(20) }]);
    await gelOf('J2', 'B-2');
    expect(await rules('J2')).toEqual([]);
    await shop.correct(lot, { kind: 'lot', material: 'RES-VE' });
    expect(await rules('J2')).toEqual(['material-not-in-schedule']);
  });

  it('of what a bucket was mixed of: that one of it was not released', async () => {
    await shop.receive('G-3', 'GEL-W');
    await shop.receive('G-BAD', 'GEL-W', { state: 'quarantined' });
    await shop.mix('B-3', [{ lot: 'G-3', amount: kg(20) }]);
    await gelOf('J3', 'B-3');
    const [input] = await service.asOwner<{ id: string }>(
      "select i.id from fact.lot_input i join fact.lot l on l.id = i.lot_id where l.code = 'B-3'",
    );
    await shop.correct(String(input?.id), { kind: 'lot input', input: 'G-BAD' });
    const { items } = await shop.read<NonconformityPage>('/api/nonconformities?rule=lot-not-released');
    expect(items).toMatchObject([{ aboutKind: 'lot', detail: expect.stringContaining('G-BAD') }]);
  });

  it('of a drum change entered late: that the gun was fed with a lot that was not released', async () => {
    await shop.act('/api/equipment', { code: 'G-9', kind: 'gun', description: 'Gel coat gun' });
    await shop.receive('G-4', 'GEL-W');
    await shop.act('/api/guns/G-9/hook-ups', { feed: 'resin', lot: 'G-4' });
    await shop.startHull('J4');
    const changed = shop.tick();
    await shop.layer('J4', 'L1', [{ gun: 'G-9', feed: 'resin', amount: kg(18) }]);
    expect(await rules('J4')).toEqual([]);
    await shop.act('/api/guns/G-9/hook-ups', { feed: 'resin', lot: 'G-BAD', happenedAt: changed });
    expect(await rules('J4')).toEqual(['lot-not-released']);
  });

  it('of a release that was none: that the lot was still in quarantine', async () => {
    await shop.receive('G-5', 'GEL-W', { state: 'quarantined' });
    const released = await shop.setState('G-5', 'released');
    await gelOf('J5', 'G-5');
    expect(await rules('J5')).toEqual([]);
    await shop.correct(released);
    expect(await rules('J5')).toEqual(['lot-not-released']);
  });

  it('and does not say twice what was known', async () => {
    const lot = await shop.receive('G-6', 'GEL-W', { madeOn: '2025-01-01', expiresOn: '2025-12-01' });
    await gelOf('J6', 'G-6');
    expect(await rules('J6')).toEqual(['expired-lot']);
    await shop.correct(lot, { kind: 'lot', supplierLot: 'S-6-CORRECTED' });
    expect(await rules('J6')).toEqual(['expired-lot']);
  });
});
