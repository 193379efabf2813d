import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { LayerRecordView, PartView, PlantRulesView, VerdictView } from '@hull-record/contracts';
import { openJudgedShop, rulesAbout } from '../support/judged-shop.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await openJudgedShop(shop);
});
afterAll(() => service.close());

const layerOf = async (part: string, code: string): Promise<LayerRecordView> => {
  const { layers } = await shop.read<PartView>(`/api/parts/${part}-H`);
  return layers.find(({ scheduled }) => scheduled.code === code)?.record as LayerRecordView;
};
const verdictOn = async (part: string, code: string, topic: string): Promise<VerdictView | undefined> =>
  (await layerOf(part, code)).verdicts.find((verdict) => verdict.topic === topic);
/** A layer that was begun, and ended, so many hours into 20 January. */
const layerAt = (hull: string, layer: string, hour: number, more: Fields = {}): Promise<string> => {
  const at = new Date(Date.UTC(2026, 0, 20) + hour * 3_600_000).toISOString();
  const used = [{ lot: 'RB-1', amount: kg(20) }];
  return shop.layer(hull, layer, used, { startedAt: at, endedAt: at, ...more });
};

describe('the time to the next layer', () => {
  it('is shown as the window in which the next layer bonds', async () => {
    await shop.startHull('V1');
    await layerAt('V1', 'A', 0);
    expect((await layerOf('V1', 'A')).nextLayer).toEqual({
      ...{ from: '2026-01-20T01:00:00.000Z', until: '2026-01-21T00:00:00.000Z' },
      source: 'Barrier resin, issue 1',
    });
  });

  it('kept, is a primary bond', async () => {
    await layerAt('V1', 'B', 5);
    expect(await verdictOn('V1', 'B', 'lay-up window')).toMatchObject({
      verdict: 'inside',
      figures: { bond: 'primary', waitedMinutes: 300, earliestMinutes: 60, latestMinutes: 1440 },
    });
  });

  it('too early is held against the layer', async () => {
    await shop.startHull('V2');
    await layerAt('V2', 'A', 0);
    const id = await layerAt('V2', 'B', 0.5);
    expect(await verdictOn('V2', 'B', 'lay-up window')).toMatchObject({
      verdict: 'outside',
      figures: { bond: 'too early' },
    });
    expect(await rulesAbout(shop, id)).toEqual(['lay-up-too-early']);
  });

  it('passed, stops the plan; made all the same it is a secondary bond that asks for a prepared surface', async () => {
    await shop.startHull('V3');
    await layerAt('V3', 'A', 0);
    const at = '2026-01-21T06:00:00.000Z';
    const layer = { layer: 'B', startedAt: at, endedAt: at, happenedAt: at, doneBy: ['LAM-1'] };
    const plan = await shop.post('/api/parts/V3-H/layers/check', shop.envelope(layer));
    expect((plan.body as unknown as { stops: { rule: string }[] }).stops.map(({ rule }) => rule)).toEqual([
      'lay-up-window-passed',
    ]);
    const id = await layerAt('V3', 'B', 30);
    expect(await rulesAbout(shop, id)).toEqual(['lay-up-window-passed']);
  });

  it('passed with the surface prepared is said, and not held against it', async () => {
    await shop.startHull('V4');
    await layerAt('V4', 'A', 0);
    const id = await layerAt('V4', 'B', 30, { surfacePrepared: 'wiped, abraded with 80 grit, dust removed' });
    expect(await verdictOn('V4', 'B', 'lay-up window')).toMatchObject({
      verdict: 'outside',
      figures: { bond: 'secondary' },
      detail: expect.stringContaining('80 grit'),
    });
    expect(await rulesAbout(shop, id)).toEqual([]);
  });

  it('is judged again when the layer before is set right, and forgotten when it never was', async () => {
    await shop.startHull('V5');
    const under = await layerAt('V5', 'A', 0);
    await layerAt('V5', 'B', 30);
    const at = '2026-01-21T02:00:00.000Z';
    const now = await shop.correct(under, { kind: 'layer record', startedAt: at, endedAt: at });
    expect(await verdictOn('V5', 'B', 'lay-up window')).toMatchObject({ verdict: 'inside', corrected: true });
    await shop.correct(now);
    expect(await verdictOn('V5', 'B', 'lay-up window')).toBeUndefined();
  });
});

describe('two layers of a part that are entered at once', () => {
  it('are judged by each other, whichever was first', async () => {
    const hulls = ['V20', 'V21', 'V22', 'V23', 'V24', 'V25'];
    for (const hull of hulls) await shop.startHull(hull);
    await Promise.all(hulls.flatMap((hull) => [layerAt(hull, 'B', 5), layerAt(hull, 'A', 0)]));
    for (const hull of hulls) {
      expect(await verdictOn(hull, 'B', 'lay-up window')).toMatchObject({ verdict: 'inside' });
      const { nonconformities } = await shop.read<PartView>(`/api/parts/${hull}-H`);
      expect(nonconformities).toEqual([]);
    }
  });
});

