import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ModelView, PartView, VerdictView } from '@hull-record/contracts';
import { of, openAmountsShop } from '../support/amounts-shop.js';
import { rulesAbout } from '../support/judged-shop.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await openAmountsShop(shop);
});
afterAll(() => service.close());

const verdictOn = async (hull: string, code: string, topic: string): Promise<VerdictView | undefined> => {
  const { layers } = await shop.read<PartView>(`/api/parts/${hull}-H`);
  const made = layers.find(({ scheduled }) => scheduled.code === code)?.record;
  return made?.verdicts.find((verdict) => verdict.topic === topic);
};
const readFilm = (layer: string, value: string): Promise<string> =>
  shop.act(`/api/layers/${layer}/readings`, { what: 'wet film', unit: 'um', spots: [{ value }] });
const readThickness = (layer: string, values: readonly string[]): Promise<string> =>
  shop.act(`/api/layers/${layer}/readings`, {
    ...{ what: 'thickness', unit: 'mm', spots: values.map((value) => ({ value })) },
  });

describe('gel coat used against the film read', () => {
  it('fits when the film holds what was used less what may be lost', async () => {
    await shop.startHull('F1');
    const layer = await shop.layer('F1', 'G', [of('AG-1', 7.5)]);
    expect(await verdictOn('F1', 'G', 'film against use')).toBeUndefined();
    await readFilm(layer, '500');
    const verdict = await verdictOn('F1', 'G', 'film against use');
    expect(verdict).toMatchObject({ verdict: 'inside', figures: { usedKg: 7.5, areaM2: 10, lossAllowance: 0.2 } });
    // 10 m2 x 500 um x 1.28 kg/L
    expect(verdict?.figures['expectedKg']).toBeCloseTo(6.4, 9);
    expect(await rulesAbout(shop, layer)).toEqual([]);
  });

  it('does not fit when twice as much was used; and is held against the layer', async () => {
    await shop.startHull('F2');
    const layer = await shop.layer('F2', 'G', [of('AG-1', 14)]);
    await readFilm(layer, '500');
    expect(await verdictOn('F2', 'G', 'film against use')).toMatchObject({ verdict: 'outside' });
    expect(await rulesAbout(shop, layer)).toEqual(['film-does-not-fit']);
  });

  it('is judged again when the other bucket is entered: nothing stays open that is not so', async () => {
    await shop.startHull('F3');
    const layer = await shop.layer('F3', 'G', [of('AG-1', 3)]);
    await readFilm(layer, '500');
    expect(await rulesAbout(shop, layer)).toEqual(['film-does-not-fit']);
    await shop.act(`/api/layers/${layer}/used`, { used: [of('AG-1', 1)] });
    expect(await rulesAbout(shop, layer)).toEqual(['film-does-not-fit']);
    await shop.act(`/api/layers/${layer}/used`, { used: [of('AG-1', 3.5)] });
    expect(await verdictOn('F3', 'G', 'film against use')).toMatchObject({ verdict: 'inside', corrected: true });
    expect(await rulesAbout(shop, layer)).toEqual([]);
  });
});

describe('glass used against the schedule', () => {
  it('is within the tolerance, and the resin is told with it', async () => {
    await shop.startHull('G1');
    await shop.layer('G1', 'G', [of('AG-1', 7)]);
    await shop.layer('G1', 'A', [of('AM-1', 4.6), of('AR-1', 11)]);
    const verdict = await verdictOn('G1', 'A', 'glass against schedule');
    expect(verdict).toMatchObject({ verdict: 'inside', figures: { usedKg: 4.6, resinUsedKg: 11 } });
    expect(verdict?.figures['scheduledKg']).toBeCloseTo(4.5, 9);
    expect(verdict?.figures['resinScheduledKg']).toBeCloseTo(10.5, 9);
  });

  it('is outside when a ply is missing', async () => {
    await shop.startHull('G2');
    await shop.layer('G2', 'G', [of('AG-1', 7)]);
    await shop.layer('G2', 'A', [of('AM-1', 4.5), of('AR-1', 11)]);
    const layer = await shop.layer('G2', 'B', [of('AM-1', 4.5), of('AR-1', 21)]);
    expect(await verdictOn('G2', 'B', 'glass against schedule')).toMatchObject({
      verdict: 'outside',
      detail: expect.stringContaining('50.0 % less'),
    });
    expect(await rulesAbout(shop, layer)).toEqual(['glass-outside-schedule']);
  });
});

describe('thickness measured against that of the plies', () => {
  it('is that of all plies up to the layer, without the gel coat, and gives the fibre fraction back', async () => {
    // Three plies of 450 g/m2 at 0.30: 3 x 1.0508 mm (from first principles; the reference table gives 1.0508).
    const layer = await shop.layer('G1', 'B', [of('AM-1', 9), of('AR-1', 21)]);
    await readThickness(layer, Array<string>(10).fill('3.15'));
    const verdict = await verdictOn('G1', 'B', 'laminate thickness');
    expect(verdict).toMatchObject({ verdict: 'inside', figures: { points: 10, thinPoints: 0 } });
    expect(verdict?.figures['expectedMm']).toBeCloseTo(3.1523, 3);
    expect(verdict?.figures['measuredFibreMassFraction']).toBeCloseTo(0.3, 2);
  });

  it('one thin point is thin, whatever the mean; fewer than ten points are said', async () => {
    await shop.startHull('T1');
    await shop.layer('T1', 'G', [of('AG-1', 7)]);
    const layer = await shop.layer('T1', 'A', [of('AM-1', 4.5), of('AR-1', 11)]);
    await readThickness(layer, ['1.2', '1.2', '0.9']);
    expect(await verdictOn('T1', 'A', 'laminate thickness')).toMatchObject({
      verdict: 'outside',
      detail: expect.stringContaining('3 points; at least 10 are asked.'),
    });
    expect(await rulesAbout(shop, layer)).toEqual(['thickness-outside']);
  });
});

describe('a schedule that names plies', () => {
  it('says what each layer takes', async () => {
    const models = await shop.read<ModelView[]>('/api/models');
    const schedule = models.flatMap(({ schedules }) => schedules).find(({ version }) => version === 8);
    expect(schedule?.layers[0]?.demand).toBeNull();
    expect(schedule?.layers[2]?.demand).toMatchObject({
      ...{ glassKg: expect.closeTo(9, 9), resinKg: expect.closeTo(21, 9), thicknessMm: expect.closeTo(2.1016, 4) },
    });
  });

  it('refuses a bare ounce, and asks which', async () => {
    const ply = { arealMass: { value: 1.5, unit: 'oz' }, fibreMassFraction: 0.3 };
    const layers = [{ code: 'A', name: 'Skin', materials: [{ material: 'MAT-450' }], laminate: { plies: [ply] } }];
    const { status, body } = await shop.post(
      '/api/models/TS86/schedules',
      shop.envelope({ partKind: 'hull molding', version: 9, layers }),
    );
    expect(status).toBe(400);
    expect(body).toMatchObject({
      errors: [
        {
          pointer: '/layers/0/laminate/plies/0/arealMass/unit',
          detail: 'Which ounce: oz/ft2, as mat is sold, or oz/yd2, as cloth is?',
        },
      ],
    });
  });
});
