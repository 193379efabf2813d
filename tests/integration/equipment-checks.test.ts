import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HullView, PartView, SuspectPage } from '@hull-record/contracts';
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

describe('a mil gauge found unfit', () => {
  let layers: { early: string; between: string };
  const check = (good: boolean, more: Fields = {}): Promise<string> =>
    shop.act('/api/equipment/MG-1/checks', { what: 'reference film', good, ...more });
  const suspects = async (): Promise<readonly string[]> => {
    const { items } = await shop.read<SuspectPage>('/api/equipment/MG-1/suspects');
    return items.map(({ what, part }) => `${part} ${what}`);
  };

  beforeAll(async () => {
    await shop.startHull('621');
    await shop.startHull('622');
    layers = {
      early: await shop.layer('621', 'L1', [{ lot: 'GEL-1', amount: kg(18) }]),
      between: await shop.layer('622', 'L1', [{ lot: 'GEL-1', amount: kg(18) }]),
    };
    await shop.film(layers.early, [[16, 18]]);
    await check(true);
    await shop.film(layers.between, [[18, 20]]);
  });

  it('puts in doubt what was read since its last good check, and nothing before; values stay', async () => {
    expect(await suspects()).toEqual([]);
    await check(false);
    expect(await suspects()).toEqual(['622-H wet film, spot 1: 18 mil']);
    const { layers: made } = await shop.read<PartView>('/api/parts/622-H');
    expect(made[0]?.record?.readings).toMatchObject([{ value: '18', suspect: true }]);
    expect((await shop.read<PartView>('/api/parts/621-H')).layers[0]?.record?.readings).toMatchObject([
      { suspect: false },
    ]);
  });

  it('also what is read with it afterwards, until it is good again', async () => {
    await shop.film(layers.between, [[18, 20]]);
    expect(await suspects()).toHaveLength(2);
    await check(true);
    await shop.film(layers.between, [[18, 20]]);
    expect(await suspects()).toHaveLength(2);
  });

  it('stands in the way of release until quality disposes of the check', async () => {
    const inTheWay = async (): Promise<readonly string[]> =>
      (await shop.read<HullView>('/api/hulls/622')).release.inTheWay
        .filter(({ rule }) => rule === 'equipment-suspect')
        .map(({ about }) => String(about));
    const [bad] = await inTheWay();
    expect(await inTheWay()).toHaveLength(1);
    const dispose = {
      of: 'equipment check',
      about: bad,
      disposition: 'use as is',
      concession: 'C-621',
      reason: 'read 0.5 mil low',
    };
    await shop.act('/api/dispositions', dispose);
    expect(await inTheWay()).toEqual([]);
    expect(await suspects()).toHaveLength(2);
  });

  it('is not cleared by reading again with no gauge named, but with another', async () => {
    await shop.act('/api/equipment', { code: 'MG-3', kind: 'gauge', description: 'Mil gauge' });
    await shop.act('/api/equipment', { code: 'MG-4', kind: 'gauge', description: 'Mil gauge' });
    await shop.startHull('623');
    const layer = await shop.layer('623', 'L1', [{ lot: 'GEL-1', amount: kg(18) }]);
    const { result } = await shop.film(layer, [[18, 20]], { equipment: 'MG-3' });
    const readsAgain = (result as unknown as { spots: [{ id: string }] }).spots[0].id;
    await shop.act('/api/equipment/MG-3/checks', { what: 'reference film', good: false });
    const again = (more: object): Promise<unknown> =>
      shop.receipt(`/api/layers/${layer}/readings`, {
        ...{ what: 'wet film', unit: 'mil', spots: [{ lastWet: '18', nextDry: '20', readsAgain }] },
        ...more,
      });
    const doubts = async (): Promise<number> =>
      (await shop.read<HullView>('/api/hulls/623')).release.inTheWay.filter(({ rule }) => rule === 'equipment-suspect')
        .length;
    await again({});
    expect(await doubts()).toBe(1);
    await again({ equipment: 'MG-4' });
    expect(await doubts()).toBe(0);
  });

  it('stands in the way of a repair too, read with it or sprayed with an unfit gun', async () => {
    for (const [code, kind] of [
      ['BC-1', 'gauge'],
      ['G-5', 'gun'],
    ] as const)
      await shop.act('/api/equipment', { code, kind, description: 'For a repair' });
    await shop.act('/api/guns/G-5/hook-ups', { feed: 'resin', lot: 'VE-1' });
    await shop.startHull('624');
    const used = [{ gun: 'G-5', feed: 'resin', amount: kg(1) }];
    const repair = await shop.repair('624-H', [await shop.defect('624-H')], { used });
    const hardness = { what: 'Barcol hardness', unit: 'Barcol', equipment: 'BC-1', spots: [{ value: '40' }] };
    await shop.act(`/api/repairs/${repair}/readings`, hardness);
    await shop.act('/api/equipment/BC-1/checks', { what: 'reference hardness', good: false });
    await shop.act('/api/equipment/G-5/checks', { what: 'gel test', good: false });
    const { inTheWay } = (await shop.read<HullView>('/api/hulls/624')).release;
    const details = inTheWay.filter(({ rule }) => rule === 'equipment-suspect').map(({ detail }) => detail);
    expect(details.sort()).toEqual([expect.stringContaining('Equipment BC-1'), expect.stringContaining('Gun G-5')]);
  });

  it('a good check that is entered late takes the doubt away from what was read before it', async () => {
    await shop.act('/api/equipment', { code: 'MG-2', kind: 'gauge', description: 'Mil gauge' });
    await shop.film(layers.early, [[16, 18]], { equipment: 'MG-2' });
    const late = shop.tick();
    await shop.act('/api/equipment/MG-2/checks', { what: 'reference film', good: false });
    const list = async (): Promise<number> =>
      (await shop.read<SuspectPage>('/api/equipment/MG-2/suspects')).items.length;
    expect(await list()).toBe(1);
    const good = await shop.act('/api/equipment/MG-2/checks', { what: 'reference film', good: true, happenedAt: late });
    expect(await list()).toBe(0);
    await shop.correct(good);
    expect(await list()).toBe(1);
  });
});

