import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ClimateLogView, PartView, VerdictView } from '@hull-record/contracts';
import { openJudgedShop, rulesAbout } from '../support/judged-shop.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await openJudgedShop(shop);
  await shop.act('/api/plant-rules', {
    ...{ marginRule: '3 C', shopWindow: 'class rule', barcolFraction: 1, reason: 'class', enteredBy: 'QUA-1' },
    happenedAt: '2026-01-06T00:00:00.000Z',
  });
});
afterAll(() => service.close());

const hour = (n: number): string => new Date(Date.UTC(2026, 0, 20) + n * 3_600_000).toISOString();
const log = (area: string, points: readonly (readonly [at: number, airC: number, humidity: number])[]) =>
  shop.receipt(`/api/areas/${area}/climate`, {
    points: points.map(([at, value, humidity]) => ({
      at: hour(at),
      airTemperature: { value, unit: 'C' },
      relativeHumidity: { value: humidity, unit: '%' },
    })),
  });
/** Every two hours, so many hours from noon of the 19th, at 20 C and 60 %. */
const steady = (until: number): (readonly [number, number, number])[] =>
  Array.from({ length: (until + 30) / 2 }, (_, i) => [i * 2 - 30, 20, 60] as const);
const layerIn = async (hull: string, area: string): Promise<string> => {
  await shop.startHull(hull);
  const times = { startedAt: hour(0), endedAt: hour(2), happenedAt: hour(2) };
  return shop.layer(hull, 'A', [{ lot: 'RB-1', amount: kg(20) }], { ...times, area });
};
const climateOf = async (hull: string): Promise<VerdictView | undefined> => {
  const { layers } = await shop.read<PartView>(`/api/parts/${hull}-H`);
  return layers.flatMap(({ record }) => record?.verdicts ?? []).find(({ topic }) => topic === 'shop climate');
};

describe('the climate log of an area', () => {
  it('is joined to a layer by time, and judged by the window of the plant', async () => {
    await log('BAY-1', steady(4));
    await layerIn('C1', 'BAY-1');
    expect(await climateOf('C1')).toMatchObject({
      verdict: 'inside',
      figures: { area: 'BAY-1', coldestC: 20, warmestC: 20, dampestPercent: 60 },
      source: expect.stringContaining('102.2-5'),
    });
  });

  it('that comes after the layer judges it then: too humid, and too cold too shortly before', async () => {
    const id = await layerIn('C2', 'BAY-2');
    expect(await climateOf('C2')).toMatchObject({ verdict: 'cannot be judged' });
    expect(await rulesAbout(shop, id)).toEqual([]);
    await log('BAY-2', [
      [-6, 16, 60],
      [-4, 19, 60],
      [1, 20, 85],
    ]);
    const verdict = await climateOf('C2');
    expect(verdict).toMatchObject({ verdict: 'outside', corrected: true });
    expect(verdict?.detail).toContain('85 % is over 80 %');
    expect(verdict?.detail).toContain('24 h are asked');
    expect(await rulesAbout(shop, id)).toEqual(['shop-climate-outside']);
  });

  it('is shown with dew points and the spread of a day', async () => {
    const { points, largestDailySpreadC } = await shop.read<ClimateLogView>(`/api/areas/BAY-2/climate?to=${hour(0)}`);
    expect(points.map(({ airC }) => Math.round(airC))).toEqual([16, 19]);
    expect(largestDailySpreadC).toBeCloseTo(3, 9);
    // By hand, with the constants of Sonntag 1990: ln 0.6 + 17.62 x 19 / 262.12 = 0.766375; 243.12 x that / (17.62 - that).
    expect(points[1]?.dewPointC).toBeCloseTo(11.0553, 3);
  });

  it('names the point that cannot be, that stands twice, or is on record', async () => {
    const point = (at: number, humidity: number): Fields => ({
      at: hour(at),
      airTemperature: { value: 20, unit: 'C' },
      relativeHumidity: { value: humidity, unit: '%' },
    });
    const send = (points: readonly Fields[]) => shop.post('/api/areas/BAY-1/climate', shop.envelope({ points }));
    expect(await send([point(40, 60), point(41, 101)])).toMatchObject({
      status: 400,
      body: { errors: [{ pointer: '/points/1' }] },
    });
    expect(await send([point(40, 60), point(40, 61)])).toMatchObject({
      status: 400,
      body: { errors: [{ pointer: '/points/1/at' }] },
    });
    expect(await send([point(0, 61)])).toMatchObject({ status: 409, body: { type: '/problems/climate-on-record' } });
    expect((await shop.read<ClimateLogView>(`/api/areas/BAY-1/climate?from=${hour(39)}`)).points).toEqual([]);
  });

  it('set right, judges again', async () => {
    const { points } = await shop.read<ClimateLogView>(`/api/areas/BAY-2/climate?from=${hour(1)}`);
    await shop.correct(String(points[0]?.id));
    expect(await climateOf('C2')).toMatchObject({ verdict: 'cannot be judged' });
  });
});

