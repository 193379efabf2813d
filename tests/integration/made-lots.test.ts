import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { LotView } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Answer, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('R-1', 'RES-VE');
  await shop.receive('C-1', 'MEKP');
  await shop.receive('M-1', 'MAT-450');
});
afterAll(() => service.close());

const lot = (code: string): Promise<LotView> => shop.read(`/api/lots/${code}`);
const inputs = (...given: readonly (readonly [string, number])[]) =>
  given.map(([code, amount]) => ({ lot: code, amount: kg(amount) }));
const mix = (code: string, from: readonly Fields[], more: Fields = {}): Promise<Answer> =>
  shop.post('/api/mixes', shop.envelope({ code, inputs: from, ...more }));
const correction = (corrects: string, set: Fields): Promise<Answer> =>
  shop.post('/api/corrections', shop.envelope({ corrects, reason: 'misread', set }));

describe('a bucket', () => {
  it('is made of other lots by mass, and what it is made of sums to one', async () => {
    const answer = await mix('B-1', inputs(['R-1', 19.7], ['C-1', 0.3]));
    expect(answer).toMatchObject({ status: 201, body: { result: { code: 'B-1', kg: 20, nonconformities: [] } } });
    const { composition, origin, material, amount } = await lot('B-1');
    expect({ origin, material }).toEqual({ origin: 'mixed', material: null });
    expect(amount.kg).toBe(20);
    expect(composition.reduce((sum, { fraction }) => sum + fraction, 0)).toBeCloseTo(1, 12);
    expect(composition).toContainEqual({ source: 'R-1', role: 'resin', fraction: 0.985 });
  });

  it('of buckets is made of what those are made of', async () => {
    await shop.mix('B-2', inputs(['B-1', 5], ['R-1', 5]));
    const { composition, inputs: direct } = await lot('B-2');
    expect(direct.map((input) => [input.lot, input.amount.kg])).toEqual([
      ['B-1', 5],
      ['R-1', 5],
    ]);
    expect(composition.map(({ source }) => source).sort()).toEqual(['C-1', 'R-1']);
    expect(composition.reduce((sum, { fraction }) => sum + fraction, 0)).toBeCloseTo(1, 12);
    expect((await lot('B-1')).usedKg).toBe(5);
  });

  it('takes volumes by the density of each lot, and is known as weakly as its weakest amount', async () => {
    const resin = { lot: 'R-1', amount: { quantity: 10, unit: 'L', basis: 'metered' } };
    const catalyst = { lot: 'C-1', amount: { quantity: 200, unit: 'mL', basis: 'as scheduled' } };
    await shop.mix('B-3', [resin, catalyst]);
    const { amount } = await lot('B-3');
    expect(amount.kg).toBeCloseTo(11.222, 9);
    expect(amount.basis).toBe('as scheduled');
  });

  it('drawn from a tank is made of the lot that was in the tank at that time', async () => {
    await shop.fill('T-1', null, inputs(['R-1', 100]));
    const early = shop.tick();
    await shop.receive('R-2', 'RES-VE');
    await shop.fill('T-2', null, inputs(['R-2', 100]));
    const drawn = [{ tank: 'T1', amount: kg(1) }];
    await shop.mix('B-4', drawn, { happenedAt: early });
    await shop.mix('B-5', drawn);
    expect((await lot('B-4')).composition.map(({ source }) => source)).toEqual(['R-1']);
    expect((await lot('B-5')).composition.map(({ source }) => source)).toEqual(['R-2']);
  });

  it.each([
    ['a lot nobody knows', [{ lot: 'NIX', amount: kg(1) }], 422, '/inputs/0/lot'],
    ['a tank nobody knows', [{ tank: 'NIX', amount: kg(1) }], 422, '/inputs/0/tank'],
    ['neither lot nor tank', [{ amount: kg(1) }], 400, '/inputs/0/lot'],
    ['both at once', [{ lot: 'R-1', tank: 'T1', amount: kg(1) }], 400, '/inputs/0/lot'],
    [
      'square metres of resin',
      [{ lot: 'R-1', amount: { quantity: 1, unit: 'm2', basis: 'weighed' } }],
      422,
      '/inputs/0/amount/unit',
    ],
    ['nothing', [], 400, '/inputs'],
  ])('of %s is refused with the field', async (_what, given, status, pointer) => {
    expect(await mix('NO', given)).toMatchObject({ status, body: { errors: [{ pointer }] } });
  });

  it('of an expired lot, or of one that was held at that time, is kept, and a nonconformity is opened', async () => {
    await shop.receive('X-1', 'RES-PE', { expiresOn: '2026-01-04' });
    await shop.receive('X-2', 'RES-PE');
    await shop.setState('X-2', 'held');
    const { status, body } = await mix('B-6', inputs(['X-1', 1], ['X-2', 1]));
    expect([status, body]).toMatchObject([
      201,
      { result: { nonconformities: [{ rule: 'expired-lot' }, { rule: 'lot-not-released' }] } },
    ]);
    expect(await lot('B-6')).toMatchObject({ expiresOn: '2026-01-04', amount: { kg: 2 } });
  });

  it('of a lot on its last day of use, by the clock of the plant, is sound; a day later it is not', async () => {
    const came = { happenedAt: '2026-01-03T12:00:00Z', expiresOn: '2026-01-04' };
    await shop.receive('X-3', 'RES-PE', came);
    const rules = async (code: string, happenedAt: string): Promise<unknown> =>
      (await mix(code, inputs(['X-3', 1]), { happenedAt })).body.result['nonconformities'];
    // The plant is five hours behind UTC in January.
    expect(await rules('B-7', '2026-01-05T04:59:00Z')).toEqual([]);
    expect(await rules('B-8', '2026-01-05T05:00:00Z')).toMatchObject([{ rule: 'expired-lot' }]);
  });
});

