import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type {
  DefectSuspects,
  HullLots,
  HullView,
  LotView,
  NonconformityPage,
  PartView,
  ReachPage,
  RecomputationsPage,
  RecomputationView,
  SharedLotsPage,
} from '@hull-record/contracts';
import { createApp } from '../../apps/service/src/create-app.js';
import { AtOnce } from '../../apps/service/src/platform/composition/at-once.js';
import { rebuildDerived } from '../../apps/service/src/platform/composition/rebuild.js';
import { keptDerived } from '../support/derived.js';
import { keepJobsWaiting, recomputed } from '../support/recomputed.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop } from '../support/shop.js';

/** Fills of one tank, a hull from each: what is said of the first reaches them all. More than the job composes in a step. */
const FILLS = 24;

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService({ atOnce: new AtOnce(3, 3) });
  shop = await new Shop(service).open();
  await shop.receive('G', 'GEL-W');
  await shop.receive('R-OTHER', 'RES-VE');
  await shop.receive('R-ORTHO', 'GEL-W');
  for (let i = 1; i <= FILLS; i += 1) {
    await shop.receive(`R-${i}`, 'RES-VE');
    await shop.fill(`F-${i}`, i === 1 ? null : kg(500), [{ lot: `R-${i}`, amount: kg(500) }]);
    await hullFrom(`Y${i}`);
  }
  await shop.layer('Y3', 'L1', [{ lot: 'G', amount: kg(18) }]);
});
afterAll(() => service.close());

const hullFrom = async (hull: string): Promise<void> => {
  await shop.startHull(hull);
  await shop.layer(hull, 'L2', [{ tank: 'T1', amount: kg(20) }]);
};
/** The input of a fill that stands, by the code of what went in. */
const inputOf = async (fill: string, lot: string): Promise<string> => {
  const { inputs } = await shop.read<LotView>(`/api/lots/${fill}`);
  return String(inputs.find((input) => input.lot === lot)?.id);
};
const newest = async (): Promise<RecomputationView> =>
  (await shop.read<RecomputationsPage>('/api/recomputations?limit=1')).items[0] as RecomputationView;
const hulls = (lot: string): Promise<ReachPage> => shop.read<ReachPage>(`/api/lots/${lot}/hulls?limit=500`);
const sumOfR1 = async (hull: string, lot: string): Promise<number | undefined> =>
  (await shop.read<HullLots>(`/api/hulls/${hull}/lots`)).lots.find((found) => found.lot === lot)?.kg;

