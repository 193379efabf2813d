import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { DefectView, FlawLimitsView, PartView } from '@hull-record/contracts';
import { rulesAbout } from '../support/judged-shop.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.startHull('D1');
});
afterAll(() => service.close());

const place = { surface: 'shell', side: 'port', fromTransomMm: 3_000, girthMm: 500 };
const report = async (kind: string, more: Fields = {}): Promise<DefectView> => {
  const id = await shop.act('/api/parts/D1-H/defects', { kind, place, ...more });
  return shop.read<DefectView>(`/api/defects/${id}`);
};

describe('the acceptance level of flaws', () => {
  it('is none until quality chooses one, and then holds from that time on', async () => {
    const before = await report('air-bubble', { lengthMm: 3.1 });
    expect(before.verdicts).toEqual([]);
    await shop.act('/api/flaw-limits', { enteredBy: 'QUA-1', level: 'III', reason: 'agreed' });
    const after = await report('air-bubble', { lengthMm: 3.1, widthMm: 2 });
    expect(after.verdicts).toMatchObject([
      {
        ...{ topic: 'flaw acceptance', verdict: 'outside', detail: 'Level III: 3.1 mm is over 3 mm.' },
        source: expect.stringContaining('withdrawn 2024'),
      },
    ]);
    expect((await shop.read<DefectView>(`/api/defects/${before.id}`)).verdicts).toEqual([]);
  });

  it('opens nothing beside the defect: the numbers are defaults from memory', async () => {
    const { id } = await report('air-bubble', { lengthMm: 30 });
    expect(await rulesAbout(shop, id)).toEqual([]);
  });

  it('counts in an area: 3 in 1 in2 pass at level III and not at II', async () => {
    const counted = { lengthMm: 1, counted: 3, countedAreaM2: 0.00064516 };
    expect((await report('air-bubble', counted)).verdicts).toMatchObject([{ verdict: 'inside' }]);
    await shop.act('/api/flaw-limits', { enteredBy: 'QUA-1', level: 'II', reason: 'a visible surface' });
    expect((await report('air-bubble', counted)).verdicts).toMatchObject([{ verdict: 'outside' }]);
  });

  it('cannot be judged without a size, and is judged again when it is set', async () => {
    const { id, verdicts } = await report('chip');
    expect(verdicts).toMatchObject([{ verdict: 'cannot be judged', detail: 'Level II: No size was recorded.' }]);
    await shop.act('/api/corrections', {
      ...{ corrects: id, reason: 'measured', set: { kind: 'defect', lengthMm: 2.5 } },
    });
    expect((await shop.read<DefectView>(`/api/defects/${id}`)).verdicts).toMatchObject([
      { verdict: 'inside', corrected: true },
    ]);
  });

  it('stands in a table whose rows the plant can replace; each says how sure it is', async () => {
    const chip = { kind: 'chip', II: { mm: 1, inches: 0.04 }, III: null, source: 'Drawing note (invented)' };
    await shop.act('/api/flaw-limits', { enteredBy: 'QUA-1', level: 'II', rows: [chip], reason: 'drawing' });
    const table = await shop.read<FlawLimitsView>('/api/flaw-limits');
    expect(table.rows.filter(({ kind }) => kind === 'chip')).toEqual([chip]);
    expect(table.rows.find(({ kind }) => kind === 'wash')?.source).toContain('from memory');
    expect(table.history).toHaveLength(3);
    expect((await report('chip', { lengthMm: 2.5 })).verdicts).toMatchObject([
      { verdict: 'outside', source: 'Drawing note (invented)' },
    ]);
  });

  it('is chosen by quality alone, one row a kind', async () => {
    const chip = { kind: 'chip', II: null, III: null, source: 'x' };
    const twice = shop.envelope({ enteredBy: 'QUA-1', level: 'II', rows: [chip, chip], reason: 'x' });
    expect(await shop.post('/api/flaw-limits', twice)).toMatchObject({
      ...{ status: 400, body: { errors: [{ pointer: '/rows/1/kind' }] } },
    });
    const laminator = shop.envelope({ enteredBy: 'REC-1', level: 'II', reason: 'x' });
    expect((await shop.post('/api/flaw-limits', laminator)).status).toBe(403);
  });
});

describe('a graded blister', () => {
  it('is told by the other standard too, from memory, and as a density', async () => {
    const blister = await report('blister', { grade: '6M', lengthMm: 4, counted: 12, countedAreaM2: 0.5 });
    expect(blister).toMatchObject({
      ...{ grade: '6M', iso4628: { grade: '3(S3)', source: expect.stringContaining('from memory') } },
      ...{ counted: 12, countedAreaM2: 0.5, perM2: 24 },
    });
  });

  it('counted without an area is refused', async () => {
    const answer = await shop.post('/api/parts/D1-H/defects', shop.envelope({ kind: 'blister', place, counted: 3 }));
    expect(answer).toMatchObject({ status: 400, body: { errors: [{ pointer: '/countedAreaM2' }] } });
  });
});

describe('catalyst that a gun added', () => {
  const window = { catalystWindow: { min: 1.5, max: 2, unit: '%' } };
  const verdict = async () => {
    const { layers } = await shop.read<PartView>('/api/parts/S1-H');
    const made = layers.find(({ scheduled }) => scheduled.code === 'L2')?.record;
    return made?.verdicts.find(({ topic }) => topic === 'catalyst');
  };

  it('is judged by what the gun was set to', async () => {
    await shop.act('/api/materials/RES-VE/data-sheets', { issue: 'issue 3', makerData: window });
    await shop.act('/api/equipment', { code: 'G-9', kind: 'gun', description: 'Chopper gun' });
    await shop.receive('S-R', 'RES-VE');
    await shop.receive('S-C', 'MEKP');
    await shop.act('/api/guns/G-9/hook-ups', { feed: 'resin', lot: 'S-R' });
    await shop.act('/api/guns/G-9/hook-ups', { feed: 'catalyst', lot: 'S-C' });
    await shop.act('/api/guns/G-9/settings', { catalystPercent: 3 });
    const setAt = shop.tick();
    await shop.startHull('S1');
    const layer = await shop.layer('S1', 'L2', [{ gun: 'G-9', amount: kg(20) }]);
    expect(await verdict()).toMatchObject({ verdict: 'outside', figures: { percentByMass: 3 } });
    expect(await rulesAbout(shop, layer)).toContain('catalyst-outside-window');
    await shop.act('/api/guns/G-9/settings', { catalystPercent: 2, happenedAt: setAt });
    expect(await verdict()).toMatchObject({ verdict: 'inside', corrected: true });
    expect(await rulesAbout(shop, layer)).not.toContain('catalyst-outside-window');
  });
});
