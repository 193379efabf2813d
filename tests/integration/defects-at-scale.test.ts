import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { DefectView, HullView, PartView, ReachPage } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;

beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('GEL-P', 'GEL-W');
  for (const hull of ['801', '802', '803', '804', '805']) await shop.startHull(hull);
});
afterAll(() => service.close());

const part = (hull: string): Promise<PartView> => shop.read(`/api/parts/${hull}-H`);
const inTheWay = async (hull: string): Promise<readonly string[]> =>
  (await shop.read<HullView>(`/api/hulls/${hull}`)).release.inTheWay.map(({ rule }) => rule);
const pits = (count: number, more: Fields = {}): Fields => ({ zone: 'port topside', kind: 'pit', count, ...more });
const touchUp = (hull: string, spots: readonly Fields[], more: Fields = {}): Promise<string> =>
  shop.act(`/api/parts/${hull}-H/touch-ups`, { spots, doneBy: ['PAT-1'], ...more });

describe('touch-ups', () => {
  it('are many spots in one entry, with the patch gel coat, and one acceptance by another person', async () => {
    const id = await touchUp('801', [pits(6), { zone: 'transom', kind: 'fish-eye', count: 2, largestMm: 4 }], {
      used: [{ lot: 'GEL-P', amount: kg(0.4) }],
    });
    expect((await part('801')).touchUps).toMatchObject([{ mark: 'T1', acceptance: null, used: [{ lot: 'GEL-P' }] }]);
    expect(await inTheWay('801')).toContain('touch-up-not-accepted');
    const own = await shop.post(
      `/api/touch-ups/${id}/acceptances`,
      shop.envelope({ enteredBy: 'PAT-1', accepted: true }),
    );
    expect([own.status, JSON.stringify(own.body)]).toEqual([409, expect.stringContaining('/enteredBy')]);
    await shop.act(`/api/touch-ups/${id}/acceptances`, { enteredBy: 'INS-1', accepted: true });
    expect(await inTheWay('801')).not.toContain('touch-up-not-accepted');
  });

  it('are places: a search of the patch gel coat finds the hull, with its kilograms', async () => {
    const { items } = await shop.read<ReachPage>('/api/lots/GEL-P/hulls');
    expect(items).toMatchObject([
      { hull: '801', kg: 0.4, parts: [{ places: [{ kind: 'touch-up', place: 'T1', share: 1 }] }] },
    ]);
  });

  it('over the limit of the plant are kept as done, and are a repair', async () => {
    await shop.act('/api/touch-up-limits', {
      enteredBy: 'QUA-1',
      spotsInAZone: 5,
      spotsOnAPart: 12,
      largestMm: 10,
      source: 'FP-3',
    });
    await touchUp('802', [pits(5, { largestMm: 10 })]);
    expect((await part('802')).nonconformities).toEqual([]);
    await touchUp('802', [pits(6), { zone: 'transom', kind: 'sag', count: 1, largestMm: 25 }]);
    await touchUp('802', [pits(1)]);
    const details = (await part('802')).nonconformities.map(({ rule, detail }) => `${rule}: ${detail}`);
    expect(details).toHaveLength(3);
    expect(details.join(' ')).toContain('T2: 6 spots in zone port topside are over 5 (limits: FP-3)');
    expect(details.join(' ')).toContain('A sag of 25 mm in zone transom is over 10 mm');
    expect(details.join(' ')).toContain('T3: 13 spots on the part are over 12');
    expect(await inTheWay('802')).toContain('nonconformity-open');
  });

  it('of no known kind are refused, and the field named; so is a limit set by one who may not', async () => {
    const wrong = await shop.post(
      '/api/parts/802-H/touch-ups',
      shop.envelope({ spots: [pits(1), { zone: 'x', kind: 'ding', count: 1 }], doneBy: ['PAT-1'] }),
    );
    expect([wrong.status, JSON.stringify(wrong.body)]).toEqual([400, expect.stringContaining('/spots/1/kind')]);
    const limit = { spotsInAZone: 5, spotsOnAPart: 12, largestMm: 10, source: 'x', enteredBy: 'REC-1' };
    expect((await shop.post('/api/touch-up-limits', shop.envelope(limit))).status).toBe(403);
  });
});

describe('a catalyst slug', () => {
  it('asks at once for hardness and for the bucket or gun, and stands in the way until both are answered', async () => {
    const skin = await shop.layer('803', 'L2', []);
    const { id, result } = await shop.receipt('/api/parts/803-H/defects', {
      ...{
        kind: 'catalyst-slug',
        layer: 'L2',
        place: { surface: 'shell', side: 'port', fromTransomMm: 2_000, girthMm: 600 },
      },
    });
    expect(result).toMatchObject({ asks: ['Barcol hardness', 'bucket or gun'] });
    expect(await inTheWay('803')).toContain('defect-asks');
    await shop.act(`/api/layers/${skin}/readings`, { what: 'Barcol hardness', unit: 'Barcol', spots: [{ value: 12 }] });
    expect((await shop.read<DefectView>(`/api/defects/${id}`)).asks).toEqual(['bucket or gun']);
    await shop.act(`/api/defects/${id}/answers`, { note: 'the bucket is not known any more' });
    expect(await shop.read(`/api/defects/${id}`)).toMatchObject({
      asks: [],
      bucketOrGun: 'the bucket is not known any more',
    });
    expect(await inTheWay('803')).not.toContain('defect-asks');
  });

  it('a void asks for nothing', async () => {
    const { result } = await shop.receipt('/api/parts/803-H/defects', {
      ...{ kind: 'air-bubble', place: { surface: 'shell', side: 'port', fromTransomMm: 2_000, girthMm: 600 } },
    });
    expect(result).toMatchObject({ asks: [] });
  });
});