describe('a correction of a year-old fill', () => {
  let letGo: () => Promise<void>;
  let id: string;
  beforeAll(async () => {
    letGo = await keepJobsWaiting(service);
    const input = await inputOf('F-1', 'R-1');
    const receipt = await shop.receipt('/api/corrections', {
      corrects: input,
      reason: 'the delivery note says another lot',
      set: { kind: 'lot input', input: 'R-OTHER' },
    });
    id = receipt.id;
    expect(receipt.result).toMatchObject({ recomposedLots: FILLS, recomputedPlaces: FILLS });
  });

  it('is kept at once, and what it reaches is marked', async () => {
    expect(await newest()).toMatchObject({
      id,
      because: 'correction',
      finishedAt: null,
      tankLots: { total: FILLS, left: FILLS },
      places: { total: FILLS, left: FILLS },
      nonconformities: null,
      trouble: null,
    });
  });

  it('is said by every answer that rests on it', async () => {
    const says = { recomputations: [id], says: expect.stringContaining('figures may change') };
    const defect = await shop.defect('Y5-H', { layer: 'L2' });
    const [streamed] = (
      await (await fetch(`${service.url}/api/lots/R-2/hulls.ndjson`, { headers: await service.signedIn() })).text()
    )
      .trim()
      .split('\n')
      .slice(-1);
    expect((await shop.read<HullLots>('/api/hulls/Y24/lots')).recomputing).toMatchObject(says);
    expect((await hulls('R-1')).recomputing).toMatchObject(says); // thought to be there
    expect((await hulls('R-OTHER')).recomputing).toMatchObject(says); // is there
    expect((await hulls('R-2')).recomputing).toMatchObject(says); // its share may change
    expect((await hulls('F-9')).recomputing).toMatchObject(says);
    expect((await shop.read<LotView>('/api/lots/F-9')).recomputing).toMatchObject(says);
    expect((await shop.read<PartView>('/api/parts/Y24-H')).recomputing).toMatchObject(says);
    expect((await shop.read<DefectSuspects>(`/api/defects/${defect}/lots`)).recomputing).toMatchObject(says);
    const shared = await shop.post('/api/shared-lots', { hulls: ['Y1', 'Y2'] });
    expect((shared.body as unknown as SharedLotsPage).recomputing).toMatchObject(says);
    expect(JSON.parse(streamed ?? '')).toMatchObject({ recomputing: says });
  });

  it('is not said by what does not', async () => {
    expect((await hulls('G')).recomputing).toBeNull();
    expect((await shop.read<LotView>('/api/lots/R-2')).recomputing).toBeNull();
  });

  it('stands in the way of release', async () => {
    const { inTheWay } = (await shop.read<HullView>('/api/hulls/Y24')).release;
    expect(inTheWay).toContainEqual(expect.objectContaining({ rule: 'being-recomputed', part: 'Y24-H', about: id }));
  });

  it('is followed by what is filled and used meanwhile', async () => {
    await shop.fill('F-LATER', kg(500), [{ lot: 'R-2', amount: kg(100) }]);
    await hullFrom('YLATER');
    expect(await newest()).toMatchObject({ tankLots: { left: FILLS + 1 }, places: { left: FILLS + 1 } });
    expect((await shop.read<HullLots>('/api/hulls/YLATER/lots')).recomputing).not.toBeNull();
  });

  it('is worked out when the job runs, as a rebuild from the facts would', async () => {
    await letGo();
    await recomputed(service);
    expect(await newest()).toMatchObject({ id, tankLots: { left: 0 }, places: { left: 0 }, nonconformities: 0 });
    expect((await newest()).finishedAt).not.toBeNull();
    // Half of the first fill's heel a fill: 20 kg of 1/2, then of 1/4 in the third.
    expect(await sumOfR1('Y1', 'R-OTHER')).toBeCloseTo(20, 9);
    expect(await sumOfR1('Y3', 'R-OTHER')).toBeCloseTo(5, 9);
    expect(await sumOfR1('Y3', 'R-1')).toBeUndefined();
    const kept = await keptDerived(service);
    const [plant] = await service.asOwner<{ id: string }>('select id from fact.plant');
    await rebuildDerived(service.db, plant?.id ?? '');
    expect(await keptDerived(service)).toEqual(kept);
  });

  it('is no longer said, and no longer in the way', async () => {
    expect((await shop.read<HullLots>('/api/hulls/Y24/lots')).recomputing).toBeNull();
    expect((await shop.read<PartView>('/api/parts/Y24-H')).recomputing).toBeNull();
    expect((await hulls('R-OTHER')).recomputing).toBeNull();
    const { inTheWay } = (await shop.read<HullView>('/api/hulls/Y24')).release;
    expect(inTheWay.map(({ rule }) => rule)).not.toContain('being-recomputed');
  });

  it('stands in the journal as one summary with its counts', async () => {
    const entries = await service.asOwner<{ entry: string }>(
      "select entry from fact.journal where kind = 'recomputed'",
    );
    expect(entries.map(({ entry }) => JSON.parse(entry) as unknown)).toMatchObject([
      { body: { recomputation: id, tankLots: FILLS, places: FILLS }, result: { nonconformities: 0 } },
    ]);
  });
});

