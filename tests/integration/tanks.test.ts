import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { LotView, ReachPage, TankView } from '@hull-record/contracts';
import type { z } from 'zod';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Answer, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  for (const code of ['R-1', 'R-2', 'R-3']) await shop.receive(code, 'RES-VE');
});
afterAll(() => service.close());

const lot = (code: string): Promise<LotView> => shop.read(`/api/lots/${code}`);

/** A tank of its own for a test, filled with 500 kg of R-1. */
const tank = async (code: string): Promise<void> => {
  await shop.act('/api/tanks', { code, material: 'RES-VE', capacityKg: 2_000 });
  await fill(code, `${code}-1`, null, 'R-1', 500);
};

const fill = (code: string, lotCode: string, heel: Fields | null, of: string, amount: number, more: Fields = {}) =>
  shop.act(`/api/tanks/${code}/fills`, { code: lotCode, heel, inputs: [{ lot: of, amount: kg(amount) }], ...more });

const refusedFill = (code: string, more: Fields): Promise<Answer> =>
  shop.post(
    `/api/tanks/${code}/fills`,
    shop.envelope({ code: `${code}-no`, heel: null, inputs: [{ lot: 'R-2', amount: kg(1) }], ...more }),
  );

/** Kilograms of each received lot behind a lot, in a layer of a hull. */
const hullsOf = async (code: string): Promise<Record<string, number>> => {
  const { items } = await shop.read<ReachPage>(`/api/lots/${code}/hulls`);
  return Object.fromEntries(items.map((item) => [item.hull ?? '', item.kg ?? 0]));
};

const portions = async (code: string): Promise<Record<string, number>> =>
  Object.fromEntries((await lot(code)).composition.map(({ source, fraction }) => [source ?? '', fraction]));

