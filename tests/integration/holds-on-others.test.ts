import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HeldHull, HeldHullPage, HoldView, HullView } from '@hull-record/contracts';
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

describe('a hold on something else', () => {
  it('on a container reaches what was drawn from it, and what nobody can say of', async () => {
    await shop.receive('VE-K', 'RES-VE');
    await shop.act('/api/lots/VE-K/containers', {
      containers: ['K-1', 'K-2'].map((label) => ({ label, kind: 'drum', amount: kg(200) })),
    });
    for (const [hull, from] of [
      ['K-701', { container: 'K-1' }],
      ['K-702', { container: 'K-2' }],
      ['K-703', { lot: 'VE-K' }],
    ] as const) {
      await shop.startHull(hull);
      await shop.layer(hull, 'L2', [{ ...from, amount: kg(5) }]);
    }
    await shop.mix('K-BU', [
      { container: 'K-1', amount: kg(1) },
      { container: 'K-2', amount: kg(3) },
    ]);
    await shop.startHull('K-704');
    await shop.layer('K-704', 'L2', [{ lot: 'K-BU', amount: kg(4) }]);
    const id = await holdLot('VE-K', { container: 'K-1' });
    expect((await hulls(id)).map(({ hull, share, possibly }) => [hull, share, possibly])).toEqual([
      ['K-701', 1, false],
      ['K-703', null, true],
      ['K-704', 0.25, false],
    ]);
    expect(await read(id)).toMatchObject({ on: { what: 'container', code: 'K-1', lot: 'VE-K' } });
  });

  it('on equipment, a state of a mold, or a period reaches what was made with it, in it, then', async () => {
    await shop.act('/api/equipment', { code: 'MG-9', kind: 'gauge', description: 'Mil gauge' });
    await shop.act('/api/molds', { code: 'M-86-9', model: 'TS86', partKind: 'hull molding' });
    await shop.receive('GEL-L', 'GEL-W');
    const begun = shop.tick();
    await shop.startHull('L-1', { mold: 'M-86-9' });
    const gel = await shop.layer('L-1', 'L1', [{ lot: 'GEL-L', amount: kg(18) }]);
    await shop.film(gel, [[16, 18]], { equipment: 'MG-9' });
    const over = shop.tick();
    await shop.act('/api/molds/M-86-9/care', { what: 'reworked', doneBy: ['LAM-1'] });
    await shop.startHull('L-2', { mold: 'M-86-9' });
    const place = async (fields: Fields): Promise<string> =>
      shop.act('/api/holds', { kind: 'quality', reason: 'found unfit', ...fields });
    const gauge = await place({ on: { what: 'equipment', code: 'MG-9' } });
    const mold = await place({ on: { what: 'mold', code: 'M-86-9', state: 1 } });
    const period = await place({ on: { what: 'period' }, from: begun, until: over });
    for (const id of [gauge, mold, period]) expect(names(await hulls(id))).toEqual(['L-1']);
    expect(await inTheWay('L-2')).not.toContain('hull-on-hold');
    expect((await inTheWay('L-1')).filter((rule) => rule === 'hull-on-hold')).toHaveLength(3);
    for (const id of [gauge, mold, period]) {
      await say(id, 'L-1', 'checked');
      await shop.act(`/api/holds/${id}/closings`, { reason: 'done' });
    }
    expect(await inTheWay('L-1')).not.toContain('hull-on-hold');
    expect(
      await refused('/api/holds', { on: { what: 'mold', code: 'M-86-9', state: 5 }, kind: 'quality', reason: 'x' }),
    ).toEqual([422, '/problems/no-such-mold-state']);
    expect(await refused('/api/holds', { on: { what: 'period' }, kind: 'quality', reason: 'x' })).toEqual([
      400,
      '/problems/invalid-request',
    ]);
  });

  it('on a gun, a gauge or a mold is said to whoever works with it, and no more once it is lifted', async () => {
    for (const [code, kind] of [
      ['GUN-H', 'gun'],
      ['MG-H', 'gauge'],
    ])
      await shop.act('/api/equipment', { code, kind, description: 'On hold' });
    await shop.act('/api/molds', { code: 'M-86-H', model: 'TS86', partKind: 'hull molding' });
    await shop.receive('GEL-H', 'GEL-W');
    await shop.act('/api/guns/GUN-H/hook-ups', { feed: 'resin', lot: 'GEL-H' });
    const holds: string[] = [];
    for (const on of [
      { what: 'equipment', code: 'GUN-H' },
      { what: 'equipment', code: 'MG-H' },
      { what: 'mold', code: 'M-86-H' },
    ])
      holds.push(await shop.act('/api/holds', { on, kind: 'safety', reason: 'found unfit' }));
    const work = async (hull: string): Promise<readonly unknown[]> => {
      const begun = await shop.receipt('/api/hulls', { number: hull, model: 'TS86', mold: 'M-86-H' });
      const at = shop.tick();
      const made = await shop.receipt(`/api/parts/${hull}-H/layers`, {
        ...{
          layer: 'L1',
          startedAt: at,
          endedAt: at,
          happenedAt: at,
          doneBy: ['LAM-1'],
          used: [{ gun: 'GUN-H', feed: 'resin', amount: kg(18) }],
        },
      });
      const read = await shop.film(String(made['id']), [[16, 18]], { equipment: 'MG-H' });
      return [begun, made, read].map(({ result }) =>
        ((result['warnings'] ?? []) as string[]).filter((warning) => /on hold/.test(warning)),
      );
    };
    expect(await work('H-1')).toEqual([
      [expect.stringContaining('State 1 of mold M-86-H is on hold (safety): found unfit')],
      [expect.stringContaining('Equipment GUN-H is on hold (safety): found unfit')],
      [expect.stringContaining('Equipment MG-H is on hold (safety): found unfit')],
    ]);
    for (const id of holds) await shop.act(`/api/holds/${id}/lifts`, { reason: 'overhauled' });
    expect(await work('H-2')).toEqual([[], [], []]);
  });

  it('a part that is in no hull stands for itself, until it is joined', async () => {
    await shop.receive('VE-M', 'RES-VE');
    await shop.startHull('M-1');
    await shop.startDeck('M-1-D');
    await shop.layer('M-1', 'D1', [{ lot: 'VE-M', amount: kg(4) }], { part: 'M-1-D' });
    const id = await holdLot('VE-M');
    expect((await hulls(id)).map(({ hull, part }) => [hull, part])).toEqual([[null, 'M-1-D']]);
    await shop.act(`/api/holds/${id}/dispositions`, { parts: ['M-1-D'], what: 'checked' });
    await shop.join('M-1', 'M-1-D');
    expect((await hulls(id)).map(({ hull, disposed, atHold }) => [hull, disposed, atHold !== null])).toEqual([
      ['M-1', false, true],
    ]);
  });
});
