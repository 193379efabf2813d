import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { AtOnce } from '../../apps/service/src/platform/composition/at-once.js';
import { rebuildDerived } from '../../apps/service/src/platform/composition/rebuild.js';
import { compareSearch } from '../support/compare-search.js';
import { keptDerived } from '../support/derived.js';
import { randomGenealogy, type InventedGenealogy } from '../support/random-genealogy.js';
import { GenealogyRecorder, openForGenealogies } from '../support/record-genealogy.js';
import { recomputed } from '../support/recomputed.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';
import { readFacts } from '../support/walk/index.js';

/** How many plans of corrections are followed; more by RUNS=100. */
const RUNS = Number(process.env['RUNS'] ?? 15);

let service: RunningService;
let shop: Shop;
/** A correction to make: of the n-th input or use, counted round. */
const change = fc.record({
  of: fc.constantFrom(
    'input amount' as const,
    'input lot' as const,
    'used amount' as const,
    'used lot' as const,
    'use withdrawn' as const,
  ),
  at: fc.nat(),
  to: fc.nat(),
  grams: fc.integer({ min: 1, max: 2_000_000 }),
});
type Change = typeof change extends fc.Arbitrary<infer C> ? C : never;

const STANDING = `not exists (select 1 from fact.correction c where c.corrects = x.id)`;

const pick = async (table: string, prefix: string, at: number): Promise<{ id: string } | undefined> => {
  const rows = await service.asOwner<{ id: string }>(
    `select x.id from fact.${table} x join fact.lot l on l.id = x.lot_id where l.code like $1 and ${STANDING} order by x.id`,
    [`${prefix}%`],
  );
  return rows[at % Math.max(rows.length, 1)];
};

const correctionOf = (made: Change, lots: readonly string[]): { table: string; set: Fields | undefined } => {
  const amount = kg((made.grams / 1000).toFixed(3));
  const lot = lots[made.to % lots.length];
  switch (made.of) {
    case 'input amount':
      return { table: 'lot_input', set: { kind: 'lot input', amount } };
    case 'input lot':
      return { table: 'lot_input', set: { kind: 'lot input', input: lot } };
    case 'used amount':
      return { table: 'used', set: { kind: 'used', amount } };
    case 'used lot':
      return { table: 'used', set: { kind: 'used', lot } };
    case 'use withdrawn':
      return { table: 'used', set: undefined };
  }
};

/** Makes one correction; an input that would close a circle, or of a lot by itself, is refused and changes nothing. */
const correct = async (made: Change, prefix: string, lots: readonly string[]): Promise<void> => {
  const { table, set } = correctionOf(made, lots);
  const fact = await pick(table, prefix, made.at);
  if (!fact) return;
  const { status, body } = await shop.post(
    '/api/corrections',
    shop.envelope({ corrects: fact.id, reason: 'as weighed', set }),
  );
  const refused =
    status === 422 && String((body as unknown as { type: string }).type) === '/problems/lot-made-of-itself';
  if (!refused) expect(status).toBe(201);
};

const follow = async ([invented, changes]: [InventedGenealogy, readonly Change[]]): Promise<void> => {
  const recorder = new GenealogyRecorder(shop, invented);
  await recorder.record();
  const codes = invented.lots.map((lot) => recorder.code(lot.id));
  for (const made of changes) await correct(made, recorder.code(''), codes);
  await recomputed(service);
  const known = await readFacts((sql) => service.asOwner(sql));
  const rows = await service.asOwner<{ root: string; code: string }>(
    'select root, code from fact.lot where code = any($1)',
    [codes],
  );
  const own = new Set(rows.map((row) => row.root));
  const facts = {
    ...known,
    lots: known.lots.filter((lot) => own.has(lot.id)),
    inputs: known.inputs.filter((input) => own.has(input.lot)),
    uses: known.uses.filter((use) => own.has(use.lot)),
  };
  const hulls = await service.asOwner<{ hull_id: string; as_printed: string }>(
    "select hull_id, as_printed from fact.hull_number where kind = 'hull number'",
  );
  const numbers = new Map(hulls.map((hull) => [hull.hull_id, hull.as_printed]));
  for (const { root } of rows) await compareSearch(shop, root, facts, numbers);
};

describe.each([
  { how: 'at once', atOnce: new AtOnce() },
  { how: 'by a job', atOnce: new AtOnce(0, 0) },
])('what is searched, worked out $how', ({ atOnce }) => {
  beforeAll(async () => {
    service = await startService({ atOnce });
    shop = await new Shop(service).open();
    await openForGenealogies(shop);
  });
  afterAll(() => service.close());

  it('follows corrections of inputs and uses, whatever they reach', async () => {
    const plan = fc.tuple(randomGenealogy(40), fc.array(change, { minLength: 1, maxLength: 8 }));
    await fc.assert(fc.asyncProperty(plan, follow), { numRuns: RUNS, endOnFailure: true });
  }, 240_000);

  it('keeps to the last bit what a rebuild from the facts works out', async () => {
    const kept = await keptDerived(service);
    const [plant] = await service.asOwner<{ id: string }>('select id from fact.plant');
    const rebuilt = await rebuildDerived(service.db, plant?.id ?? '');
    expect(rebuilt.tankLots).toBeGreaterThan(5);
    expect(rebuilt.places).toBeGreaterThan(20);
    expect(await keptDerived(service)).toEqual(kept);
  }, 120_000);
});
