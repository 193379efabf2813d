import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import type { HullLots } from '@hull-record/contracts';
import { compareSearch, searchHulls } from '../support/compare-search.js';
import { randomGenealogy, tankChain, type InventedGenealogy } from '../support/random-genealogy.js';
import { GenealogyRecorder, openForGenealogies } from '../support/record-genealogy.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';
import { readFacts, toNumber, walkLotsIn, type WalkFacts } from '../support/walk/index.js';

/** How many random genealogies are recorded; more by RUNS=100. */
const RUNS = Number(process.env['RUNS'] ?? 10);

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await openForGenealogies(shop);
});
afterAll(() => service.close());

/** The facts of one genealogy: others in the same plant have nothing to do with it, and would only be walked in vain. */
const factsOf = async (lots: readonly string[]): Promise<WalkFacts> => {
  const all = await readFacts((sql) => service.asOwner(sql));
  const own = new Set(lots);
  return {
    lots: all.lots.filter((lot) => own.has(lot.id)),
    inputs: all.inputs.filter((input) => own.has(input.lot)),
    uses: all.uses.filter((use) => own.has(use.lot)),
    joins: all.joins,
  };
};

const hullNumbers = async (): Promise<ReadonlyMap<string, string>> => {
  const rows = await service.asOwner<{ hull_id: string; as_printed: string }>(
    "select hull_id, as_printed from fact.hull_number where kind = 'hull number'",
  );
  return new Map(rows.map((row) => [row.hull_id, row.as_printed]));
};

const lotIds = async (codes: readonly string[]): Promise<string[]> =>
  (await service.asOwner<{ id: string }>('select root as id from fact.lot where code = any($1)', [codes])).map(
    (row) => row.id,
  );

/** Records a genealogy and compares every lot of it with the walk, forward; and every hull, backward. */
const recordAndCompare = async (invented: InventedGenealogy): Promise<void> => {
  const recorder = new GenealogyRecorder(shop, invented);
  await recorder.record();
  await compareAll(recorder, invented);
};

const compareAll = async (recorder: GenealogyRecorder, invented: InventedGenealogy): Promise<void> => {
  const own = await lotIds(invented.lots.map((lot) => recorder.code(lot.id)));
  const known = await factsOf(own);
  const numbers = await hullNumbers();
  for (const id of own) await compareSearch(shop, id, known, numbers);
  const ids = new Map([...numbers].map(([id, number]) => [number, id]));
  for (const hull of new Set(invented.joins.map((join) => recorder.code(join.hull)))) {
    await compareBackward(hull, ids.get(hull) ?? '', known);
  }
};

const compareBackward = async (number: string, id: string, known: WalkFacts): Promise<void> => {
  const { body } = await shop.get(`/api/hulls/${number}/lots`);
  const found = new Map((body as unknown as HullLots).lots.map((lot) => [lot.lotId, lot.kg]));
  const walked = walkLotsIn(id, known).filter((lot) => lot.received);
  const total = walked.reduce((sum, lot) => sum + toNumber(lot.kg), 0);
  for (const lot of walked) {
    const exact = toNumber(lot.kg);
    expect(Math.abs((found.get(lot.lot) ?? 0) - exact)).toBeLessThanOrEqual(exact * 1e-9 + total * 2e-9);
  }
  expect([...found.keys()].filter((lot) => !walked.some((each) => each.lot === lot))).toEqual([]);
};

describe('the search', () => {
  it('finds on random genealogies what a walk over the bare facts finds, forward and backward', async () => {
    await fc.assert(fc.asyncProperty(randomGenealogy(50), recordAndCompare), { numRuns: RUNS, endOnFailure: true });
  }, 240_000);

  it('finds through a tank filled some hundred times what the walk finds', async () => {
    const [chain] = fc.sample(tankChain({ minFills: 220, maxFills: 220 }), { numRuns: 1, seed: 20_260_105 });
    const invented = chain as InventedGenealogy;
    const recorder = new GenealogyRecorder(shop, invented);
    await recorder.record();
    const known = await factsOf(await lotIds(invented.lots.map((lot) => recorder.code(lot.id))));
    const numbers = await hullNumbers();
    const codes = invented.lots.filter((_, i) => i % 60 < 2).map((lot) => recorder.code(lot.id));
    for (const id of await lotIds(codes)) await compareSearch(shop, id, known, numbers);
    const [first] = invented.lots;
    const members = await searchHulls(shop, recorder.code(first?.id ?? ''), '&belowFloor=members%20only');
    expect(members.filter((hull) => hull.trace).length).toBeGreaterThan(150);
    expect(members).toHaveLength(220);
  }, 240_000);
});