describe('a fill of a tank', () => {
  it('makes a lot of the measured heel and of what came in, and books what the heel differs as a loss', async () => {
    await tank('TA');
    await shop.startHull('TA-1');
    await shop.layer('TA-1', 'L2', [{ tank: 'TA', amount: kg(80) }]);
    await fill('TA', 'TA-2', kg(400), 'R-2', 600);
    expect(await lot('TA-1')).toMatchObject({ usedKg: 480, adjustedKg: -20 });
    expect(await lot('TA-2')).toMatchObject({ origin: 'tank', tank: 'TA', amount: { kg: 1_000 }, expiresOn: null });
    expect(await portions('TA-2')).toEqual({ 'R-1': 0.4, 'R-2': 0.6 });
    const tanks = await shop.read<z.output<typeof TankView>[]>('/api/tanks');
    expect(tanks.find(({ code }) => code === 'TA')).toMatchObject({ lot: 'TA-2', bookKg: 1_000 });
  });

  it('books a heel that is more than the book says as a gain, and an empty tank as a loss of all that was left', async () => {
    await tank('TB');
    await fill('TB', 'TB-2', { quantity: 600, unit: 'L', basis: 'metered' }, 'R-2', 340);
    expect((await lot('TB-1')).adjustedKg).toBeCloseTo(160, 9);
    await fill('TB', 'TB-3', null, 'R-3', 10);
    expect((await lot('TB-2')).adjustedKg).toBeCloseTo(-1_000, 9);
    expect(await portions('TB-3')).toEqual({ 'R-3': 1 });
  });

  it('books nothing when the heel is what the book says', async () => {
    await tank('TC');
    await fill('TC', 'TC-2', kg(500), 'R-2', 100);
    expect(await lot('TC-1')).toMatchObject({ adjustedKg: 0, usedKg: 500 });
  });

  it('entered on Monday for Friday night, before fills that are on record, takes its place among them', async () => {
    await tank('TD');
    await shop.startHull('TD-1');
    const friday = shop.tick();
    await shop.layer('TD-1', 'L2', [{ tank: 'TD', amount: kg(100) }]);
    await fill('TD', 'TD-3', kg(300), 'R-3', 300);
    await shop.layer('TD-1', 'L3', [{ tank: 'TD', amount: kg(60) }]);
    expect(await portions('TD-3')).toEqual({ 'R-1': 0.5, 'R-3': 0.5 });
    await fill('TD', 'TD-2', kg(200), 'R-2', 200, { happenedAt: friday });
    expect(await portions('TD-2')).toEqual({ 'R-1': 0.5, 'R-2': 0.5 });
    expect(await portions('TD-3')).toEqual({ 'R-1': 0.25, 'R-2': 0.25, 'R-3': 0.5 });
    expect((await hullsOf('R-2'))['TD-1']).toBeCloseTo(50 + 15, 9);
    expect((await lot('TD-3')).inputs.map((input) => input.lot).sort()).toEqual(['R-3', 'TD-2']);
  });

  it('that never was gives back what was drawn of it, and the heel after it, to the fill before', async () => {
    await tank('TL');
    await shop.startHull('TL-1');
    const wrong = await fill('TL', 'TL-2', kg(500), 'R-2', 500);
    await shop.layer('TL-1', 'L2', [{ tank: 'TL', amount: kg(100) }]);
    await fill('TL', 'TL-3', kg(300), 'R-3', 300);
    await shop.correct(wrong);
    expect(await portions('TL-3')).toEqual({ 'R-1': 0.5, 'R-3': 0.5 });
    expect(await hullsOf('R-2')).not.toHaveProperty('TL-1');
    expect((await hullsOf('R-1'))['TL-1']).toBeCloseTo(100, 9);
  });

  it('at the very instant of another is refused: none of the two would be first', async () => {
    const happenedAt = shop.tick();
    await tank('TM');
    await shop.act('/api/tanks/TM/fills', {
      code: 'TM-2',
      heel: null,
      inputs: [{ lot: 'R-2', amount: kg(1) }],
      happenedAt,
    });
    const answer = await refusedFill('TM', { heel: kg(1), happenedAt });
    expect(answer).toMatchObject({ status: 409, body: { type: '/problems/tank-fill-out-of-order' } });
    expect(answer.body).toMatchObject({ errors: [{ pointer: '/happenedAt' }] });
  });

  it('with a heel, after the tank was emptied, is kept, and said', async () => {
    await tank('TN');
    await shop.act('/api/tanks/TN/emptyings', { cleaned: true });
    const { result } = await shop.receipt('/api/tanks/TN/fills', {
      code: 'TN-2',
      heel: kg(3),
      inputs: [{ lot: 'R-2', amount: kg(1) }],
    });
    expect(result).toMatchObject({ nonconformities: [{ rule: 'heel-of-emptied-tank' }] });
  });

  it('the first, has no heel', async () => {
    await shop.act('/api/tanks', { code: 'TE', material: 'RES-VE', capacityKg: 2_000 });
    const answer = await refusedFill('TE', { heel: kg(1) });
    expect(answer).toMatchObject({ status: 422, body: { type: '/problems/no-heel-before-first-fill' } });
    expect(answer.body).toMatchObject({ errors: [{ pointer: '/heel' }] });
  });

  it('is one of two when two are recorded at once: the other is told to look again', async () => {
    await tank('TF');
    const happenedAt = shop.tick();
    const both = await Promise.all(['a', 'b'].map((code) => refusedFill('TF', { code: `TF-${code}`, happenedAt })));
    expect(both.map(({ status }) => status).sort()).toEqual([201, 409]);
    const fills = await service.asOwner("select from fact.lot where code like 'TF-%'");
    expect(fills).toHaveLength(2);
  });

  it('recorded late corrects what was drawn after it: that was drawn from the new lot', async () => {
    await tank('TG');
    await shop.startHull('TG-1');
    await shop.layer('TG-1', 'L2', [{ tank: 'TG', amount: kg(20) }]);
    const late = shop.tick();
    const layer = await shop.layer('TG-1', 'L3', [{ tank: 'TG', amount: kg(50) }]);
    expect(await hullsOf('R-2')).not.toHaveProperty('TG-1');
    await fill('TG', 'TG-2', kg(480), 'R-2', 480, { happenedAt: late });
    expect((await hullsOf('R-2'))['TG-1']).toBeCloseTo(25, 9);
    // 20 kg before the fill, and half of the 50 kg after it by way of the heel.
    expect((await hullsOf('TG-1'))['TG-1']).toBeCloseTo(45, 9);
    expect(await lot('TG-1')).toMatchObject({ usedKg: 500, adjustedKg: 0 });
    expect(await lot('TG-2')).toMatchObject({ usedKg: 50 });
    const versions = await service.asOwner('select from fact.used where into_id = $1', [layer]);
    expect(versions).toHaveLength(2);
  });

  it('recorded late corrects what was mixed from the tank after it, and the loss follows', async () => {
    await tank('TJ');
    await shop.startHull('TJ-1');
    const late = shop.tick();
    await shop.mix('TJ-B', [{ tank: 'TJ', amount: kg(40) }]);
    await shop.layer('TJ-1', 'L2', [{ lot: 'TJ-B', amount: kg(40) }]);
    await fill('TJ', 'TJ-2', kg(500), 'R-2', 500, { happenedAt: late });
    expect((await hullsOf('R-2'))['TJ-1']).toBeCloseTo(20, 9);
    expect(await lot('TJ-1')).toMatchObject({ usedKg: 500, adjustedKg: 0 });
    expect((await lot('TJ-B')).inputs).toMatchObject([{ lot: 'TJ-2', amount: { kg: 40 } }]);
  });

  it('measures a loss that follows a correction of what was drawn before', async () => {
    await tank('TK');
    await shop.startHull('TK-1');
    const layer = await shop.layer('TK-1', 'L2', [{ tank: 'TK', amount: kg(80) }]);
    await fill('TK', 'TK-2', kg(400), 'R-2', 600);
    expect((await lot('TK-1')).adjustedKg).toBe(-20);
    const [used] = await service.asOwner<{ id: string }>('select id from fact.used where into_id = $1', [layer]);
    await shop.correct(used?.id ?? '', { kind: 'used', amount: kg(95) });
    expect((await lot('TK-1')).adjustedKg).toBe(-5);
  });

  it('whose time is corrected takes with it what was drawn, also past another fill', async () => {
    await tank('TH');
    const before = shop.tick();
    await shop.startHull('TH-1');
    await shop.layer('TH-1', 'L2', [{ tank: 'TH', amount: kg(10) }]);
    const second = await fill('TH', 'TH-2', null, 'R-3', 100);
    await fill('TH', 'TH-3', kg(50), 'R-2', 50);
    await shop.correct(second, { kind: 'lot', happenedAt: before });
    expect((await hullsOf('R-3'))['TH-1']).toBeCloseTo(10, 9);
    const [standing] = await service.asOwner<{ id: string }>(
      "select l.id from fact.lot l where l.code = 'TH-2' and not exists (select from fact.correction c where c.corrects = l.id)",
    );
    await shop.correct(standing?.id ?? '', { kind: 'lot', happenedAt: shop.tick() });
    expect(await portions('TH-3')).toEqual({ 'R-1': 0.5, 'R-2': 0.5 });
    expect((await hullsOf('R-1'))['TH-1']).toBeCloseTo(10, 9);
  });
});

