import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { GunView, LotView, PartView, ReachPage } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;

beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.act('/api/equipment', { code: 'G-1', kind: 'gun', description: 'Chopper gun' });
  for (const [lot, material] of [
    ['VE-1', 'RES-VE'],
    ['VE-2', 'RES-VE'],
    ['CAT-1', 'MEKP'],
    ['CAT-2', 'MEKP'],
    ['ROV-1', 'MAT-450'],
    ['GEL-1', 'GEL-W'],
  ] as const)
    await shop.receive(lot, material);
});
afterAll(() => service.close());

const hookUp = (feed: string, to: Fields, more: Fields = {}): Promise<string> =>
  shop.act('/api/guns/G-1/hook-ups', { feed, ...to, ...more });

const kgOf = async (lot: string, hull: string): Promise<number | undefined> => {
  const { items } = await shop.read<ReachPage>(`/api/lots/${lot}/hulls`);
  return items.find((item) => item.hull === hull && !item.possibly)?.kg ?? undefined;
};
const sprayed = (amount: Fields, feed?: string): Fields => ({ gun: 'G-1', ...(feed ? { feed } : {}), amount });

describe('what a gun sprayed', () => {
  it('is what was hooked up to it then, resin and catalyst by its setting, glass by its own amount', async () => {
    await hookUp('resin', { lot: 'VE-1' });
    await hookUp('catalyst', { lot: 'CAT-1' });
    await hookUp('glass', { lot: 'ROV-1' });
    await shop.act('/api/guns/G-1/settings', { catalystPercent: 2 });
    await shop.startHull('601');
    await shop.layer('601', 'L2', [sprayed(kg(51)), sprayed(kg(20), 'glass')]);
    expect(await kgOf('VE-1', '601')).toBeCloseTo(50, 9);
    expect(await kgOf('CAT-1', '601')).toBeCloseTo(1, 9);
    expect(await kgOf('ROV-1', '601')).toBeCloseTo(20, 9);
  });

  it('after another drum was hooked up, is of that drum', async () => {
    await hookUp('resin', { lot: 'VE-2' });
    await shop.startHull('602');
    await shop.layer('602', 'L2', [sprayed(kg(51))]);
    expect([await kgOf('VE-1', '602'), await kgOf('VE-2', '602')]).toEqual([undefined, 50]);
    const { hookUps } = await shop.read<GunView>('/api/guns/G-1');
    expect(hookUps.filter(({ feed }) => feed === 'resin').map(({ lot, until }) => [lot, until !== null])).toEqual([
      ['VE-1', true],
      ['VE-2', false],
    ]);
  });

  it('is corrected when the drum was changed on the night shift and entered in the morning', async () => {
    await shop.startHull('603');
    const night = shop.tick();
    await shop.layer('603', 'L2', [sprayed(kg(10), 'resin')]);
    expect(await kgOf('VE-2', '603')).toBe(10);
    const late = await hookUp('resin', { lot: 'VE-1' }, { happenedAt: night });
    expect([await kgOf('VE-1', '603'), await kgOf('VE-2', '603')]).toEqual([10, undefined]);
    const after = await shop.correct(late, { kind: 'hook-up', lot: 'VE-2' });
    expect([await kgOf('VE-1', '603'), await kgOf('VE-2', '603')]).toEqual([undefined, 10]);
    await shop.correct(after, { kind: 'hook-up', lot: 'VE-1', happenedAt: shop.tick() });
    expect([await kgOf('VE-1', '603'), await kgOf('VE-2', '603')]).toEqual([undefined, 10]);
  });

  it('from a tank is the lot that was in the tank then, also when its fill is entered late', async () => {
    await shop.fill('T1-1', null, [{ lot: 'VE-1', amount: kg(500) }]);
    await hookUp('resin', { tank: 'T1' });
    await shop.startHull('604');
    const late = shop.tick();
    await shop.layer('604', 'L2', [sprayed(kg(40), 'resin')]);
    expect(await kgOf('VE-1', '604')).toBe(40);
    await shop.fill('T1-2', kg(100), [{ lot: 'VE-2', amount: kg(300) }], { happenedAt: late });
    expect([await kgOf('VE-1', '604'), await kgOf('VE-2', '604')]).toEqual([10, 30]);
  });

  it('while nothing was hooked up on record, is unidentified until it is', async () => {
    await shop.act('/api/equipment', { code: 'G-2', kind: 'gun', description: 'Gel coat gun' });
    await shop.startHull('605');
    const before = shop.tick();
    await shop.layer('605', 'L1', [{ gun: 'G-2', feed: 'resin', amount: kg(18) }]);
    const { nonconformities } = await shop.read<PartView>('/api/parts/605-H');
    expect(nonconformities.map(({ rule }) => rule)).toEqual(['unidentified-material']);
    await shop.act('/api/guns/G-2/hook-ups', { feed: 'resin', lot: 'GEL-1', happenedAt: before });
    expect(await kgOf('GEL-1', '605')).toBe(18);
    expect((await shop.read<PartView>('/api/parts/605-H')).nonconformities).toEqual([]);
  });

  it('from a tank that nobody recorded a fill of, follows the fill, also when the hook-up was set right before it', async () => {
    await shop.act('/api/equipment', { code: 'G-4', kind: 'gun', description: 'Gun' });
    await shop.act('/api/tanks', { code: 'T9', material: 'RES-VE', capacityKg: 2_000 });
    await shop.startHull('609');
    const filled = shop.tick();
    const hooked = shop.tick();
    await shop.layer('609', 'L2', [{ gun: 'G-4', feed: 'resin', amount: kg(10) }]);
    const late = await shop.act('/api/guns/G-4/hook-ups', { feed: 'resin', tank: 'T9' });
    await shop.correct(late, { kind: 'hook-up', happenedAt: hooked });
    await shop.act('/api/tanks/T9/fills', {
      ...{ code: 'T9-1', heel: null, happenedAt: filled },
      inputs: [{ lot: 'VE-1', amount: kg(100) }],
    });
    expect(await kgOf('VE-1', '609')).toBe(10);
    const { nonconformities } = await shop.read<PartView>('/api/parts/609-H');
    expect(nonconformities.map(({ rule }) => rule)).toEqual(['layer-out-of-order']);
  });

  it('in litres stays what it was in kilograms, when the drum entered late has no density', async () => {
    await shop.act('/api/equipment', { code: 'G-3', kind: 'gun', description: 'Gun' });
    await shop.act('/api/guns/G-3/hook-ups', { feed: 'resin', lot: 'VE-1' });
    const late = shop.tick();
    await shop.startHull('606');
    await shop.layer('606', 'L2', [
      { gun: 'G-3', feed: 'resin', amount: { quantity: '5', unit: 'L', basis: 'metered' } },
    ]);
    await shop.act('/api/guns/G-3/hook-ups', { feed: 'resin', lot: 'ROV-1', happenedAt: late });
    expect(await kgOf('ROV-1', '606')).toBeCloseTo(5.5, 9);
  });

  it('is split by what the gun was set to then, also when the setting is entered late, or was none', async () => {
    await shop.act('/api/equipment', { code: 'G-5', kind: 'gun', description: 'Chopper gun' });
    for (const [feed, lot] of [
      ['resin', 'VE-2'],
      ['catalyst', 'CAT-2'],
    ] as const)
      await shop.act('/api/guns/G-5/hook-ups', { feed, lot });
    await shop.startHull('620');
    const set = shop.tick();
    await shop.layer('620', 'L2', [{ gun: 'G-5', amount: kg(51) }]);
    const both = async () => [await kgOf('VE-2', '620'), await kgOf('CAT-2', '620')];
    expect(await both()).toEqual([51, undefined]);
    const late = await shop.act('/api/guns/G-5/settings', { catalystPercent: 2, happenedAt: set });
    expect(await both()).toEqual([50, 1]);
    const again = await shop.act('/api/guns/G-5/settings', { catalystPercent: 4, happenedAt: set });
    expect(await both()).toEqual([49.038462, 1.961538]);
    await shop.correct(again);
    expect(await both()).toEqual([50, 1]);
    await shop.act('/api/guns/G-5/settings', { catalystPercent: 3 });
    expect(await both()).toEqual([50, 1]);
    await shop.correct(late);
    expect(await both()).toEqual([51, undefined]);
  });

  it('stays as it was set right by hand, whatever the setting', async () => {
    await shop.startHull('621');
    const set = shop.tick();
    const layer = await shop.layer('621', 'L2', [{ gun: 'G-5', amount: kg(103) }]);
    expect([await kgOf('VE-2', '621'), await kgOf('CAT-2', '621')]).toEqual([100, 3]);
    const [used] = await service.asOwner<{ id: string }>(
      "select id from fact.used where into_id = $1 and feed = 'catalyst'",
      [layer],
    );
    await shop.correct(String(used?.id), { kind: 'used', amount: kg(2.5) });
    await shop.act('/api/guns/G-5/settings', { catalystPercent: 1, happenedAt: set });
    expect([await kgOf('VE-2', '621'), await kgOf('CAT-2', '621')]).toEqual([100, 2.5]);
  });

  it('is split anew when the layer was made at another time, and into a bucket as well', async () => {
    await shop.startHull('622');
    const before = shop.tick();
    const layer = await shop.layer('622', 'L2', [{ gun: 'G-5', amount: kg(51) }]);
    await shop.mix('B-622', [{ gun: 'G-5', amount: kg(51) }]);
    await shop.act('/api/guns/G-5/settings', { catalystPercent: 2, happenedAt: before });
    expect(await kgOf('CAT-2', '622')).toBeCloseTo(1, 9);
    const { inputs } = await shop.read<LotView>('/api/lots/B-622');
    expect(inputs.map(({ lot, amount }) => [lot, amount.kg])).toEqual([
      ['CAT-2', 1],
      ['VE-2', 50],
    ]);
    const early = '2026-01-05T07:01:00.000Z';
    await shop.correct(layer, { kind: 'layer record', startedAt: early, endedAt: early });
    expect(await kgOf('CAT-2', '622')).toBeUndefined();
  });

  it('cannot be of a lot that never came: it is not withdrawn while it is hooked up', async () => {
    const lot = await shop.receive('VE-X', 'RES-VE');
    const hooked = await shop.act('/api/guns/G-1/hook-ups', { feed: 'glass', lot: 'VE-X' });
    const withdraw = (): Promise<{ readonly status: number }> =>
      shop.post('/api/corrections', shop.envelope({ corrects: lot, reason: 'never came' }));
    expect((await withdraw()).status).toBe(409);
    await shop.correct(hooked);
    expect((await withdraw()).status).toBe(201);
  });

  it('names what is wrong: no such gun, a gauge for a gun, litres of two things at once', async () => {
    const at = shop.tick();
    const body = { layer: 'L3', startedAt: at, endedAt: at, happenedAt: at, doneBy: ['LAM-1'] };
    const pointers = async (used: Fields): Promise<unknown> => {
      const { body: answer } = await shop.post('/api/parts/601-H/layers', shop.envelope({ ...body, used: [used] }));
      return (answer as unknown as { errors: { pointer: string }[] }).errors.map(({ pointer }) => pointer);
    };
    expect(await pointers({ gun: 'G-9', amount: kg(1) })).toEqual(['/used/0/gun']);
    expect(await pointers({ gun: 'MG-1', amount: kg(1) })).toEqual(['/used/0/gun']);
    expect(await pointers(sprayed({ quantity: '5', unit: 'L', basis: 'metered' }))).toEqual(['/used/0/amount/unit']);
    expect(await pointers({ lot: 'VE-1', feed: 'resin', amount: kg(1) })).toEqual(['/used/0/feed']);
  });
});

