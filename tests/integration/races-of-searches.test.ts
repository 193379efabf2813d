import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HullLots, LotView } from '@hull-record/contracts';
import { LotHulls } from '../../apps/service/src/trace/lot-hulls.query.js';
import { searchHulls } from '../support/compare-search.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop } from '../support/shop.js';

const HULLS = ['S-1', 'S-2', 'S-3', 'S-4', 'S-5', 'S-6'];
/** How often the past is corrected, and corrected back, while others search. */
const TURNS = 4;

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  for (const lot of ['R-1', 'R-2']) await shop.receive(lot, 'RES-VE', { happenedAt: day(1) });
  await shop.mix('B-1', [{ lot: 'R-1', amount: kg(100) }], { happenedAt: day(1) });
  await shop.fill('F-1', null, [{ lot: 'B-1', amount: kg(100) }], { happenedAt: day(2) });
  for (const hull of HULLS) {
    await shop.startHull(hull, { happenedAt: day(1) });
    const at = { startedAt: day(10), endedAt: day(10), happenedAt: day(10) };
    await shop.layer(hull, 'L2', [{ tank: 'T1', amount: kg(10) }], at);
  }
});
afterAll(() => service.close());

const day = (n: number): string => new Date(Date.UTC(2026, 1, n)).toISOString();

let turns = 0;

/** A fill that had been forgotten is entered, so that half of each hull is of another lot; and is withdrawn again. */
const correctBackAndForth = async (): Promise<void> => {
  for (let turn = 0; turn < TURNS; turn += 1) {
    turns += 1;
    const inputs = [{ lot: 'R-2', amount: kg(50) }];
    const late = await shop.fill(`F-2-${turns}`, kg(50), inputs, { happenedAt: day(5) });
    await shop.correct(late);
  }
};

/** Asks again and again until the corrections are done, and gives every different answer. */
const answersMeanwhile = async <T>(ask: () => Promise<T>): Promise<readonly T[]> => {
  let going = true;
  const answers = new Map<string, T>();
  const asking = async (): Promise<void> => {
    while (going) {
      const answer = await ask();
      answers.set(JSON.stringify(answer), answer);
    }
  };
  const all = [asking(), asking()];
  await correctBackAndForth().finally(() => {
    going = false;
  });
  await Promise.all(all);
  return [...answers.values()];
};

const rounded = (kilograms: number | null): number => Math.round((kilograms ?? 0) * 1e6) / 1e6;

describe('a search that runs while the past is corrected', () => {
  it.each(['R-1', 'B-1', 'F-1'])('of the hulls of %s, is answered as it was before, or as it is after', async (lot) => {
    const answers = await answersMeanwhile(async () =>
      (await searchHulls(shop, lot, '', 50)).map((hull) => [hull.hull, rounded(hull.kg), hull.largestLayerShare]),
    );
    const of = (kilograms: number, share: number): unknown => HULLS.map((hull) => [hull, kilograms, share]);
    for (const answer of answers) expect([of(10, 1), of(5, 0.5)]).toContainEqual(answer);
  });

  it('of the lots of a hull, is answered as it was before, or as it is after', async () => {
    const answers = await answersMeanwhile(async () => {
      const { lots } = await shop.read<HullLots>('/api/hulls/S-1/lots');
      return lots.map(({ lot, kg: kilograms, places }) => [
        ...[lot, rounded(kilograms)],
        places.map(({ paths }) => paths.map((path) => path.map((step) => step.lot.replace(/^F-2-.*/, 'F-2')))),
      ]);
    });
    const through = (...path: string[]): unknown => [[path]];
    const before = [['R-1', 10, through('R-1', 'B-1', 'F-1')]];
    const after = [
      ['R-1', 5, through('R-1', 'B-1', 'F-1', 'F-2')],
      ['R-2', 5, through('R-2', 'F-2')],
    ];
    for (const answer of answers) expect([before, after]).toContainEqual(answer);
  });

  it('of what a lot is made of, agrees with its inputs', async () => {
    await shop.mix('B-9', [{ tank: 'T1', amount: kg(1) }], { happenedAt: day(12) });
    const answers = await answersMeanwhile(async () => {
      const { inputs, composition } = await shop.read<LotView>('/api/lots/B-9');
      return [inputs.map(({ lot }) => lot.slice(0, 3)), composition.map(({ source }) => source).sort()];
    });
    const either = [
      [['F-1'], ['R-1']],
      [['F-2'], ['R-1', 'R-2']],
    ];
    for (const answer of answers) expect(either).toContainEqual(answer);
  });

  it('page by page, says at its end that the past was corrected meanwhile, and only then', async () => {
    const [calm, disturbed] = [await readSlowly(() => Promise.resolve()), await readSlowly(correctBackAndForth)];
    expect(calm.map(({ hull }) => hull)).toEqual(HULLS);
    expect(disturbed.map(({ hull }) => hull)).toEqual([...HULLS, undefined]);
    expect(disturbed.at(-1)?.['corrected']).toContain('ask again');
    const used = await readSlowly(async () => {
      await shop.layer('S-1', 'L3', [{ lot: 'R-2', amount: kg(1) }]);
    });
    expect(used.map(({ hull }) => hull)).toEqual(HULLS);
  });
});

/** Reads a stream of two hulls a page, and does something after the first page. */
const readSlowly = async (meanwhile: () => Promise<void>): Promise<readonly Record<string, unknown>[]> => {
  const query = { minShare: 0, belowFloor: 'leave out' } as const;
  const lines = (await service.get(LotHulls).stream('R-1', query, 2))[Symbol.asyncIterator]();
  const read: Record<string, unknown>[] = [];
  for (let line = await lines.next(); line.done !== true; line = await lines.next()) {
    read.push(JSON.parse(String(line.value)) as Record<string, unknown>);
    if (read.length === 1) await meanwhile();
  }
  return read;
};
