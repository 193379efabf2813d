import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HeldHull, HeldHullPage, HoldPage, HoldView, HullView } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;

beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
});
afterAll(() => service.close());

const holdLot = (lot: string, more: Fields = {}): Promise<string> =>
  shop.act(`/api/lots/${lot}/holds`, { kind: 'quality', reason: 'gel time', ...more });
const read = (hold: string): Promise<HoldView> => shop.read(`/api/holds/${hold}`);
const hulls = async (hold: string, which = 'all'): Promise<readonly HeldHull[]> =>
  (await shop.read<HeldHullPage>(`/api/holds/${hold}/hulls?which=${which}`)).items;
const names = (list: readonly HeldHull[]): readonly (string | null)[] => list.map(({ hull, part }) => hull ?? part);
const say = (hold: string, hull: string, what: string, more: Fields = {}): Promise<string> =>
  shop.act(`/api/holds/${hold}/dispositions`, { hulls: [hull], what, note: 'looked at', ...more });
const inTheWay = async (hull: string): Promise<readonly string[]> =>
  (await shop.read<HullView>(`/api/hulls/${hull}`)).release.inTheWay.map(({ rule }) => rule);
const refused = async (path: string, fields: Fields): Promise<readonly [number, string]> => {
  const { status, body } = await shop.post(path, shop.envelope(fields));
  return [status, String((body as Fields)['type'])];
};

/** A bad lot in three hulls, whole, half and a tenth of the resin of their skin coat, and in a deck that is in no hull. */
const threeHulls = async (n: string): Promise<string> => {
  await shop.receive(`${n}-bad`, 'RES-VE');
  await shop.receive(`${n}-good`, 'RES-VE');
  for (const [hull, bad] of [
    [`${n}-1`, 10],
    [`${n}-2`, 5],
    [`${n}-3`, 1],
  ] as const) {
    await shop.startHull(hull);
    const good = bad === 10 ? [] : [{ lot: `${n}-good`, amount: kg(10 - bad) }];
    await shop.layer(hull, 'L2', [{ lot: `${n}-bad`, amount: kg(bad) }, ...good]);
  }
  return `${n}-bad`;
};

