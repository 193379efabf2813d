import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { loadHulls } from '../../apps/service/src/cases/inputs/load-hulls.js';
import type { CaseSettings } from '../../apps/service/src/cases/settings.js';
import { readAsOne } from '../../apps/service/src/platform/database/read-as-one.js';
import { readRoll, type RolledHull } from '../../apps/service/src/platform/roll/read-roll.js';
import { renewRoll } from '../../apps/service/src/platform/roll/renew-roll.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop } from '../support/shop.js';

const LEFT = 'left the place of manufacture';
const SETTINGS = {
  kind: 'blister',
  models: [],
  builtFrom: null,
  builtTo: null,
  origin: LEFT,
} as unknown as CaseSettings;

let service: RunningService;
let shop: Shop;

const plantOf = async (): Promise<string> =>
  (await service.asOwner<{ id: string }>('select id from fact.plant'))[0]?.id ?? '';

/** The hulls as they are rolled and from facts, which must be the same. */
const hulls = async (more: Partial<CaseSettings> = {}): Promise<readonly RolledHull[]> => {
  const plant = await plantOf();
  const asked = { ...SETTINGS, ...more };
  const [rolled, facts] = await readAsOne(service.db, async (tx) => {
    expect([...(await readRoll(tx, plant))]).toEqual([...(await readRoll(tx, plant, 'facts'))]);
    return [await loadHulls(tx, plant, asked), await loadHulls(tx, plant, asked, 'facts')];
  });
  expect([...rolled.hulls]).toEqual([...facts.hulls]);
  expect(rolled.claims).toEqual(facts.claims);
  return [...facts.hulls];
};

const marks = async (): Promise<number> =>
  (await service.asOwner<{ n: number }>('select count(*)::int as n from derived.stale_hull'))[0]?.n ?? -1;

const of = async (number: string): Promise<RolledHull | undefined> =>
  (await hulls()).find((hull) => hull.number === number);

const dayOf = (day: string): number => Date.parse(day) / 86_400_000;

let left: string;

beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('R-G', 'GEL-W');
  await shop.receive('R-R', 'RES-VE');
  await shop.receive('R-M', 'MAT-450');
  await shop.wholeHull('R-2', { gel: 'R-G', resin: { lot: 'R-R' }, glass: 'R-M' });
  await shop.act('/api/hulls/R-2/releases', {});
  left = await shop.act('/api/hulls/R-2/life', { what: LEFT });
  await shop.startHull('R-1');
});
afterAll(() => service.close());

describe('the roll of hulls', () => {
  it('is read from facts as long as nothing is rolled', async () => {
    expect((await hulls()).map(({ number }) => number)).toEqual(['R-1', 'R-2']);
    expect(await service.asOwner('select from derived.hull_block')).toHaveLength(0);
  });

  it('is the same once it is rolled, and nothing is marked any more', async () => {
    const before = await hulls();
    await renewRoll(service.db);
    expect(await marks()).toBe(0);
    expect(await service.asOwner('select from derived.hull_block')).toHaveLength(1);
    const after = await hulls();
    expect(after.map(({ parts: _parts, ...hull }) => hull)).toEqual(before.map(({ parts: _parts, ...hull }) => hull));
    expect(after.map(({ parts }) => parts.length)).toEqual([1, 1]);
    expect(after[1]).toMatchObject({ number: 'R-2', left: dayOf('2026-01-05'), sold: null, scrapped: null });
  });

  it.each([
    ['a hull that is started', () => shop.startHull('R-3')],
    ['a part that is joined', () => shop.startDeck('R-3-D').then(() => shop.join('R-3', 'R-3-D'))],
    ['a hull that is scrapped', () => shop.act('/api/hulls/R-1/life', { what: 'scrapped' })],
  ])('has %s, before it is rolled again and after', async (_what, record) => {
    await renewRoll(service.db);
    await record();
    expect(await marks()).toBeGreaterThan(0);
    const found = await hulls();
    await renewRoll(service.db);
    expect(await marks()).toBe(0);
    const after = await hulls();
    expect(after.map(({ parts: _parts, ...hull }) => hull)).toEqual(found.map(({ parts: _parts, ...hull }) => hull));
  });

  it('knows the parts of every hull in it, those in which nothing is yet too', async () => {
    expect((await of('R-3'))?.parts).toHaveLength(2);
    expect((await of('R-1'))?.scrapped).toBe(dayOf('2026-01-05'));
  });

  it('follows a correction of a day, and the withdrawal of a fact', async () => {
    left = await shop.correct(left, { kind: 'life fact', happenedAt: '2026-01-09T12:00:00.000Z' });
    expect((await of('R-2'))?.left).toBe(dayOf('2026-01-09'));
    await renewRoll(service.db);
    expect((await of('R-2'))?.left).toBe(dayOf('2026-01-09'));
    await shop.correct(left);
    expect((await of('R-2'))?.left).toBeNull();
    await renewRoll(service.db);
    expect((await of('R-2'))?.left).toBeNull();
  });

  it('has the hulls of the models and the months that are asked for', async () => {
    const started = dayOf('2026-01-05');
    expect((await hulls()).every(({ built }) => built === started)).toBe(true);
    expect(await hulls({ models: ['TS62'] })).toEqual([]);
    expect(await hulls({ models: ['TS86'], builtFrom: '2026-01-05', builtTo: '2026-01-05' })).toHaveLength(3);
    expect(await hulls({ builtFrom: '2026-01-06' })).toEqual([]);
    expect(await hulls({ builtTo: '2026-01-04' })).toEqual([]);
  });

  it('loses nothing that is recorded while it is rolled', async () => {
    const numbers = Array.from({ length: 12 }, (_, i) => `R-1${i}`);
    const started = numbers.map(async (number) => {
      await shop.startHull(number);
      await shop.startDeck(`${number}-D`);
      await shop.join(number, `${number}-D`);
      await shop.layer(number, 'L1', [{ lot: 'R-G', amount: kg(10) }]);
    });
    const renewals = Array.from({ length: 4 }, () => renewRoll(service.db));
    await Promise.all([...started, ...renewals]);
    expect(await hulls()).toHaveLength(15);
    await renewRoll(service.db);
    expect(await marks()).toBe(0);
    expect(await hulls()).toHaveLength(15);
  });

  it.each([
    ['one after the other', 'n * 512'],
    ['before another', '(100 - n) * 512'],
    ['between those of another', '(n % 2) * 512 + n'],
  ])('is by number where the hulls of a block are %s', async (_what, place) => {
    await service.asOwner(`
      update derived.hull_place k set number = 100000 + h.place from (
        select hull_id, ${place} as place
        from (select hull_id, row_number() over (order by normalised) as n from fact.hull_number where kind = 'hull number') s) h
      where h.hull_id = k.hull_id`);
    await service.asOwner('update derived.hull_place set number = number - 100000');
    await service.asOwner('delete from derived.hull_block');
    await service.asOwner('insert into derived.stale_hull (hull_id) values (null)');
    await renewRoll(service.db);
    expect((await service.asOwner('select from derived.hull_block')).length).toBeGreaterThan(1);
    const numbers = (await hulls()).map(({ number }) => number);
    expect(numbers).toHaveLength(15);
    expect(numbers).toEqual([...numbers].sort());
  });
});
