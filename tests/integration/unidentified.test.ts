import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { kg, Shop } from '../support/shop.js';
import sharp from 'sharp';
import { startService, type RunningService } from '../support/service.js';

let service: RunningService;
let shop: Shop;

beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  for (const lot of ['VE-1', 'VE-2', 'VE-3']) await shop.receive(lot, 'RES-VE');
  await shop.receive('MAT-1', 'MAT-450');
});
afterAll(() => service.close());

interface Reached {
  readonly items: { hull: string; kg: number | null; possibly: boolean; trace: boolean }[];
}
const reached = async (lot: string, query = ''): Promise<Reached['items']> =>
  (await shop.read<Reached>(`/api/lots/${lot}/hulls${query}`)).items;
const shown = async (lot: string): Promise<readonly [string, string][]> =>
  (await reached(lot)).map(({ hull, possibly }) => [hull, possibly ? 'possibly' : 'surely']);

const UNLABELLED = { role: 'resin', looks: 'amber, steel pail without a label', foundAt: 'bay 3' };

interface Part {
  readonly layers: { record: { used: { lot: string }[] } | null }[];
  readonly nonconformities: { id: string; rule: string }[];
}
const lotUsedIn = async (part: string): Promise<string> => {
  const { layers } = await shop.read<Part>(`/api/parts/${part}`);
  return String(layers.flatMap(({ record }) => record?.used ?? [])[0]?.lot);
};

describe('the drum had no label', () => {
  let unknown: string;

  beforeAll(async () => {
    await shop.startHull('501');
    await shop.layer('501', 'L2', [{ unidentified: { ...UNLABELLED, likely: ['VE-1', 'VE-2'] }, amount: kg(12) }]);
    unknown = await lotUsedIn('501-H');
  });

  it('is kept as it was, with a nonconformity, and never refused', async () => {
    const { nonconformities } = await shop.read<Part>('/api/parts/501-H');
    expect(nonconformities.map(({ rule }) => rule)).toContain('unidentified-material');
    expect(await shop.read(`/api/lots/${unknown}`)).toMatchObject({
      origin: 'unidentified',
      role: 'resin',
      state: 'released',
    });
  });

  it('a search of a lot it may be of says possibly; of another lot nothing', async () => {
    expect(await shown('VE-1')).toEqual([['501', 'possibly']]);
    expect(await shown('VE-2')).toEqual([['501', 'possibly']]);
    expect(await shown('VE-3')).toEqual([]);
    expect((await reached('VE-1', '?minShare=0.9'))[0]).toMatchObject({ hull: '501', kg: null, possibly: true });
  });

  it('the hull says which lots it may be of', async () => {
    const { lots } = await shop.read<{ lots: { lot: string; kg: number; possiblyAnyOf: unknown }[] }>(
      '/api/hulls/501/lots',
    );
    expect(lots).toMatchObject([{ lot: unknown, kg: 12, possiblyAnyOf: { number: 2, lots: ['VE-2', 'VE-1'] } }]);
  });

  it('is possibly in what a bucket of it went into, and in what a bucket of a likely lot is', async () => {
    await shop.startHull('502');
    await shop.mix('B-502', [{ lot: unknown, amount: kg(5) }]);
    await shop.layer('502', 'L2', [{ lot: 'B-502', amount: kg(5) }]);
    expect(await shown('VE-1')).toEqual([
      ['501', 'possibly'],
      ['502', 'possibly'],
    ]);
    await shop.startHull('503');
    await shop.mix('B-503', [{ lot: 'VE-3', amount: kg(5) }]);
    await shop.layer('503', 'L2', [{ unidentified: { ...UNLABELLED, likely: ['B-503'] }, amount: kg(1) }]);
    expect(await shown('VE-3')).toEqual([['503', 'possibly']]);
  });

  it('a hull that surely holds the lot is said once, surely', async () => {
    await shop.startHull('504');
    await shop.layer('504', 'L2', [
      { lot: 'VE-1', amount: kg(1) },
      { unidentified: { ...UNLABELLED, likely: ['VE-1'] }, amount: kg(1) },
    ]);
    expect((await shown('VE-1')).filter(([hull]) => hull === '504')).toEqual([['504', 'surely']]);
  });

  it('once it is known, what was drawn of it is of that lot, and only of that', async () => {
    const { result } = await shop.receipt(`/api/lots/${unknown}/identifications`, {
      as: 'VE-2',
      reason: 'the label was found',
    });
    expect(result['draws']).toBe(2);
    expect((await shown('VE-2')).slice(0, 2)).toEqual([
      ['501', 'surely'],
      ['502', 'surely'],
    ]);
    expect(await shown('VE-1')).toEqual([['504', 'surely']]);
  });
});

describe('nobody remembers which lots there were', () => {
  it('it may be any lot of its role that had come by then', async () => {
    await shop.startHull('510');
    await shop.layer('510', 'L3', [{ unidentified: UNLABELLED, amount: kg(2) }]);
    await shop.receive('VE-LATER', 'RES-VE');
    const possibly = async (lot: string): Promise<boolean> =>
      (await shown(lot)).some(([hull, how]) => hull === '510' && how === 'possibly');
    expect(await Promise.all(['VE-1', 'VE-3', 'VE-LATER', 'MAT-1'].map(possibly))).toEqual([true, true, false, false]);
  });

  it('a lot that came before, but was entered later, is possible too', async () => {
    await shop.startHull('511');
    const at = shop.tick();
    const before = new Date(Date.parse(at) - 1).toISOString();
    await shop.layer('511', 'L3', [{ unidentified: UNLABELLED, amount: kg(2) }], {
      startedAt: at,
      endedAt: at,
      happenedAt: at,
    });
    await shop.receive('VE-ENTERED-LATE', 'RES-VE', { happenedAt: before });
    expect(await shown('VE-ENTERED-LATE')).toEqual([['511', 'possibly']]);
  });
});

