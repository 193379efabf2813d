import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { BalancePage, LotBalance, PartView, StockItem } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop } from '../support/shop.js';

let service: RunningService;
let shop: Shop;

beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
});
afterAll(() => service.close());

const balance = (lot: string): Promise<LotBalance> => shop.read(`/api/lots/${lot}/balance`);
/** Rules about material that were broken on a hull molding; its layers are out of order here, which is no matter. */
const rules = async (hull: string): Promise<readonly string[]> =>
  (await shop.read<PartView>(`/api/parts/${hull}-H`)).nonconformities
    .map(({ rule }) => rule)
    .filter((rule) => rule !== 'layer-out-of-order');

describe('the balance of a lot', () => {
  it('accounts for every kilogram: used, mixed, scrapped, sampled, counted', async () => {
    await shop.act('/api/materials', {
      code: 'RES-5',
      name: 'Resin with an allowance',
      role: 'resin',
      lossAllowance: 0.05,
    });
    await shop.receive('R5', 'RES-5', { amount: kg(100) });
    await shop.startHull('731');
    await shop.layer('731', 'L2', [{ lot: 'R5', amount: kg(30) }]);
    await shop.mix('BU-R5', [{ lot: 'R5', amount: kg(20) }]);
    await shop.act('/api/lots/R5/losses', { what: 'scrapped', reason: 'gelled in the pail', amount: kg(5) });
    await shop.act('/api/lots/R5/losses', {
      what: 'sample retained',
      reason: 'kept 2 years',
      place: 'Sample room',
      amount: kg(1),
    });
    const { result } = await shop.receipt('/api/lots/R5/counts', { quantity: '41', unit: 'kg' });
    expect(result).toMatchObject({ kg: 41, differenceKg: -3 });
    const told = await balance('R5');
    expect(told).toMatchObject({
      receivedKg: 100,
      usedKg: 30,
      putIntoKg: 20,
      lostKg: 6,
      differenceKg: -3,
      leftKg: 41,
      verdict: 'balances',
    });
    expect(told.lines.map(({ changeKg }) => changeKg)).toEqual([-30, -20, -5, -1, -3]);
    expect(told.lines.map(({ basis }) => basis)).toEqual(['weighed', 'weighed', 'weighed', 'weighed', null]);
    expect(told.receivedKg + told.lines.reduce((sum, line) => sum + line.changeKg, 0)).toBe(told.leftKg);
    expect(await shop.read('/api/lots/R5')).toMatchObject({ usedKg: 50, lostKg: 6, adjustedKg: -3, leftKg: 41 });
  });

  it('follows what is entered late: what was used before the count explains what was missing', async () => {
    await shop.startHull('732');
    const before = shop.tick();
    await shop.act('/api/lots/R5/counts', { quantity: '30', unit: 'kg' });
    expect(await balance('R5')).toMatchObject({ differenceKg: -14, verdict: 'lost more than allowed' });
    expect((await shop.read<BalancePage>('/api/balances')).items).toMatchObject([
      { lot: 'R5', verdict: 'lost more than allowed', lossAllowance: 0.05, basis: 'weighed' },
    ]);
    expect((await shop.read<BalancePage>('/api/balances?material=RES-5')).items).toHaveLength(1);
    expect((await shop.read<BalancePage>('/api/balances?material=RES-VE')).items).toEqual([]);
    await shop.layer('732', 'L2', [{ lot: 'R5', amount: kg(11) }], {
      startedAt: before,
      endedAt: before,
      happenedAt: before,
    });
    expect(await balance('R5')).toMatchObject({ differenceKg: -3, leftKg: 30, verdict: 'balances' });
    expect((await shop.read<BalancePage>('/api/balances')).items).toEqual([]);
  });

  it('when the last kilograms are taken by two at once, keeps both and asks for a count', async () => {
    await shop.receive('LAST', 'RES-VE', { amount: kg(10) });
    for (const hull of ['733', '734']) await shop.startHull(hull);
    await Promise.all(['733', '734'].map((hull) => shop.layer(hull, 'L2', [{ lot: 'LAST', amount: kg(8) }])));
    expect(await balance('LAST')).toMatchObject({ leftKg: -6, verdict: 'overdrawn: count it' });
    expect((await shop.read<BalancePage>('/api/balances')).items.map(({ lot }) => lot)).toEqual(['LAST']);
    const at = shop.tick();
    const { result } = await shop.receipt('/api/parts/733-H/layers', {
      layer: 'L3',
      startedAt: at,
      endedAt: at,
      doneBy: ['LAM-1'],
      used: [{ lot: 'LAST', amount: kg(1) }],
    });
    expect(result).toMatchObject({
      nonconformities: [],
      warnings: [expect.stringContaining('overdrawn by 7.000 kg')],
    });
  });

  it('of a loss that was none is set right by withdrawing it', async () => {
    const loss = await shop.act('/api/lots/R5/losses', { what: 'spilled', reason: 'x', amount: kg(2) });
    expect((await balance('R5')).leftKg).toBe(28);
    await shop.correct(loss);
    expect((await balance('R5')).leftKg).toBe(30);
  });
});