describe('a repair that was accepted', () => {
  it('and failed when it was inspected again, opens its defect again; a new repair can follow', async () => {
    const defect = await shop.defect('804-H');
    const state = async (): Promise<string> => (await shop.read<DefectView>(`/api/defects/${defect}`)).state;
    const repair = await shop.repair('804-H', [defect]);
    await shop.judge(repair, true);
    expect(await state()).toBe('repaired');
    const own = await shop.post(
      `/api/repairs/${repair}/re-inspections`,
      shop.envelope({ enteredBy: 'PAT-1', passed: true }),
    );
    expect(own.status).toBe(409);
    const failed = await shop.act(`/api/repairs/${repair}/re-inspections`, {
      enteredBy: 'INS-1',
      passed: false,
      note: 'a halo',
    });
    expect(await state()).toBe('open');
    expect(await inTheWay('804')).toContain('defect-open');
    await shop.judge(await shop.repair('804-H', [defect]), true);
    expect(await state()).toBe('repaired');
    await shop.correct(failed);
    expect(await state()).toBe('repaired');
  });

  it('and failed later opens its defect again, also when there had been a concession; the newest word wins', async () => {
    const defect = await shop.defect('804-H');
    const state = async (): Promise<string> => (await shop.read<DefectView>(`/api/defects/${defect}`)).state;
    await shop.dispose('defect', defect, 'use as is', 'C-804');
    expect(await state()).toBe('concession');
    const repair = await shop.repair('804-H', [defect]);
    await shop.judge(repair, true);
    await shop.act(`/api/repairs/${repair}/re-inspections`, { enteredBy: 'INS-1', passed: false, note: 'soft' });
    expect(await state()).toBe('open');
    expect(await inTheWay('804')).toContain('defect-open');
    await shop.act(`/api/repairs/${repair}/re-inspections`, { enteredBy: 'INS-1', passed: true });
    expect(await state()).toBe('repaired');
  });

  it('is the newest by when it was done, not by when it was entered', async () => {
    const defect = await shop.defect('804-H');
    const before = shop.tick();
    const newer = await shop.repair('804-H', [defect]);
    await shop.judge(newer, false);
    await shop.judge(await shop.repair('804-H', [defect], { happenedAt: before }), true);
    expect((await shop.read<DefectView>(`/api/defects/${defect}`)).state).not.toBe('repaired');
  });

  it('outside, at a yard, is recorded with what is known of it, and accepted by another than who recorded it', async () => {
    const defect = await shop.defect('804-H');
    const outside = {
      at: 'Saltmere Boats',
      toldBy: 'invoice 118',
      when: 'spring 2026',
      material: 'epoxy, maker unknown',
    };
    const repair = await shop.act('/api/parts/804-H/repairs', { defects: [defect], procedure: 'Not known.', outside });
    expect((await part('804')).repairs.at(-1)).toMatchObject({ doneBy: [], outside });
    expect((await shop.post(`/api/repairs/${repair}/acceptances`, shop.envelope({ accepted: true }))).status).toBe(409);
    await shop.judge(repair, true);
    expect((await shop.read<DefectView>(`/api/defects/${defect}`)).state).toBe('repaired');
    const both = await shop.post(
      '/api/parts/804-H/repairs',
      shop.envelope({ defects: [defect], procedure: 'x', outside, doneBy: ['PAT-1'] }),
    );
    expect([both.status, JSON.stringify(both.body)]).toEqual([400, expect.stringContaining('/doneBy')]);
  });
});

describe('a scrapped part', () => {
  it('keeps its record, stays in the balance, and stands in the way of the hull it is in', async () => {
    await shop.receive('VE-S', 'RES-VE');
    await shop.startDeck('D-805');
    await shop.layer('805', 'D1', [{ lot: 'VE-S', amount: kg(30) }], { part: 'D-805' });
    const scrapped = await shop.act('/api/parts/D-805/scrapping', { reason: 'prerelease over half of it' });
    expect(await shop.read('/api/parts/D-805')).toMatchObject({ scrapped: { reason: 'prerelease over half of it' } });
    expect(await shop.read('/api/lots/VE-S')).toMatchObject({ usedKg: 30, leftKg: 970 });
    expect((await shop.read<ReachPage>('/api/lots/VE-S/hulls')).items).toHaveLength(1);
    expect((await shop.post('/api/parts/D-805/scrapping', shop.envelope({ reason: 'again' }))).status).toBe(409);
    await shop.join('805', 'D-805');
    expect((await shop.read<PartView>('/api/parts/D-805')).nonconformities.map(({ rule }) => rule)).toEqual([
      'scrapped-part-joined',
    ]);
    expect(await inTheWay('805')).toContain('part-scrapped');
    await shop.correct(scrapped);
    expect(await inTheWay('805')).not.toContain('part-scrapped');
  });
});
