import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
let first: string;
interface Waiting {
  readonly id: string;
  readonly of: string;
  readonly for: string;
  readonly what: string;
  readonly hull: string | null;
}
const waiting = async (query = ''): Promise<Waiting[]> =>
  (await shop.read<{ items: Waiting[] }>(`/api/waiting${query}`)).items;
const counts = (query: string) =>
  shop.read<{ hullsMade: number; groups: { name: string; defects: number; hulls: number }[]; notShown: number }>(
    `/api/defect-counts?${query}`,
  );

/** Five hulls with a gel coat of G-1; the first has two dry spots, the second a catalyst slug; a sixth has no layer. */
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('G-1', 'GEL-W');
  await shop.receive('R-1', 'RES-VE');
  for (const number of ['86-1', '86-2', '86-3', '86-4', '86-5']) {
    await shop.startHull(number);
    await shop.layer(number, 'L1', [{ lot: 'G-1', amount: kg(18) }]);
  }
  await shop.startHull('86-6');
  await shop.layer('86-1', 'L2', [{ lot: 'R-1', amount: kg(20) }]);
  first = await shop.defect('86-1-H', { layer: 'L1' });
  await shop.defect('86-1-H', { layer: 'L2' });
  await shop.defect('86-2-H', { kind: 'catalyst-slug', layer: 'L1' });
}, 60_000);
afterAll(() => service.close());

describe('what waits for a word', () => {
  it('is listed oldest first, a defect of cure twice: for a decision and for an answer', async () => {
    expect((await waiting()).map(({ of, for: word, what, hull }) => [of, word, what, hull])).toEqual([
      ['defect', 'disposition', 'dry-spot', '86-1'],
      ['defect', 'disposition', 'dry-spot', '86-1'],
      expect.arrayContaining(['defect', 'catalyst-slug', '86-2']),
      expect.arrayContaining(['defect', 'catalyst-slug', '86-2']),
    ]);
    expect((await waiting('?for=answer')).map(({ what }) => what)).toEqual(['catalyst-slug']);
  });

  it('comes page by page, each thing once', async () => {
    const seen: string[] = [];
    for (let next: string | null = ''; next !== null;) {
      const page: { items: Waiting[]; next: string | null } = await shop.read(
        `/api/waiting?limit=1${next === '' ? '' : `&cursor=${next}`}`,
      );
      seen.push(...page.items.map(({ id, for: word }) => `${id} ${word}`));
      next = page.next;
    }
    expect(seen).toHaveLength(4);
    expect(new Set(seen).size).toBe(4);
  });

  it('no longer waits once it is decided, and a concession is listed with what it is of', async () => {
    await shop.dispose('defect', first, 'use as is', 'C-1');
    expect((await waiting()).map(({ id }) => id)).not.toContain(first);
    const { items } = await shop.read<{ items: object[] }>('/api/concessions');
    expect(items).toMatchObject([{ concession: 'C-1', of: 'defect', what: 'dry-spot D1', hull: '86-1', by: 'ADMIN' }]);
  });

  it('is also a check that found equipment unfit, and a repair that nobody accepted', async () => {
    const checked = { what: 'reference film', good: false };
    await shop.act('/api/equipment/MG-1/checks', checked);
    const found = await shop.defect('86-3-H');
    await shop.repair('86-3-H', [found]);
    const of = (await waiting()).map((each) => `${each.of} for ${each.for}`);
    expect(of).toEqual(expect.arrayContaining(['equipment check for disposition', 'repair for acceptance']));
    const gauge = (await shop.read<{ code: string }[]>('/api/equipment')).find(({ code }) => code === 'MG-1');
    expect(gauge).toMatchObject({ lastCheck: checked, lastGood: null });
  });
});

describe('defects per hull made', () => {
  it('are counted by kind over the hulls that have a layer', async () => {
    expect(await counts('by=kind')).toEqual({
      ...{ by: 'kind', hullsMade: 5, notShown: 0 },
      groups: [
        { name: 'dry-spot', defects: 3, hulls: 5, perHull: 0.6 },
        { name: 'catalyst-slug', defects: 1, hulls: 5, perHull: 0.2 },
      ],
    });
  });

  it('are counted by mold, and by the material in the layer of the defect; a group of fewer than five hulls is not shown', async () => {
    expect((await counts('by=mold')).groups).toMatchObject([{ name: 'M-86-1', defects: 4, hulls: 5 }]);
    const byMaterial = await counts('by=material');
    expect(byMaterial.groups).toMatchObject([{ name: 'GEL-W, Isophthalic gel coat, white', defects: 3, hulls: 5 }]);
    expect(byMaterial.notShown).toBe(1);
  });

  it('are of the days asked for: with fewer than five hulls nothing is shown', async () => {
    expect(await counts('by=kind&from=2027-01-01')).toMatchObject({ hullsMade: 0, groups: [] });
  });
});

describe('hulls', () => {
  it('are counted by where they are', async () => {
    expect(await shop.read('/api/hull-counts')).toEqual([{ what: 'part started', hulls: 6 }]);
  });

  it('are listed by whether they were released', async () => {
    expect((await shop.read<{ items: object[] }>('/api/hulls?released=no')).items).toHaveLength(6);
    expect((await shop.read<{ items: object[] }>('/api/hulls?released=yes')).items).toHaveLength(0);
  });
});
