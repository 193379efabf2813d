import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { LotView } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Answer, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('R', 'RES-VE', { happenedAt: day(1) });
});
afterAll(() => service.close());

const day = (n: number): string => new Date(Date.UTC(2026, 1, n)).toISOString();

const newTank = (code: string): Promise<string> =>
  shop.act('/api/tanks', { code, material: 'RES-VE', capacityKg: 900 });

const fill = (tank: string, code: string, lot: string, on: number): Promise<Answer> =>
  shop.post(
    `/api/tanks/${tank}/fills`,
    shop.envelope({ code, heel: null, inputs: [{ lot, amount: kg(10) }], happenedAt: day(on) }),
  );

const bucket = (code: string, from: Fields, on: number): Promise<string> =>
  shop.mix(code, [{ ...from, amount: kg(2) }], { happenedAt: day(on) });

const correct = (corrects: string, set?: Fields): Promise<Answer> =>
  shop.post('/api/corrections', shop.envelope({ corrects, reason: 'as it was', set }));

/** Refused, and every lot of the way round is named. */
const expectOfItself = ({ status, body }: Answer, ...way: string[]): void => {
  expect({ status, body }).toMatchObject({ status: 409, body: { type: '/problems/lot-made-of-itself' } });
  const detail = String(body['detail']);
  expect([detail, way.filter((code) => !detail.includes(code))]).toEqual([detail, []]);
};

const inputsOf = async (lot: string): Promise<string[]> =>
  (await shop.read<LotView>(`/api/lots/${lot}`)).inputs.map((input) => input.lot);

describe('a lot that would be made of itself', () => {
  it('by a fill entered late with a bucket that was drawn from that tank after it, is refused', async () => {
    await newTank('TA');
    await fill('TA', 'TA-1', 'R', 2);
    await bucket('BA', { tank: 'TA' }, 10);
    expectOfItself(await fill('TA', 'TA-2', 'BA', 5), 'TA-2', 'BA');
    expect(await inputsOf('BA')).toEqual(['TA-1']);
    expect((await fill('TA', 'TA-2', 'BA', 12)).status).toBe(201);
  });

  it('by a fill that is moved to before its bucket was drawn, is refused', async () => {
    await newTank('TB');
    await fill('TB', 'TB-1', 'R', 2);
    await bucket('BB', { tank: 'TB' }, 10);
    const id = (await fill('TB', 'TB-2', 'BB', 12)).body.id;
    expectOfItself(await correct(id, { kind: 'lot', happenedAt: day(5) }), 'TB-2', 'BB');
    expect(await inputsOf('BB')).toEqual(['TB-1']);
  });

  it('by a bucket that is moved to after the fill it went into, is refused', async () => {
    await newTank('TC');
    await fill('TC', 'TC-1', 'R', 2);
    const id = await bucket('BC', { tank: 'TC' }, 10);
    await fill('TC', 'TC-2', 'BC', 12);
    expectOfItself(await correct(id, { kind: 'lot', happenedAt: day(13) }), 'TC-2', 'BC');
  });

  it('by a gun that is hooked up late to a bucket of what it sprayed, is refused', async () => {
    await shop.act('/api/equipment', { code: 'GD', kind: 'gun', description: 'Chopper gun' });
    await shop.act('/api/guns/GD/hook-ups', { feed: 'resin', lot: 'R', happenedAt: day(2) });
    await bucket('BD', { gun: 'GD', feed: 'resin' }, 10);
    await bucket('BD-2', { lot: 'BD' }, 11);
    const late = shop.envelope({ feed: 'resin', lot: 'BD-2', happenedAt: day(5) });
    expectOfItself(await shop.post('/api/guns/GD/hook-ups', late), 'BD', 'BD-2');
    expect(await inputsOf('BD')).toEqual(['R']);
  });

  it('by a bucket that nobody could name, and that is said to be what was made of it, is refused', async () => {
    const unknown = { unidentified: { role: 'resin', looks: 'amber' } };
    await bucket('BE', unknown, 10);
    await bucket('BF', { lot: 'BE' }, 11);
    const [input] = await inputsOf('BE');
    const asked = shop.envelope({ as: 'BF', reason: 'found its label' });
    expectOfItself(await shop.post(`/api/lots/${input}/identifications`, asked), 'BE', 'BF');
    expect(await inputsOf('BE')).toEqual([input]);
  });
});

describe('a bucket whose time of mixing is set right', () => {
  it('is of what the tank held then', async () => {
    await newTank('TM');
    await fill('TM', 'TM-1', 'R', 2);
    await fill('TM', 'TM-2', 'R', 5);
    const id = await bucket('BM', { tank: 'TM' }, 10);
    expect(await inputsOf('BM')).toEqual(['TM-2']);
    expect((await correct(id, { kind: 'lot', happenedAt: day(3) })).status).toBe(201);
    expect(await inputsOf('BM')).toEqual(['TM-1']);
  });
});