describe('a drop of a drum', () => {
  it('is spread over the layers sprayed by their area, to the last gram', async () => {
    await shop.startHull('611');
    await shop.startHull('612');
    const layers = [
      await shop.layer('611', 'L2', []),
      await shop.layer('612', 'L2', []),
      await shop.layer('612', 'L3', []),
    ];
    const { result } = await shop.receipt('/api/drops', {
      from: { lot: 'VE-2' },
      amount: { quantity: '100', unit: 'kg' },
      over: layers.map((layer) => ({ layer, weight: 12.5 })),
    });
    expect((result as unknown as { parts: { quantity: string }[] }).parts.map(({ quantity }) => quantity)).toEqual([
      '33.334',
      '33.333',
      '33.333',
    ]);
    expect(await kgOf('VE-2', '612')).toBeCloseTo(66.666, 9);
    const { layers: made } = await shop.read<PartView>('/api/parts/611-H');
    expect(made[1]?.record?.used[0]?.amount).toMatchObject({ quantity: '33.334', basis: 'apportioned' });
  });

  it('over a layer named twice, or that is not there, is refused and the field named', async () => {
    const layer = await shop.layer('611', 'L3', []);
    const pointers = async (over: readonly Fields[]): Promise<unknown> => {
      const body = { from: { lot: 'VE-2' }, amount: { quantity: '1', unit: 'kg' }, over };
      const answer = await shop.post('/api/drops', shop.envelope(body));
      return (answer.body as unknown as { errors: { pointer: string }[] }).errors.map(({ pointer }) => pointer);
    };
    expect(
      await pointers([
        { layer, weight: 1 },
        { layer, weight: 1 },
      ]),
    ).toEqual(['/over/1/layer']);
    expect(await pointers([{ layer: '5f0c1f5e-6f0e-4f43-9b1d-2f8f1f0b7a11', weight: 1 }])).toEqual(['/over/0/layer']);
    expect(
      await pointers([
        { layer, weight: 1e-9 },
        { layer: await shop.layer('611', 'L1', []), weight: 1e6 },
      ]),
    ).toEqual(['/over']);
  });
});