describe('the job of a correction', () => {
  it('judges what comes to light, once', async () => {
    const input = await inputOf('F-5', 'R-5');
    await shop.correct(input, { kind: 'lot input', input: 'R-ORTHO' });
    await recomputed(service);
    const { items } = await shop.read<NonconformityPage>(
      '/api/nonconformities?rule=material-not-in-schedule&limit=500',
    );
    // Down to one part in a thousand of what was used: ten fills on, half of it stays each time.
    const parts = Array.from({ length: FILLS - 4 }, (_, i) => `Y${i + 5}-H`);
    expect(items.map(({ part }) => part).sort()).toEqual(
      [...parts.slice(0, 9), 'YLATER-H'].sort().slice(0, items.length),
    );
    expect(await newest()).toMatchObject({ nonconformities: items.length });
  });

  it('says what went wrong, and is tried again', async () => {
    await service.asOwner('alter table derived.lot_composition add constraint broken check (false) not valid');
    await shop.correct(await inputOf('F-2', 'R-2'), { kind: 'lot input', amount: kg(400) });
    for (;;) {
      const { trouble } = await newest();
      if (trouble?.includes('broken')) break;
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
    expect((await shop.read<HullLots>('/api/hulls/Y9/lots')).recomputing).not.toBeNull();
    await service.asOwner('alter table derived.lot_composition drop constraint broken');
    while ((await newest()).finishedAt === null) await new Promise((resolve) => setTimeout(resolve, 50));
    expect(await newest()).toMatchObject({ trouble: null, places: { left: 0 } });
  }, 60_000);

  it('goes on when a service starts and nothing is left of it but the marks', async () => {
    const letGo = await keepJobsWaiting(service);
    await shop.correct(await inputOf('F-3', 'R-3'), { kind: 'lot input', amount: kg(450) });
    await service.asOwner('delete from graphile_worker._private_jobs');
    await letGo();
    expect((await newest()).finishedAt).toBeNull();
    const plant = { code: 'TARROW', timeZone: 'America/New_York' };
    const second = await createApp({ db: service.db, dataDir: service.dataDir, plant, quiet: true });
    await recomputed(service);
    await second.close();
    expect((await newest()).finishedAt).not.toBeNull();
  });

  it('is kept with the fact or not at all', async () => {
    const before = await service.asOwner<{ n: number }>('select count(*)::int as n from work.recomputation');
    const { status } = await shop.post(
      '/api/corrections',
      shop.envelope({
        corrects: await inputOf('F-1', 'R-OTHER'),
        reason: 'x',
        set: { kind: 'lot input', input: 'F-9' },
      }),
    );
    expect(status).toBe(422);
    expect(await service.asOwner('select count(*)::int as n from work.recomputation')).toEqual(before);
  });

  it('is not needed for a correction that reaches little', async () => {
    const { id } = await newest();
    const layer = await shop.layer('Y4', 'L1', [{ lot: 'G', amount: kg(18) }]);
    const [used] = await service.asOwner<{ id: string }>('select id from fact.used where into_id = $1', [layer]);
    await shop.correct(String(used?.id), { kind: 'used', amount: kg(17) });
    expect((await newest()).id).toBe(id);
    expect(await sumOfR1('Y4', 'G')).toBe(17);
  });
});

describe('the list of recomputations', () => {
  it('is read page by page', async () => {
    const all = await shop.read<RecomputationsPage>('/api/recomputations');
    const first = await shop.read<RecomputationsPage>('/api/recomputations?limit=2');
    const rest = await shop.read<RecomputationsPage>(`/api/recomputations?limit=2&cursor=${String(first.next)}`);
    expect([...first.items, ...rest.items].map(({ id }) => id)).toEqual(all.items.slice(0, 4).map(({ id }) => id));
  });

  it('has none for a fact that reached little', async () => {
    expect(await shop.get('/api/recomputations/nothing')).toMatchObject({ status: 404 });
  });
});
