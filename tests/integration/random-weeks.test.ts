import { afterAll, beforeAll, expect, it } from '@jest/globals';
import fc from 'fast-check';
import type { LotView } from '@hull-record/contracts';
import { rebuildDerived } from '../../apps/service/src/platform/composition/rebuild.js';
import { compareSearch } from '../support/compare-search.js';
import { keptDerived } from '../support/derived.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';
import { readFacts } from '../support/walk/index.js';
import { week, type Act } from '../support/weeks/acts.js';
import { PlantModel } from '../support/weeks/plant-model.js';
import { Plant } from '../support/weeks/plant.js';

/** How many weeks are lived; more by WEEKS=100. */
const WEEKS = Number(process.env['WEEKS'] ?? 12);
const ACTS = 60;
/** With SHRINK=1 a failing week is cut down to the acts that matter. */
const SHRINKS = process.env['SHRINK'] !== undefined;

let service: RunningService;
let shop: Shop;
let weeks = 0;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
});
afterAll(() => service.close());

/** Everything the model knows is asked of the service: of which lot each draw is, and what is left of each lot. */
const compareWithModel = async (plant: Plant, model: PlantModel): Promise<void> => {
  const told: unknown[] = [];
  const known: unknown[] = [];
  for (const draw of model.draws) {
    const { lot, origin, kg } = await plant.standing(draw.root);
    told.push([draw.at, origin === 'unidentified' ? 'nobody can say' : lot, kg]);
    known.push([draw.at, model.lotOf(draw) ?? 'nobody can say', draw.kg]);
  }
  for (const lot of [...model.lots, ...model.fills.map(({ code }) => code)]) {
    told.push([lot, (await shop.read<LotView>(`/api/lots/${lot}`)).leftKg]);
    known.push([lot, model.left(lot)]);
  }
  expect(told).toEqual(known);
};

/** Every lot of the week is searched, and compared with an exact walk over the facts. */
const compareWithWalk = async (plant: Plant): Promise<void> => {
  const all = await readFacts((sql) => service.asOwner(sql));
  const hulls = await service.asOwner<{ hull_id: string; as_printed: string }>(
    "select hull_id, as_printed from fact.hull_number where kind = 'hull number' and as_printed = $1",
    [`${plant.name}-HULL`],
  );
  const joins = all.joins.filter(({ hull }) => hulls.some(({ hull_id }) => hull_id === hull));
  const uses = all.uses.filter(({ part }) => joins.some((join) => join.part === part));
  const facts = { ...all, joins, uses };
  const numbers = new Map(hulls.map((hull) => [hull.hull_id, hull.as_printed]));
  const lots = await service.asOwner<{ root: string }>('select distinct root from fact.lot where code like $1', [
    `${plant.name}-%`,
  ]);
  const standing = new Set(facts.lots.map(({ id }) => id));
  for (const { root } of lots) if (standing.has(root)) await compareSearch(shop, root, facts, numbers);
};

const live = async (acts: readonly Act[]): Promise<void> => {
  weeks += 1;
  const plant = await Plant.open(shop, service, `W${weeks}`);
  const model = new PlantModel();
  try {
    for (const act of acts) await act.run(plant, model);
    await compareWithModel(plant, model);
    await compareWithWalk(plant);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new Error(`${model.story.join('\n')}\n${why}`, { cause: error });
  }
};

it('random weeks end as a small model of the plant says, whatever is entered late, corrected or withdrawn', async () => {
  const run = await fc.check(fc.asyncProperty(week(ACTS), live), { numRuns: WEEKS, endOnFailure: !SHRINKS });
  if (run.failed) throw new Error(`Seed ${run.seed}, path ${run.counterexamplePath}: ${String(run.errorInstance)}`);
}, 3_600_000);

it('what is kept is what a rebuild from the facts gives', async () => {
  const kept = await keptDerived(service);
  const [plant] = await service.asOwner<{ id: string }>('select id from fact.plant');
  await rebuildDerived(service.db, plant?.id ?? '');
  expect(await keptDerived(service)).toEqual(kept);
}, 120_000);