describe('what is drawn from a tank', () => {
  it('before its first fill on record is unidentified, until the fill is entered', async () => {
    await shop.startHull('TI-1');
    const filled = shop.tick();
    const early = shop.tick();
    await shop.act('/api/tanks', { code: 'TI', material: 'RES-VE', capacityKg: 2_000 });
    const { result } = await shop.receipt('/api/parts/TI-1-H/layers', {
      ...{ layer: 'L3', startedAt: early, endedAt: early, happenedAt: early, doneBy: ['LAM-1'] },
      used: [{ tank: 'TI', amount: { quantity: '10', unit: 'L', basis: 'metered' } }],
    });
    expect(JSON.stringify(result)).toContain('unidentified-material');
    expect((await shop.read<ReachPage>('/api/lots/R-1/hulls')).items.find(({ hull }) => hull === 'TI-1')).toMatchObject(
      { possibly: true },
    );
    await fill('TI', 'TI-1', null, 'R-2', 500, { happenedAt: filled });
    expect((await hullsOf('R-2'))['TI-1']).toBeCloseTo(11, 9);
    expect(await hullsOf('R-1')).not.toHaveProperty('TI-1');
    const { nonconformities } = await shop.read<{ nonconformities: { rule: string }[] }>('/api/parts/TI-1-H');
    expect(nonconformities.map(({ rule }) => rule)).not.toContain('unidentified-material');
  });
});

describe('a tank that was emptied', () => {
  it('holds nothing; said late, it brings to light a heel that was measured after it', async () => {
    await tank('TP');
    const late = shop.tick();
    await fill('TP', 'TP-2', kg(3), 'R-2', 1);
    const { result } = await shop.receipt('/api/tanks/TP/emptyings', { cleaned: true, happenedAt: late });
    expect(result).toMatchObject({ nonconformities: [{ rule: 'heel-of-emptied-tank' }] });
    await shop.act('/api/tanks/TP/emptyings', { cleaned: true });
    const tanks = await shop.read<z.output<typeof TankView>[]>('/api/tanks');
    expect(tanks.find(({ code }) => code === 'TP')).toMatchObject({ lot: null, bookKg: null });
  });

  it('was it not, and is filled as if it had been, says what counts as lost', async () => {
    await tank('TQ');
    const { result } = await shop.receipt('/api/tanks/TQ/fills', {
      ...{ code: 'TQ-2', heel: null, inputs: [{ lot: 'R-2', amount: kg(1) }] },
    });
    expect(result).toMatchObject({ warnings: expect.arrayContaining([expect.stringContaining('500.0 kg were left')]) });
  });
});