describe('the geometry of a repair', () => {
  const geometry = { originalMm: 6, damageDepthMm: 6, taperMm: 72, patchMm: 6 };
  const repairOf = async (hull: string, more: Fields): Promise<string> => {
    await shop.startHull(hull);
    return shop.repair(`${hull}-H`, [await shop.defect(`${hull}-H`)], more);
  };
  const verdictOn = async (hull: string): Promise<VerdictView | undefined> =>
    (await shop.read<PartView>(`/api/parts/${hull}-H`)).repairs[0]?.verdicts[0];

  it('of 12:1 and the thickness it replaces is inside', async () => {
    await repairOf('G1', { geometry });
    expect(await verdictOn('G1')).toMatchObject({
      ...{ topic: 'repair geometry', verdict: 'inside', figures: { taperRatio: 12, leastTaperRatio: 12 } },
      source: expect.stringContaining('Epoxyworks 38'),
    });
  });

  it('too steep and too thin is said with figures, stops the plan, and is kept when it was done', async () => {
    await shop.startHull('G2');
    const steep = { ...geometry, taperMm: 48, patchMm: 4 };
    const fields = { defects: [await shop.defect('G2-H')], procedure: 'x', doneBy: ['PAT-1'], geometry: steep };
    const plan = await shop.post('/api/parts/G2-H/repairs/check', shop.envelope(fields));
    expect(plan.body).toMatchObject({
      stops: [{ rule: 'repair-geometry', detail: expect.stringContaining('8.00:1 where 12:1') }],
    });
    expect((await shop.read<PartView>('/api/parts/G2-H')).repairs).toEqual([]);
    const id = await shop.act('/api/parts/G2-H/repairs', fields);
    expect((await verdictOn('G2'))?.detail).toContain('A patch of 4 mm replaces 6 mm');
    expect(await rulesAbout(shop, id)).toEqual(['repair-geometry']);
  });

  it('from both sides needs half the taper each, and of a cored panel each skin is judged for itself', async () => {
    await repairOf('G3', { geometry: { ...geometry, taperMm: 36, sides: 'both', skin: 'outer' } });
    expect(await verdictOn('G3')).toMatchObject({ verdict: 'inside', figures: { taperRatio: 12, sides: 'both' } });
  });

  it('deeper than the laminate is refused, and the field named', async () => {
    await shop.startHull('G4');
    const fields = { defects: [await shop.defect('G4-H')], procedure: 'x', doneBy: ['PAT-1'] };
    const deep = shop.envelope({ ...fields, geometry: { ...geometry, damageDepthMm: 7 } });
    expect(await shop.post('/api/parts/G4-H/repairs', deep)).toMatchObject({
      status: 400,
      body: { errors: [{ pointer: '/geometry/damageDepthMm' }] },
    });
  });
});
