import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { FittedItemView, HullPage, HullView, OwnerView, PartView } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;

beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('PA', 'PASTE', { amount: kg(100) });
});
afterAll(() => service.close());

const hull = (number: string): Promise<HullView> => shop.read(`/api/hulls/${number}`);
const life = (number: string, what: string, more: Fields = {}): Promise<{ readonly result: unknown }> =>
  shop.receipt(`/api/hulls/${number}/life`, { what, ...more });

describe('a joint', () => {
  it('has the bond gap read at its spots, judged by the limits of the procedure; one too wide stands in the way', async () => {
    await shop.startHull('A1');
    await shop.startDeck('A1-D');
    const joint = await shop.join('A1', 'A1-D', { used: [{ lot: 'PA', amount: kg(6) }] });
    const gap = { what: 'bond gap', unit: 'mm', limits: { min: 1, max: 4, unit: 'mm' }, source: 'AP-2' };
    const { result } = await shop.receipt(`/api/joints/${joint}/readings`, {
      ...gap,
      spots: [{ value: 3 }, { value: '4.1' }],
    });
    expect(result).toMatchObject({ inside: 1, outside: 1 });
    expect((await shop.read<PartView>('/api/parts/A1-D')).jointReadings).toMatchObject([
      { verdict: 'inside', rule: { text: expect.stringContaining('AP-2') } },
      { verdict: 'outside', value: '4.1' },
    ]);
    expect((await hull('A1')).release.inTheWay).toContainEqual(
      expect.objectContaining({ rule: 'reading-outside', layer: 'joint' }),
    );
    const unsourced = await shop.post(
      `/api/joints/${joint}/readings`,
      shop.envelope({ ...gap, source: undefined, spots: [{ value: 3 }] }),
    );
    expect([unsourced.status, JSON.stringify(unsourced.body)]).toEqual([400, expect.stringContaining('/source')]);
  });

  it('that never was goes with its paste and its readings; the part can be joined to the hull it is in', async () => {
    await shop.startHull('A2');
    const { joint } = (await hull('A1')).parts.find(({ number }) => number === 'A1-D') as { joint: string };
    await shop.correct(joint);
    expect((await hull('A1')).parts.map(({ number }) => number)).toEqual(['A1-H']);
    expect(await shop.read('/api/lots/PA')).toMatchObject({ usedKg: 0 });
    await shop.join('A2', 'A1-D');
    expect((await shop.read<PartView>('/api/parts/A1-D')).jointReadings).toEqual([]);
  });
});

describe('an item with a serial number', () => {
  const items = (query: string): Promise<FittedItemView[]> => shop.read(`/api/fitted-items?${query}`);

  it('is found by its number, now and ever; the same number on two hulls is warned of', async () => {
    const fitEngine = (number: string): Promise<{ readonly id: string; readonly result: unknown }> =>
      shop.receipt(`/api/hulls/${number}/fitted-items`, { what: 'engine', serial: 'E-77', customerSupplied: true });
    const first = await fitEngine('A1');
    expect((await fitEngine('A2')).result).toMatchObject({ warnings: [expect.stringContaining('hull A1')] });
    await shop.act(`/api/fitted-items/${first.id}/removals`, { reason: 'moved to the next hull' });
    expect((await items('serial=e-77')).map((item) => [item.hull, item.removedAt !== null])).toEqual([
      ['A1', true],
      ['A2', false],
    ]);
    expect(await items('hull=A2')).toMatchObject([{ serial: 'E-77', customerSupplied: true }]);
    expect((await shop.get('/api/fitted-items')).status).toBe(400);
  });
});

