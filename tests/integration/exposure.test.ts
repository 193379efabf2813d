import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { LotInHulls } from '../../apps/service/src/cases/inputs/case-inputs.js';
import { judgeHulls } from '../../apps/service/src/cases/inputs/judge-hulls.js';
import { loadHulls } from '../../apps/service/src/cases/inputs/load-hulls.js';
import { loadLots } from '../../apps/service/src/cases/inputs/load-lots.js';
import type { CaseSettings } from '../../apps/service/src/cases/settings.js';
import { readAsOne } from '../../apps/service/src/platform/database/read-as-one.js';
import { renewExposure } from '../../apps/service/src/platform/exposure/renew-exposure.js';
import { renewRoll } from '../../apps/service/src/platform/roll/renew-roll.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop } from '../support/shop.js';

const SETTINGS = {
  ...{ kind: 'blister', models: [], builtFrom: null, builtTo: null, origin: 'left the place of manufacture' },
  ...{ cutOff: '2030-01-01', reportLagDays: 0, strata: ['model'], claims: 'all' },
} as unknown as CaseSettings;

let service: RunningService;
let shop: Shop;

/** The lots of all hulls, as they are packed and as places have them. */
const lots = (least = 0.01): Promise<Record<'packed' | 'places', readonly LotInHulls[]>> =>
  readAsOne(service.db, async (tx) => {
    const [plant] = await tx.query<[{ id: string }]>('select id from fact.plant');
    const judged = judgeHulls(await loadHulls(tx, plant.id, SETTINGS), SETTINGS, {
      ...{ frozenAt: new Date(), frozenOn: '2030-01-01', lookedOn: '2030-01-01' },
    });
    const read = (from: 'packed' | 'places') => loadLots(tx, judged, least, { from });
    return { packed: await read('packed'), places: await read('places') };
  });

const same = async (least?: number): Promise<readonly LotInHulls[]> => {
  const { packed, places } = await lots(least);
  expect(packed).toEqual(places);
  return places.map((lot) => ({ ...lot, hulls: Array.from(lot.hulls), shares: Array.from(lot.shares) }));
};

const marks = async (): Promise<number> =>
  (await service.asOwner<{ n: number }>('select count(*)::int as n from derived.stale_exposure'))[0]?.n ?? -1;

const packedRows = async (): Promise<number> =>
  (await service.asOwner<{ n: number }>('select count(*)::int as n from derived.exposure'))[0]?.n ?? -1;

const make = async (number: string, resin: string): Promise<void> => {
  await shop.wholeHull(number, { gel: 'E-G', resin: { lot: resin }, glass: 'E-M' });
  await shop.act(`/api/hulls/${number}/releases`, {});
  await shop.act(`/api/hulls/${number}/life`, { what: 'left the place of manufacture' });
};

beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('E-G', 'GEL-W');
  await shop.receive('E-R1', 'RES-VE');
  await shop.receive('E-R2', 'RES-VE');
  await shop.receive('E-M', 'MAT-450');
  await make('E-1', 'E-R1');
  await make('E-2', 'E-R2');
});
afterAll(() => service.close());

describe('which hulls hold how much of a lot', () => {
  it('is read from places as long as nothing is packed', async () => {
    expect((await same()).map(({ lot }) => lot)).toEqual(expect.arrayContaining(['E-G', 'E-M', 'E-R1', 'E-R2']));
    expect(await packedRows()).toBe(0);
  });

  it('is the same once it is packed, and nothing is marked any more', async () => {
    await renewExposure(service.db);
    expect(await marks()).toBe(0);
    const found = await same();
    expect(await packedRows()).toBeGreaterThanOrEqual(found.length);
    expect(found.find(({ lot }) => lot === 'E-R1')).toMatchObject({ hulls: [0], shares: [1] });
  });

  it('is read from places where less is asked for than is packed', async () => {
    await same(0.0001);
  });

  it('has what was put in since, before it is packed again and after', async () => {
    await make('E-3', 'E-R1');
    expect(await marks()).toBeGreaterThan(0);
    const found = await same();
    expect(found.find(({ lot }) => lot === 'E-R1')).toMatchObject({ hulls: [0, 2] });
    await renewExposure(service.db);
    expect(await same()).toEqual(found);
  });

  it('leaves out the hull into which it was put after the origin, beside the one that had it before', async () => {
    await shop.receive('E-R3', 'RES-VE');
    const repaired = async (number: string, happenedAt?: string): Promise<void> => {
      const defect = await shop.defect(`${number}-H`, happenedAt === undefined ? {} : { happenedAt });
      const at = happenedAt === undefined ? {} : { happenedAt };
      await shop.repair(`${number}-H`, [defect], { used: [{ lot: 'E-R3', amount: kg(1) }], ...at });
    };
    await shop.startHull('E-4');
    await repaired('E-4');
    await shop.act('/api/hulls/E-4/life', { what: 'left the place of manufacture' });
    await repaired('E-1', '2026-01-25T12:00:00.000Z');
    const family = (found: readonly LotInHulls[]) => found.filter(({ lot }) => lot === 'E-R3');
    const before = family(await same());
    expect(before).toMatchObject([{ family: expect.stringMatching(/repair$/), hulls: [3] }]);
    await renewExposure(service.db);
    expect(family(await same())).toEqual(before);
  });

  it('follows a correction of which lot it was', async () => {
    const { body } = await shop.get('/api/lots/E-R2/hulls');
    expect((body as unknown as { items: { hull: string }[] }).items.map(({ hull }) => hull)).toEqual(['E-2']);
    const uses = await service.asOwner<{ id: string }>(
      "select u.id from fact.used u join fact.lot l on l.root = u.lot_id where l.code = 'E-R2'",
    );
    expect(uses).toHaveLength(2);
    for (const { id } of uses) await shop.correct(id, { kind: 'used', lot: 'E-R1' });
    const found = await same();
    expect(found.find(({ lot }) => lot === 'E-R1')).toMatchObject({ hulls: [0, 1, 2] });
    await renewExposure(service.db);
    expect(await same()).toEqual(found);
  });

  it('loses nothing that is recorded while it is packed', async () => {
    const numbers = Array.from({ length: 12 }, (_, i) => `E-1${i}`);
    for (const number of numbers) await shop.startHull(number);
    const uses = numbers.map((number, i) => shop.layer(number, 'L1', [{ lot: 'E-G', amount: kg(10 + i / 10) }]));
    const renewals = Array.from({ length: 4 }, () => renewExposure(service.db));
    await Promise.all([...uses, ...renewals]);
    await same();
    await renewExposure(service.db);
    expect(await marks()).toBe(0);
    await same();
  });

  it('is the same however far apart the numbers of parts are', async () => {
    const before = await same();
    await service.asOwner(`
      with apart as (
        select part_id, sum((array[254, 255, 256, 70000])[1 + (n % 4)::int]) over (order by n)::int as number
        from (select part_id, row_number() over (order by number) as n from derived.part_number) p)
      update derived.part_number p set number = 1000000 + a.number from apart a where a.part_id = p.part_id`);
    await service.asOwner('insert into derived.stale_exposure (source_id) values (null)');
    await service.asOwner('insert into derived.stale_hull (hull_id) values (null)');
    await renewRoll(service.db);
    await renewExposure(service.db);
    expect(await packedRows()).toBeGreaterThanOrEqual(before.length);
    expect(await same()).toEqual(before);
  });
});