describe('what cannot be kept', () => {
  const refused = async (used: object): Promise<string> => {
    const at = shop.tick();
    const { status, body } = await shop.post(
      '/api/parts/501-H/layers',
      shop.envelope({ layer: 'L3', startedAt: at, endedAt: at, doneBy: ['LAM-1'], used: [used] }),
    );
    expect([400, 422]).toContain(status);
    return JSON.stringify((body as unknown as { errors: { pointer: string }[] }).errors.map(({ pointer }) => pointer));
  };

  it('names the field: a likely lot that is not there, litres of nobody knows what, two ways at once', async () => {
    expect(await refused({ unidentified: { ...UNLABELLED, likely: ['VE-1', 'VE-9'] }, amount: kg(1) })).toBe(
      '["/used/0/unidentified/likely/1"]',
    );
    expect(await refused({ unidentified: UNLABELLED, amount: { quantity: '2', unit: 'L', basis: 'weighed' } })).toBe(
      '["/used/0/amount/unit"]',
    );
    expect(await refused({ unidentified: UNLABELLED, lot: 'VE-1', amount: kg(1) })).toBe('["/used/0/lot"]');
  });

  it('a lot that is known is not identified again', async () => {
    const { status, body } = await shop.post(
      '/api/lots/VE-1/identifications',
      shop.envelope({ as: 'VE-2', reason: 'x' }),
    );
    expect(status).toBe(422);
    expect(JSON.stringify(body)).toContain('lot-is-identified');
  });
});

describe('a photo of it', () => {
  const photo = (width: number): Promise<Buffer> =>
    sharp({ create: { width, height: 6, channels: 3, background: '#805020' } })
      .png()
      .toBuffer();
  const photosOf = async (lot: string): Promise<number> =>
    (await shop.read<{ photos: unknown[] }>(`/api/lots/${lot}/store`)).photos.length;
  const lots = async (part: string): Promise<readonly string[]> =>
    (await shop.read<Part>(`/api/parts/${part}`)).layers.flatMap(({ record }) =>
      (record?.used ?? []).map(({ lot }) => lot),
    );

  it('is added by the entry that used it, to the line that it is of and to that of each part', async () => {
    await shop.startHull('520');
    await shop.startHull('521');
    const at = shop.tick();
    const { id } = await shop.receipt('/api/layers', {
      ...{ layer: 'L2', startedAt: at, endedAt: at, happenedAt: at, doneBy: ['LAM-1'] },
      parts: ['520-H', '521-H'].map((part) => ({ part, weight: 1 })),
      used: [
        { lot: 'VE-1', amount: kg(4) },
        { unidentified: UNLABELLED, amount: kg(2) },
        { unidentified: { ...UNLABELLED, role: 'glass' }, amount: kg(6) },
      ],
    });
    const path = `/api/unidentified/${id}/photos`;
    const of = (line: number) => shop.envelope({ enteredBy: 'LAM-1', line });
    expect((await shop.postPhoto(path, of(2), await photo(9))).status).toBe(201);
    expect((await shop.postPhoto(path, of(0), await photo(10))).status).toBe(404);
    expect((await shop.postPhoto(path, of(3), await photo(11))).status).toBe(404);
    const kept = [];
    for (const part of ['520-H', '521-H'])
      for (const lot of await lots(part))
        kept.push([(await shop.read<{ role: string }>(`/api/lots/${lot}`)).role, await photosOf(lot)]);
    expect(kept.sort()).toEqual([
      ['glass', 1],
      ['glass', 1],
      ['resin', 0],
      ['resin', 0],
      ['resin', 0],
      ['resin', 0],
    ]);
  });

  it('is kept when it comes late, after one of the two was named', async () => {
    await shop.startHull('522');
    const at = shop.tick();
    const { id } = await shop.receipt('/api/parts/522-H/layers', {
      ...{ layer: 'L2', startedAt: at, endedAt: at, happenedAt: at, doneBy: ['LAM-1'] },
      used: [
        { unidentified: UNLABELLED, amount: kg(2) },
        { unidentified: { ...UNLABELLED, role: 'glass' }, amount: kg(6) },
      ],
    });
    const byRole = new Map<string, string>();
    for (const lot of await lots('522-H'))
      byRole.set((await shop.read<{ role: string }>(`/api/lots/${lot}`)).role, lot);
    const named = `/api/lots/${byRole.get('resin')}/identifications`;
    await shop.act(named, { as: 'VE-1', reason: 'the drum was found' });
    const path = `/api/unidentified/${id}/photos`;
    const of = (line: number) => shop.envelope({ enteredBy: 'LAM-1', line });
    expect((await shop.postPhoto(path, of(0), await photo(13))).status).toBe(201);
    expect((await shop.postPhoto(path, of(1), await photo(14))).status).toBe(201);
    expect(await photosOf(byRole.get('glass') as string)).toBe(1);
  });

  it('of an entry that used nothing of the kind is not found', async () => {
    const answer = await shop.postPhoto(
      '/api/unidentified/018f0000-0000-7000-8000-00000000abcd/photos',
      shop.envelope({ line: 0 }),
      await photo(12),
    );
    expect(answer).toMatchObject({ status: 404, body: { type: '/problems/not-found' } });
  });
});
