import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { AtOnce } from '../../apps/service/src/platform/composition/at-once.js';
import { rebuildDerived } from '../../apps/service/src/platform/composition/rebuild.js';
import { readAsOne } from '../../apps/service/src/platform/database/read-as-one.js';
import { readRoll } from '../../apps/service/src/platform/roll/read-roll.js';
import { renewRoll } from '../../apps/service/src/platform/roll/renew-roll.js';
import { keptDerived } from '../support/derived.js';
import { recomputed } from '../support/recomputed.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';
import { week, type Act } from '../support/weeks/acts/week.js';
import { compare } from '../support/weeks/compare.js';
import { PlantModel } from '../support/weeks/plant-model.js';
import { Plant } from '../support/weeks/plant.js';

/** How many weeks are lived; more by WEEKS=100. */
const WEEKS = Number(process.env['WEEKS'] ?? 8);
const ACTS = 60;
/** With SHRINK=1 a failing week is cut down to the acts that matter. */
const SHRINKS = process.env['SHRINK'] !== undefined;
/** SEED and WEEK, as a failure names them, live that week again. */
const AGAIN =
  process.env['SEED'] === undefined ? {} : { seed: Number(process.env['SEED']), path: process.env['WEEK'] ?? '0' };

describe.each([
  { how: 'at once', atOnce: new AtOnce() },
  { how: 'by a job, beside everything else', atOnce: new AtOnce(0, 0) },
])('what corrections reach, worked out $how', ({ atOnce }) => {
  let service: RunningService;
  let shop: Shop;
  let weeks = 0;
  beforeAll(async () => {
    service = await startService({ atOnce });
    shop = await new Shop(service).open();
  });
  afterAll(() => service.close());

  const live = async (acts: readonly Act[]): Promise<void> => {
    weeks += 1;
    const plant = await Plant.open(shop, service, `W${weeks}`);
    const model = new PlantModel(plant.hulls);
    try {
      await renewRoll(service.db);
      for (const act of acts) await act.run(plant, model);
      await recomputed(service);
      await compare(plant, model);
      await rollIsAsFacts();
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      throw new Error(`${model.story.join('\n')}\n${why}`, { cause: error });
    }
  };

  /** What the week changed is marked: the roll, read with its marks, tells what facts tell. */
  const rollIsAsFacts = (): Promise<void> =>
    readAsOne(service.db, async (tx) => {
      const [of] = await tx.query<[{ id: string }]>('select id from fact.plant');
      expect([...(await readRoll(tx, of.id))]).toEqual([...(await readRoll(tx, of.id, 'facts'))]);
    });

  it('random weeks end as a small model of the plant says, whatever is entered late, corrected or withdrawn', async () => {
    const run = await fc.check(fc.asyncProperty(week(ACTS), live), {
      numRuns: WEEKS,
      endOnFailure: !SHRINKS,
      ...AGAIN,
    });
    if (run.failed) throw new Error(`SEED=${run.seed} WEEK=${run.counterexamplePath}: ${String(run.errorInstance)}`);
  }, 3_600_000);

  it('what is kept is what a rebuild from the facts gives', async () => {
    const kept = await keptDerived(service);
    const [plant] = await service.asOwner<{ id: string }>('select id from fact.plant');
    await rebuildDerived(service.db, plant?.id ?? '');
    expect(await keptDerived(service)).toEqual(kept);
  }, 120_000);
});