describe('a timed catch', () => {
  it('is worked out and judged by its limits; what the gun sprayed since the last good one is in doubt', async () => {
    const catchOf = (catalystG: number): Fields => ({
      what: 'timed catch',
      caught: { seconds: 30, resinG: 1_000, catalystG },
      limits: { min: 1.2, max: 3, unit: '%' },
    });
    const good = await shop.receipt('/api/equipment/G-1/checks', catchOf(18));
    expect(good.result).toMatchObject({
      good: true,
      value: 1.8,
      unit: '%',
      worked: { kgPerMinute: 2, catalystPercent: 1.8 },
    });
    await shop.startHull('631');
    await shop.layer('631', 'L2', [{ gun: 'G-1', feed: 'resin', amount: kg(7) }]);
    const bad = await shop.receipt('/api/equipment/G-1/checks', catchOf(11));
    expect(bad.result).toMatchObject({ good: false, value: 1.1 });
    const { items } = await shop.read<SuspectPage>('/api/equipment/G-1/suspects');
    expect(items.map(({ kind, hull }) => [kind, hull])).toEqual([['used', '631']]);
  });

  it('without limits says itself whether it was good; a verdict against its own value is refused', async () => {
    const pointers = async (check: Fields): Promise<unknown> => {
      const { body } = await shop.post('/api/equipment/G-1/checks', shop.envelope(check));
      return (body as unknown as { errors: { pointer: string }[] }).errors.map(({ pointer }) => pointer);
    };
    expect(await pointers({ what: 'gel test', value: 14, unit: 'min' })).toEqual(['/good']);
    expect(
      await pointers({ what: 'gel test', value: 14, unit: 'min', limits: { max: 10, unit: 'min' }, good: true }),
    ).toEqual(['/good']);
    expect(await pointers({ what: 'gel test', value: 14, unit: 'min', limits: { max: 10, unit: 'mil' } })).toEqual([
      '/limits',
    ]);
    expect(await pointers({ what: 'gel test', value: 14, good: true })).toEqual(['/unit']);
  });
});
