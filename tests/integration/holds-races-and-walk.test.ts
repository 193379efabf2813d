import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import type { HeldHullPage, HoldView } from '@hull-record/contracts';
import { randomGenealogy, type InventedGenealogy } from '../support/random-genealogy.js';
import { GenealogyRecorder, openForGenealogies } from '../support/record-genealogy.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop } from '../support/shop.js';
import { readFacts, toNumber, walkHullsWith, type WalkFacts } from '../support/walk/index.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await openForGenealogies(shop);
});
afterAll(() => service.close());

const FLOOR = 1e-9;
/** Shares nearer to the least share than this may fall on either side: what is kept is cut at the floor. */
const NEAR = 1e-6;
const SHARES = [0, 0.05, 0.3, 0.75];

const numbersOf = async (): Promise<ReadonlyMap<string, string>> => {
  const rows = await service.asOwner<{ hull_id: string; as_printed: string }>(
    "select hull_id, as_printed from fact.hull_number where kind = 'hull number'",
  );
  return new Map(rows.map((row) => [row.hull_id, row.as_printed]));
};

/** Holds a lot at a least share, and compares the hulls it reaches with a walk over the bare facts. */
const compareAt = async (lot: string, minShare: number, facts: WalkFacts, numbers: ReadonlyMap<string, string>) => {
  const { id, result } = await shop.receipt(`/api/lots/${lot}/holds`, { kind: 'quality', reason: 'x', minShare });
  const { items } = await shop.read<HeldHullPage>(`/api/holds/${id}/hulls?limit=500`);
  const found = new Set(items.filter(({ hull, reached }) => hull !== null && reached).map(({ hull }) => hull));
  const walked = walkHullsWith(lot, facts, { floor: FLOOR });
  for (const hull of walked) {
    const share = toNumber(hull.placeShareAboveFloor);
    if (Math.abs(share - minShare) < NEAR) continue;
    const number = numbers.get(hull.hull) ?? '';
    expect([number, found.has(number)]).toEqual([number, share >= minShare]);
  }
  const known = new Set(walked.map(({ hull }) => numbers.get(hull)));
  expect([...found].filter((hull) => !known.has(hull ?? ''))).toEqual([]);
  expect(Number(result['reached'])).toBe(items.length);
  return walked.length;
};

const holdAndCompare = async (invented: InventedGenealogy): Promise<void> => {
  const recorder = new GenealogyRecorder(shop, invented);
  await recorder.record();
  const codes = invented.lots.map((lot) => recorder.code(lot.id));
  const own = new Set(
    (await service.asOwner<{ id: string }>('select root as id from fact.lot where code = any($1)', [codes])).map(
      ({ id }) => id,
    ),
  );
  const all = await readFacts((sql) => service.asOwner(sql));
  const facts = {
    lots: all.lots.filter(({ id }) => own.has(id)),
    inputs: all.inputs.filter(({ lot }) => own.has(lot)),
    uses: all.uses.filter(({ lot }) => own.has(lot)),
    joins: all.joins,
  };
  const numbers = await numbersOf();
  for (const [i, lot] of [...own].entries()) await compareAt(lot, SHARES[i % SHARES.length] ?? 0, facts, numbers);
};

describe('the hulls that a hold reaches', () => {
  it('are at any least share those that a walk over the bare facts finds', async () => {
    await fc.assert(fc.asyncProperty(randomGenealogy(25), holdAndCompare), { numRuns: 4, endOnFailure: true });
  }, 240_000);
});

let made = 0;
/** A hold on a lot that went whole into one hull and a fifth into another. */
const twoHulls = async () => {
  made += 1;
  const n = `R${made}`;
  await shop.receive(`${n}-bad`, 'RES-VE');
  await shop.receive(`${n}-good`, 'RES-VE');
  await shop.startHull(`${n}-1`);
  await shop.layer(`${n}-1`, 'L2', [{ lot: `${n}-bad`, amount: kg(5) }]);
  await shop.startHull(`${n}-2`);
  await shop.layer(`${n}-2`, 'L2', [
    { lot: `${n}-bad`, amount: kg(1) },
    { lot: `${n}-good`, amount: kg(4) },
  ]);
  const id = await shop.act(`/api/lots/${n}-bad/holds`, { kind: 'quality', reason: 'gel time' });
  return { n, id };
};
const say = (id: string, hull: string, what = 'checked') =>
  shop.post(`/api/holds/${id}/dispositions`, shop.envelope({ hulls: [hull], what }));
const close = (id: string) => shop.post(`/api/holds/${id}/closings`, shop.envelope({ reason: 'done' }));
const figures = async (id: string) => (await shop.read<HoldView>(`/api/holds/${id}`)).figures;

describe('at the same moment', () => {
  it('two close a hold: it is closed once', async () => {
    for (let i = 0; i < 3; i += 1) {
      const { n, id } = await twoHulls();
      await say(id, `${n}-1`);
      await say(id, `${n}-2`);
      const answers = await Promise.all([close(id), close(id), close(id)]);
      expect(answers.map(({ status }) => status).sort()).toEqual([201, 409, 409]);
    }
  });

  it('one finds the fault again and one closes: either it is closed, or the hull is open', async () => {
    for (let i = 0; i < 5; i += 1) {
      const { n, id } = await twoHulls();
      await say(id, `${n}-1`);
      await say(id, `${n}-2`);
      const [found, closed] = await Promise.all([say(id, `${n}-1`, 'found'), close(id)]);
      expect([
        [201, 409],
        [409, 201],
      ]).toContainEqual([found.status, closed.status]);
      expect((await figures(id)).open).toBe(found.status === 201 ? 1 : 0);
    }
  });

  it('one disposes of a hull and one narrows it away: both are kept, and the rest stays open', async () => {
    for (let i = 0; i < 5; i += 1) {
      const { n, id } = await twoHulls();
      const narrowing = shop.post(
        `/api/holds/${id}/scopes`,
        shop.envelope({ minShare: 0.5, reason: 'a fifth is sound' }),
      );
      const [said, narrowed] = await Promise.all([say(id, `${n}-2`, 'found'), narrowing]);
      expect([said.status, narrowed.status]).toEqual([201, 201]);
      expect(await figures(id)).toMatchObject({ reached: 1, below: 1, open: 1 });
      const { items } = await shop.read<HeldHullPage>(`/api/holds/${id}/hulls?which=out`);
      expect(items.map(({ hull, said: all }) => [hull, all.map(({ what }) => what)])).toEqual([[`${n}-2`, ['found']]]);
      expect((await close(id)).status).toBe(409);
      await say(id, `${n}-1`);
      // The fault was found in the one that was narrowed away: something must be done about it all the same.
      expect(await close(id)).toMatchObject({ status: 409, body: { hulls: [`${n}-2`], count: 1 } });
      await say(id, `${n}-2`, 'repaired');
      expect((await close(id)).status).toBe(201);
    }
  });

  it('two narrow a hold: one of them is told to look again', async () => {
    const { id } = await twoHulls();
    const narrow = (minShare: number) =>
      shop.post(`/api/holds/${id}/scopes`, shop.envelope({ minShare, reason: 'tested' }));
    const answers = await Promise.all([narrow(0.1), narrow(0.1)]);
    expect(answers.filter(({ status }) => status === 201)).toHaveLength(1);
  });
});