describe('a hold on a lot', () => {
  it('keeps the list of the hulls it reaches, and shows those below its least share', async () => {
    const lot = await threeHulls('A');
    const { id, result } = await shop.receipt(`/api/lots/${lot}/holds`, {
      ...{ kind: 'quality', reason: 'gel time', minShare: 0.5 },
    });
    expect(result).toMatchObject({ reached: 2, below: 1 });
    const view = await read(id);
    expect(view).toMatchObject({ on: { what: 'lot', code: 'A-bad' }, ended: null, recomputing: null });
    expect(view.figures).toMatchObject({ reached: 2, below: 1, atHold: 2, open: 2, disposed: 0, left: 0 });
    expect((await hulls(id)).map(({ hull, share, state, atHold }) => [hull, share, state, atHold])).toEqual([
      ['A-1', 1, 'in build', { share: 1, state: 'in build' }],
      ['A-2', 0.5, 'in build', { share: 0.5, state: 'in build' }],
    ]);
    expect(await inTheWay('A-1')).toContain('lot-on-hold');
    expect(await inTheWay('A-3')).not.toContain('lot-on-hold');
  });

  it('reaches who comes later, and remembers who was there', async () => {
    const lot = await threeHulls('B');
    const id = await holdLot(lot);
    await shop.startHull('B-4');
    const late = await shop.layer('B-4', 'L2', [{ lot, amount: kg(3) }]);
    expect(names(await hulls(id))).toEqual(['B-1', 'B-2', 'B-3', 'B-4']);
    expect((await hulls(id)).at(-1)).toMatchObject({ atHold: null, reached: true });
    await shop.correct(late);
    const first = await shop.read<{ layers: { record: { id: string } | null }[] }>('/api/parts/B-1-H');
    await shop.correct(first.layers.flatMap(({ record }) => record?.id ?? [])[0] as string);
    expect((await hulls(id, 'out')).map(({ hull, reached }) => [hull, reached])).toEqual([['B-1', false]]);
    expect(names(await hulls(id, 'open'))).toEqual(['B-2', 'B-3']);
  });

  it('is narrowed with a reason, and never widened', async () => {
    const lot = await threeHulls('C');
    const id = await holdLot(lot);
    expect(await refused(`/api/holds/${id}/scopes`, { minShare: 0, reason: 'x' })).toEqual([
      422,
      '/problems/not-narrower',
    ]);
    const { result } = await shop.receipt(`/api/holds/${id}/scopes`, { minShare: 0.3, reason: 'a tenth gels well' });
    expect(result).toEqual({ reached: 2, below: 1 });
    expect(await refused(`/api/holds/${id}/scopes`, { minShare: 0.2, reason: 'x' })).toEqual([
      422,
      '/problems/not-narrower',
    ]);
    expect((await read(id)).scopes.map(({ minShare, reason }) => [minShare, reason])).toEqual([
      [0, null],
      [0.3, 'a tenth gels well'],
    ]);
    expect(names(await hulls(id, 'out'))).toEqual(['C-3']);
    expect([await inTheWay('C-3'), await inTheWay('C-2')]).toEqual([
      expect.not.arrayContaining(['lot-on-hold']),
      expect.arrayContaining(['lot-on-hold']),
    ]);
  });

  it('is narrowed to a period and to a zone; what is of the whole part stays', async () => {
    await shop.act('/api/models/TS86/schedules', {
      ...{ partKind: 'liner', version: 1 },
      layers: [{ code: 'B1', name: 'Bottom', zone: 'bottom', materials: [{ material: 'MAT-450' }] }],
    });
    const lot = await threeHulls('D');
    const id = await holdLot(lot);
    const later = shop.tick();
    await shop.startHull('D-9');
    await shop.layer('D-9', 'L2', [{ lot, amount: kg(3) }]);
    expect(
      (await shop.receipt(`/api/holds/${id}/scopes`, { from: later, reason: 'the drum was opened then' })).result,
    ).toEqual({ reached: 1, below: 3 });
    expect(names(await hulls(id, 'open'))).toEqual(['D-9']);
    expect((await shop.receipt(`/api/holds/${id}/scopes`, { zone: 'bottom', reason: 'x' })).result).toEqual({
      ...{ reached: 1, below: 3 },
    });
  });

  it('is refused for a zone that no laminate schedule has, and told which there are: it would hold nothing', async () => {
    const lot = await threeHulls('Z');
    const refused = (status: number, body: object): void =>
      expect([status, body]).toMatchObject([
        422,
        { errors: [{ pointer: '/zone', detail: expect.stringContaining('bottom') }] },
      ]);
    const placed = await shop.post(
      `/api/lots/${lot}/holds`,
      shop.envelope({ kind: 'quality', reason: 'x', zone: 'botom' }),
    );
    refused(placed.status, placed.body);
    const id = await holdLot(lot);
    const narrowed = await shop.post(`/api/holds/${id}/scopes`, shop.envelope({ zone: 'botom', reason: 'x' }));
    refused(narrowed.status, narrowed.body);
    expect(names(await hulls(id, 'open'))).toEqual(['Z-1', 'Z-2', 'Z-3']);
  });

  it('lets a hull go that is disposed of, and holds it again when the fault is found after all', async () => {
    const lot = await threeHulls('E');
    const id = await holdLot(lot);
    await say(id, 'E-1', 'found');
    expect(await inTheWay('E-1')).toContain('lot-on-hold');
    await say(id, 'E-1', 'repaired', { doneBy: ['PAT-1'], evidence: 'repair R1' });
    expect(await inTheWay('E-1')).not.toContain('lot-on-hold');
    await say(id, 'E-1', 'found', { note: 'soft again' });
    expect(await inTheWay('E-1')).toContain('lot-on-hold');
    expect((await hulls(id))[0]?.said).toMatchObject([
      { what: 'found' },
      { what: 'repaired', doneBy: ['PAT-1'], evidence: 'repair R1', by: 'ADMIN' },
      { what: 'found', note: 'soft again' },
    ]);
    expect((await read(id)).figures).toMatchObject({ reached: 3, open: 3, lookedAt: 1, found: 1, repaired: 0 });
  });

  it('has nothing to do with a hull that holds none of it; and clearing without a look is for quality', async () => {
    const lot = await threeHulls('F');
    const id = await holdLot(lot);
    await shop.startHull('F-9');
    const at = `/api/holds/${id}/dispositions`;
    expect(await refused(at, { hulls: ['F-9'], what: 'checked' })).toEqual([422, '/problems/not-of-hold']);
    expect(await refused(at, { hulls: ['F-1'], what: 'cleared', note: 'x', enteredBy: 'INS-1' })).toEqual([
      403,
      '/problems/not-allowed',
    ]);
    expect(await refused(at, { hulls: ['F-1'], what: 'cleared' })).toEqual([400, '/problems/invalid-request']);
  });
});