describe('the surface of the mold', () => {
  // Dew point of 25 C and 60 %: 16.7 C (Magnus, Sonntag 1990; sensor maker's table).
  const climate = (mold: number): Fields => ({
    climate: {
      airTemperature: { value: 25, unit: 'C' },
      moldTemperature: { value: mold, unit: 'C' },
      relativeHumidity: { value: 60, unit: '%' },
    },
  });

  it('near the dew point is held against the layer, by the rule of the plant then', async () => {
    await shop.startHull('V6');
    const id = await layerAt('V6', 'A', 0, climate(19.6));
    const verdict = await verdictOn('V6', 'A', 'mold surface over dew point');
    expect(verdict).toMatchObject({ verdict: 'outside', figures: { leastMarginC: 3 } });
    expect(verdict?.figures['dewPointC']).toBeCloseTo(16.7, 1);
    expect(await rulesAbout(shop, id)).toEqual(['dew-point-margin']);
    await shop.act('/api/plant-rules', {
      ...{ marginRule: '5 F', shopWindow: null, barcolFraction: 0.9, reason: 'as agreed', enteredBy: 'QUA-1' },
      happenedAt: '2026-01-19T00:00:00.000Z',
    });
    expect(await verdictOn('V6', 'A', 'mold surface over dew point')).toMatchObject({ verdict: 'outside' });
    await shop.startHull('V7');
    // The same margin of 2.9 C: the other published rule, 5 F, is 2.78 C.
    await layerAt('V7', 'A', 0, climate(19.6));
    expect(await verdictOn('V7', 'A', 'mold surface over dew point')).toMatchObject({ verdict: 'inside' });
  });

  it('is not judged while one of the three is not measured', async () => {
    await shop.startHull('V8');
    await layerAt('V8', 'A', 0, { climate: { airTemperature: { value: 25, unit: 'C' } } });
    expect((await layerOf('V8', 'A')).verdicts).toEqual([]);
  });

  it('goes by rules that quality chose, and nobody else', async () => {
    const rules = { marginRule: '3 C', shopWindow: 'class rule', barcolFraction: 1, reason: 'x', enteredBy: 'QUA-1' };
    const byAnother = shop.envelope({ ...rules, enteredBy: 'REC-1' });
    expect(await shop.post('/api/plant-rules', byAnother)).toMatchObject({ status: 403 });
    expect(await shop.post('/api/plant-rules', shop.envelope({ ...rules, barcolFraction: 1.1 }))).toMatchObject({
      status: 400,
      body: { errors: [{ pointer: '/barcolFraction' }] },
    });
    const { now, sources } = await shop.read<PlantRulesView>('/api/plant-rules');
    expect(now).toEqual({ marginRule: '5 F', shopWindow: null, barcolFraction: 0.9 });
    expect(sources.map(({ rule }) => rule)).toContain('margin 3 C');
  });
});

describe('the hardness of a layer', () => {
  const barcol = (id: string, values: readonly number[]): Promise<unknown> =>
    shop.receipt(`/api/layers/${id}/readings`, {
      ...{ what: 'Barcol hardness', unit: 'Barcol', happenedAt: '2026-01-22T00:00:00.000Z' },
      spots: values.map((value) => ({ value: String(value) })),
    });

  it('is the mean without the highest and the lowest, against the part of the minimum that the plant asks', async () => {
    await shop.startHull('V9');
    const id = await layerAt('V9', 'A', 0);
    await barcol(id, [37, 36, 38, 37, 36, 35, 37, 38, 50, 10]);
    const verdict = await verdictOn('V9', 'A', 'hardness');
    expect(verdict).toMatchObject({
      verdict: 'inside',
      figures: { readings: 10, trimmedMeanBarcol: 36.75, leastBarcol: 36 },
    });
    expect(verdict?.source).toContain('from memory');
    expect(await rulesAbout(shop, id)).toEqual([]);
  });

  it('too low is held against the layer; with two readings it cannot be judged', async () => {
    await shop.startHull('V10');
    const id = await layerAt('V10', 'A', 0);
    await barcol(id, [30, 31]);
    expect(await verdictOn('V10', 'A', 'hardness')).toMatchObject({ verdict: 'cannot be judged' });
    await barcol(id, [32, 30, 31]);
    expect(await verdictOn('V10', 'A', 'hardness')).toMatchObject({
      verdict: 'outside',
      figures: { readings: 5 },
      corrected: true,
    });
    expect(await rulesAbout(shop, id)).toEqual(['hardness-too-low']);
  });

  it('goes with the layer when it is withdrawn', async () => {
    const { id } = await layerOf('V10', 'A');
    await shop.correct(id);
    const left =
      'select from fact.verdict v where v.about_id = $1 and not exists (select from fact.correction c where c.corrects = v.id)';
    expect(await service.asOwner(left, [id])).toEqual([]);
  });
});