describe('stock', () => {
  const stock = async (): Promise<readonly string[]> =>
    (await shop.read<StockItem[]>('/api/materials/PASTE/stock')).map(
      ({ lot, usable }) => `${lot}${usable ? '' : ' not usable'}`,
    );

  it('is listed first to expire first, and what was received first of the rest', async () => {
    await shop.receive('P-3', 'PASTE', { amount: kg(10) });
    await shop.receive('P-2', 'PASTE', { amount: kg(10), madeOn: '2026-01-01', expiresOn: '2099-02-01' });
    await shop.receive('P-1', 'PASTE', { amount: kg(10), madeOn: '2026-01-01', expiresOn: '2099-01-01' });
    await shop.receive('P-4', 'PASTE', { amount: kg(10), state: 'quarantined' });
    expect(await stock()).toEqual(['P-1', 'P-2', 'P-3', 'P-4 not usable']);
    await shop.act('/api/lots/P-2/losses', { what: 'scrapped', reason: 'cured', amount: kg(10) });
    expect(await stock()).toEqual(['P-1', 'P-3', 'P-4 not usable']);
  });

  it('of a lot shows the drums that can be taken, open ones first', async () => {
    await shop.receive('P-5', 'PASTE', { amount: kg(80) });
    await shop.act('/api/lots/P-5/containers', {
      containers: ['P5-1', 'P5-2', 'P5-3', 'P5-4'].map((each) => ({ label: each, kind: 'pail', amount: kg(20) })),
    });
    const tell = (pail: string, what: string): Promise<string> =>
      shop.act(`/api/containers/${pail}/history`, { what, place: 'Bay 1' });
    await tell('P5-3', 'opened');
    await tell('P5-1', 'emptied');
    await tell('P5-1', 'moved');
    await tell('P5-4', 'rejected');
    const items = await shop.read<StockItem[]>('/api/materials/PASTE/stock');
    expect(items.find(({ lot }) => lot === 'P-5')?.containers).toMatchObject([
      { label: 'P5-3', place: 'Bay 1', leftKg: 20 },
      { label: 'P5-2', place: null, openedAt: null },
    ]);
    await shop.act('/api/lots/P-5/losses', { what: 'scrapped', reason: 'cured', amount: kg(80) });
  });

  it('warns when another lot is used than the first of the list; that is no nonconformity', async () => {
    const at = shop.tick();
    await shop.startHull('741');
    const { result } = await shop.receipt('/api/mixes', {
      code: 'BU-P',
      inputs: [{ lot: 'P-3', amount: kg(1) }],
      happenedAt: at,
    });
    expect(result).toMatchObject({
      nonconformities: [],
      warnings: ['Lot P-1 of the same material is to be used before lot P-3 and is still in stock.'],
    });
    const first = await shop.receipt('/api/mixes', { code: 'BU-P1', inputs: [{ lot: 'P-1', amount: kg(1) }] });
    expect(first.result).toMatchObject({ nonconformities: [], warnings: [] });
  });

  it('expired, and retested by quality, may be used again from then on', async () => {
    await shop.receive('G-OLD', 'GEL-W', { madeOn: '2025-01-01', expiresOn: '2026-01-01' });
    await shop.startHull('742');
    const before = shop.tick();
    await shop.act('/api/lots/G-OLD/retests', {
      enteredBy: 'QUA-1',
      expiresOn: '2026-06-30',
      result: 'viscosity as certified',
    });
    await shop.layer('742', 'L1', [{ lot: 'G-OLD', amount: kg(18) }]);
    expect(await rules('742')).toEqual([]);
    await shop.startHull('743');
    await shop.layer('743', 'L1', [{ lot: 'G-OLD', amount: kg(18) }], {
      startedAt: before,
      endedAt: before,
      happenedAt: before,
    });
    expect(await rules('743')).toEqual(['expired-lot']);
    const refused = await shop.post(
      '/api/lots/G-OLD/retests',
      shop.envelope({ enteredBy: 'REC-1', expiresOn: '2027-01-01', result: 'x' }),
    );
    expect(refused.status).toBe(403);
  });
});