describe('the end of a hold', () => {
  it('is its closing, once every hull is disposed of or scrapped; then the rest of the lot is warned of', async () => {
    const lot = await threeHulls('G');
    const id = await holdLot(lot);
    await say(id, 'G-1', 'repaired');
    await say(id, 'G-2', 'found');
    await shop.act('/api/hulls/G-3/life', { what: 'scrapped' });
    const { status, body } = await shop.post(`/api/holds/${id}/closings`, shop.envelope({ reason: 'done' }));
    expect([status, body]).toMatchObject([409, { type: '/problems/hulls-not-disposed', hulls: ['G-2'], count: 1 }]);
    expect(await refused(`/api/holds/${id}/lifts`, { reason: 'x' })).toEqual([409, '/problems/fault-found']);
    await say(id, 'G-2', 'not reachable', { note: 'three letters, no answer' });
    const { result } = await shop.receipt(`/api/holds/${id}/closings`, { reason: 'done' });
    expect(result).toMatchObject({
      closed: true,
      hulls: 3,
      warnings: [expect.stringContaining('984 kg of lot G-bad')],
    });
    expect(await read(id)).toMatchObject({ ended: { how: 'closed', reason: 'done', by: 'ADMIN' } });
    expect(await refused(`/api/holds/${id}/dispositions`, { hulls: ['G-1'], what: 'found' })).toEqual([
      409,
      '/problems/lifted-already',
    ]);
    expect((await shop.read<HoldPage>('/api/holds')).items.map((hold) => hold.id)).not.toContain(id);
    expect((await shop.read<HoldPage>('/api/holds?which=all')).items.find((hold) => hold.id === id)).toMatchObject({
      ...{ atHold: 3, disposed: 2, ended: { how: 'closed' } },
    });
  });

  it('is not the end for a hull that comes to it afterwards: it waits until something is said of it', async () => {
    const lot = await threeHulls('J');
    const id = await holdLot(lot);
    for (const hull of ['J-1', 'J-2', 'J-3']) await say(id, hull, 'checked');
    await shop.act(`/api/holds/${id}/closings`, { reason: 'done' });
    const obstacles = async (): Promise<string> =>
      JSON.stringify((await shop.post('/api/hulls/J-4/releases', shop.envelope({}))).body);
    await shop.startHull('J-4');
    expect(await obstacles()).not.toContain('hull-on-hold');
    await shop.layer('J-4', 'L2', [{ lot, amount: kg(2) }]);
    expect(await obstacles()).toMatch(/hull-on-hold.*came to the hold on .*after it was closed/);
    expect((await read(id)).figures).toMatchObject({ reached: 4, open: 1 });
    const at = `/api/holds/${id}/dispositions`;
    expect(await refused(at, { hulls: ['J-1', 'J-4'], what: 'checked' })).toEqual([409, '/problems/lifted-already']);
    await say(id, 'J-4', 'checked');
    expect(await obstacles()).not.toContain('hull-on-hold');
    expect((await read(id)).figures).toMatchObject({ reached: 4, open: 0 });
  });

  it('rests on what was said: neither is withdrawn from under it', async () => {
    const lot = await threeHulls('H');
    const id = await holdLot(lot);
    const said = await say(id, 'H-1', 'checked');
    for (const hull of ['H-2', 'H-3']) await say(id, hull, 'checked');
    const closing = await shop.act(`/api/holds/${id}/closings`, { reason: 'done' });
    expect(await refused('/api/corrections', { corrects: said, reason: 'x' })).toEqual([
      409,
      '/problems/hold-is-closed',
    ]);
    await shop.correct(closing);
    await shop.correct(said);
    expect((await read(id)).figures).toMatchObject({ open: 1, disposed: 2 });
  });
});