describe('a kit', () => {
  it('is cut from rolls by area, and is used by the piece', async () => {
    await shop.act('/api/kits', {
      code: 'K-1',
      inputs: [{ lot: 'M-1', amount: { quantity: 20, unit: 'm2', basis: 'as scheduled' } }],
    });
    expect(await lot('K-1')).toMatchObject({ origin: 'cut', amount: { kg: 9 } });
    await shop.startHull('K-H');
    const piece = { quantity: 1, unit: 'pc', basis: 'as scheduled' };
    await shop.layer('K-H', 'L2', [{ lot: 'K-1', amount: piece }]);
    expect((await lot('K-1')).usedKg).toBe(9);
  });
});

describe('a lot made of itself', () => {
  it('is refused, by its own code', async () => {
    await shop.mix('S-1', inputs(['R-1', 1]));
    const answer = await mix('S-1', inputs(['S-1', 1]));
    expect(answer).toMatchObject({ status: 422, body: { type: '/problems/lot-made-of-itself' } });
    expect(answer.body).toMatchObject({ errors: [{ pointer: '/inputs/0/lot' }] });
  });

  it('by way of others is refused when a correction would close the way, and the way is named', async () => {
    await shop.mix('S-2', inputs(['R-1', 4]));
    await shop.mix('S-3', inputs(['S-2', 2]));
    await shop.mix('S-4', inputs(['S-3', 1]));
    const [input] = (await lot('S-2')).inputs;
    const answer = await correction(String(input?.id), { kind: 'lot input', input: 'S-4' });
    expect(answer).toMatchObject({ status: 422, body: { type: '/problems/lot-made-of-itself' } });
    expect(answer.body).toMatchObject({ errors: [{ pointer: '/set/input' }] });
    for (const code of ['S-2', 'S-3', 'S-4']) expect(answer.body['detail']).toContain(code);
    const itself = await correction(String(input?.id), { kind: 'lot input', input: 'S-2' });
    expect(itself).toMatchObject({ status: 422, body: { type: '/problems/lot-made-of-itself' } });
    expect((await lot('S-2')).composition).toEqual([{ source: 'R-1', role: 'resin', fraction: 1 }]);
  });
});

describe('a correction of what a lot is', () => {
  it('of an input, gives the lot another composition, and those made of it too', async () => {
    await shop.mix('D-1', inputs(['R-1', 10]));
    await shop.fill('D-2', null, inputs(['D-1', 5], ['R-1', 5]));
    const [input] = (await lot('D-1')).inputs;
    await shop.receive('R-9', 'RES-VE');
    await shop.correct(String(input?.id), { kind: 'lot input', input: 'R-9', amount: kg(8) });
    expect((await lot('D-1')).composition).toEqual([{ source: 'R-9', role: 'resin', fraction: 1 }]);
    expect((await lot('D-2')).composition).toContainEqual({ source: 'R-9', role: 'resin', fraction: 0.5 });
    expect((await lot('R-9')).usedKg).toBe(8);
  });

  it('of an amount that went into it, gives the lot another mass, so that what is left of it is right', async () => {
    await shop.mix('D-3', inputs(['R-1', 10], ['C-1', 1]));
    const resin = (await lot('D-3')).inputs.find((input) => input.lot === 'R-1');
    const standing = await shop.correct(String(resin?.id), { kind: 'lot input', amount: kg(12) });
    expect((await lot('D-3')).amount).toMatchObject({ quantity: '13', kg: 13 });
    await shop.correct(standing);
    expect((await lot('D-3')).amount.kg).toBe(1);
    const [last] = (await lot('D-3')).inputs;
    const answer = await shop.post('/api/corrections', shop.envelope({ corrects: last?.id, reason: 'misread' }));
    expect(answer).toMatchObject({ status: 409, body: { type: '/problems/lot-is-made-of-this' } });
  });

  it('of the material of a received lot, weighs what was entered by the new material', async () => {
    const id = await shop.receive('D-4', 'RES-VE', { amount: { quantity: 10, unit: 'L', basis: 'metered' } });
    const standing = await shop.correct(id, { kind: 'lot', material: 'GEL-W' });
    expect(await lot('D-4')).toMatchObject({ role: 'gel coat', amount: { quantity: '10', unit: 'L', kg: 12.8 } });
    const answer = await correction(standing, { kind: 'lot', material: 'RES-PE' });
    expect(answer).toMatchObject({ status: 422, body: { type: '/problems/unit-without-conversion' } });
  });

  it.each([
    ['a material', { material: 'GEL-W' }, '/set/material'],
    ["a supplier's number", { supplierLot: 'S-1' }, '/set/supplierLot'],
  ])('cannot give %s to a lot that was made here', async (_what, set, pointer) => {
    const id = await shop.mix(`E${pointer}`, inputs(['R-1', 1]));
    const answer = await correction(id, { kind: 'lot', ...set });
    expect(answer).toMatchObject({ status: 400, body: { errors: [{ pointer }] } });
  });

  it('cannot have it expire before it was made', async () => {
    const id = await shop.receive('D-5', 'GEL-W', { madeOn: '2026-01-02' });
    const answer = await correction(id, { kind: 'lot', expiresOn: '2026-01-01' });
    expect(answer).toMatchObject({ status: 400, body: { errors: [{ pointer: '/set/expiresOn' }] } });
  });
});