describe('a HIN', () => {
  it('is corrected after it was affixed by quality alone, with the authority; the old one finds the hull for ever', async () => {
    await shop.startHull('B1');
    await shop.act('/api/hulls/B1/hins', { hin: 'TRZ00011A526' });
    const fields = { hin: 'TRZ00012A526', reason: 'struck twice', authority: 'letter 17 of 2026-01-03' };
    const early = await shop.post('/api/hulls/B1/hin-corrections', shop.envelope(fields));
    expect([early.status, JSON.stringify(early.body)]).toEqual([409, expect.stringContaining('hin-not-affixed')]);
    await life('B1', 'HIN affixed');
    const without = await shop.post(
      '/api/hulls/B1/hin-corrections',
      shop.envelope({ ...fields, authority: undefined }),
    );
    expect([without.status, JSON.stringify(without.body)]).toEqual([400, expect.stringContaining('/authority')]);
    expect(
      (await shop.post('/api/hulls/B1/hin-corrections', shop.envelope({ ...fields, enteredBy: 'REC-1' }))).status,
    ).toBe(403);
    await shop.act('/api/hulls/B1/hin-corrections', { ...fields, enteredBy: 'QUA-1' });
    expect((await hull('TRZ00011A526')).hin).toBe('TRZ00012A526');
    expect((await hull('B1')).numbers.at(-1)).toMatchObject({ authority: 'letter 17 of 2026-01-03' });
  });

  it('that was replaced, or of a scrapped hull, is never issued again, however it is written', async () => {
    await shop.startHull('B2');
    await shop.startHull('B3');
    await shop.act('/api/hulls/B2/hins', { hin: 'TRZ00013A526' });
    await life('B2', 'scrapped');
    for (const hin of ['trz-00011-a526', 'TRZ 00013 A526'])
      expect((await shop.post('/api/hulls/B3/hins', shop.envelope({ hin }))).status).toBe(409);
    expect((await shop.post('/api/hulls', shop.envelope({ number: 'B2', model: 'TS86', mold: 'M-86-1' }))).status).toBe(
      409,
    );
  });
});

describe('the life of a boat', () => {
  it('says where it is now and since when by when things happened, whenever they are entered', async () => {
    await shop.startHull('C1');
    const [left, there, sold] = [shop.tick(), shop.tick(), shop.tick()];
    await life('C1', 'sold to first purchaser', { happenedAt: sold });
    await life('C1', 'at dealer', { happenedAt: there, dealer: 'NLM' });
    await life('C1', 'left the place of manufacture', { happenedAt: left });
    expect((await hull('C1')).now).toMatchObject({ what: 'sold to first purchaser', dealer: 'Northlight Marine' });
    expect(Date.parse((await hull('C1')).now.since)).toBe(Date.parse(sold));
    const of = async (query: string): Promise<readonly string[]> =>
      (await shop.read<HullPage>(`/api/hulls?${query}`)).items.map(({ number }) => number);
    expect(await of('dealer=NLM')).toEqual(['C1']);
    expect(await of(`now=${encodeURIComponent('sold to first purchaser')}`)).toEqual(['C1']);
    expect(await of('now=scrapped')).toEqual(['B2']);
  });

  it('after it was scrapped is kept, and said', async () => {
    expect(JSON.stringify((await life('B2', 'exported')).result)).toContain('after-scrapping');
  });
});

describe('an owner', () => {
  const owner = { name: 'Xanthe Quillfeather', address: '9 Invented Row', email: 'xanthe@example.org' };

  it('is kept apart: neither a fact nor the journal holds a word of it', async () => {
    const fields = shop.envelope({ what: 'first purchaser', owner });
    const first = await shop.post('/api/hulls/C1/owners', fields);
    expect(first.status).toBe(201);
    expect(await shop.post('/api/hulls/C1/owners', fields)).toMatchObject({ status: 200, body: { replayed: true } });
    const other = { ...fields, owner: { ...owner, name: 'Somebody Else' } };
    expect((await shop.post('/api/hulls/C1/owners', other)).status).toBe(409);
    const tables = await service.asOwner<{ name: string }>(
      "select table_name as name from information_schema.tables where table_schema = 'fact'",
    );
    for (const { name } of tables) {
      const found = await service.asOwner(
        `select from fact.${name} x where x::text ilike '%quillfeather%' or x::text ilike '%invented row%'`,
      );
      expect([name, found.length]).toEqual([name, 0]);
    }
  });

  it('is erased on request: that there was one stays, and nobody can say who', async () => {
    const [kept] = await shop.read<OwnerView[]>('/api/hulls/C1/owners');
    expect(kept).toMatchObject({ what: 'first purchaser', owner, erasedAt: null });
    await shop.act(`/api/owners/${kept?.id}/erasures`, { reason: 'asked for' });
    expect(await shop.read('/api/hulls/C1/owners')).toMatchObject([
      { what: 'first purchaser', owner: null, erasedAt: expect.any(String) },
    ]);
    expect(await service.asOwner('select from work.owner_detail')).toHaveLength(0);
    expect((await shop.post(`/api/owners/${kept?.id}/erasures`, shop.envelope({ reason: 'again' }))).status).toBe(409);
  });
});
