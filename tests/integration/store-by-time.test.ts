import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ContainerView, HullView, PartView } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;

beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
});
afterAll(() => service.close());

const label = (lot: string, labels: readonly string[]): Promise<string> =>
  shop.act(`/api/lots/${lot}/containers`, {
    containers: labels.map((each) => ({ label: each, kind: 'drum', amount: kg(200) })),
  });
const tell = (container: string, what: string, more: Fields = {}): Promise<string> =>
  shop.act(`/api/containers/${container}/history`, { what, ...more });
const box = (container: string): Promise<ContainerView> => shop.read(`/api/containers/${container}`);
const faults = async (hull: string): Promise<PartView['nonconformities']> =>
  (await shop.read<PartView>(`/api/parts/${hull}-H`)).nonconformities.filter(
    ({ rule }) => rule !== 'layer-out-of-order',
  );
const rules = async (hull: string): Promise<readonly string[]> => (await faults(hull)).map(({ rule }) => rule);
const at = (time: string): Fields => ({ startedAt: time, endedAt: time, happenedAt: time });
/** Starts a hull and lays up its skin coat from what is named. */
const skin = async (hull: string, from: Fields, more: Fields = {}): Promise<string> => {
  await shop.startHull(hull);
  return shop.layer(hull, 'L2', [{ ...from, amount: kg(5) }], more);
};
const usedIn = async (layer: string): Promise<string> => {
  const [used] = await service.asOwner<{ id: string }>(
    'select u.id from fact.used u where u.into_id = $1 and not exists (select from fact.correction c where c.corrects = u.id)',
    [layer],
  );
  return String(used?.id);
};

describe('a correction of what was drawn from a drum', () => {
  it('of its amount leaves the drum', async () => {
    await shop.receive('TA', 'RES-VE');
    await label('TA', ['TA-1', 'TA-2']);
    const layer = await skin('801', { container: 'TA-1' });
    await shop.correct(await usedIn(layer), { kind: 'used', amount: kg(50) });
    expect((await box('TA-1')).leftKg).toBe(150);
  });
  it('of its drum judges the other drum', async () => {
    await tell('TA-2', 'rejected', { note: 'water in it' });
    const layer = await skin('802', { container: 'TA-1' });
    await shop.correct(await usedIn(layer), { kind: 'used', container: 'TA-2' });
    expect(await faults('802')).toMatchObject([
      { rule: 'container-rejected', detail: 'Container TA-2 of lot TA had been rejected when it was used.' },
    ]);
    expect((await box('TA-2')).leftKg).toBe(195);
    const both = await shop.post(
      '/api/corrections',
      shop.envelope({
        corrects: await usedIn(layer),
        reason: 'x',
        set: { kind: 'used', container: 'TA-1', lot: 'TA' },
      }),
    );
    expect([both.status, JSON.stringify(both.body)]).toEqual([400, expect.stringContaining('/set/container')]);
    const none = await shop.post(
      '/api/corrections',
      shop.envelope({ corrects: await usedIn(layer), reason: 'x', set: { kind: 'used', container: 'NO-SUCH' } }),
    );
    expect([none.status, JSON.stringify(none.body)]).toEqual([422, expect.stringContaining('/set/container')]);
  });
  it('of its lot input amount leaves the drum', async () => {
    await shop.mix('BU-TA', [{ container: 'TA-1', amount: kg(10) }]);
    const before = (await box('TA-1')).leftKg;
    const [input] = await service.asOwner<{ id: string }>(
      "select i.id from fact.lot_input i join fact.lot l on l.id = i.lot_id where l.code = 'BU-TA'",
    );
    await shop.correct(String(input?.id), { kind: 'lot input', amount: kg(20) });
    expect((await box('TA-1')).leftKg).toBe(before - 10);
  });
});

describe('a drum that was labelled as of another lot', () => {
  const container = async (name: string): Promise<string> => {
    const [found] = await service.asOwner<{ id: string }>(
      'select c.id from fact.container c where c.label = $1 and not exists (select from fact.correction x where x.corrects = c.id)',
      [name],
    );
    return String(found?.id);
  };

  it('takes what was drawn from it, its hold and its losses to the lot it is of', async () => {
    await shop.receive('TQ', 'RES-VE', { state: 'quarantined' });
    await shop.receive('TR', 'RES-VE');
    await label('TR', ['TR-1']);
    const hold = await shop.act('/api/lots/TR/holds', {
      enteredBy: 'QUA-1',
      kind: 'quality',
      reason: 'dent',
      container: 'TR-1',
    });
    await shop.act(`/api/holds/${hold}/lifts`, { reason: 'looked at' });
    await skin('871', { container: 'TR-1' });
    await shop.mix('BU-TR', [{ container: 'TR-1', amount: kg(10) }]);
    await shop.act('/api/lots/TR/losses', { what: 'spilled', reason: 'x', container: 'TR-1', amount: kg(3) });
    expect(await rules('871')).toEqual([]);
    await shop.correct(await container('TR-1'), { kind: 'container', lot: 'TQ' });
    expect(await rules('871')).toEqual(['lot-not-released']);
    expect(await box('TR-1')).toMatchObject({ lot: 'TQ', leftKg: 182, holds: [] });
    expect(await shop.read('/api/lots/TQ/balance')).toMatchObject({ usedKg: 5, putIntoKg: 10, lostKg: 3 });
    expect(await shop.read('/api/lots/TR/balance')).toMatchObject({ usedKg: 0, putIntoKg: 0, lostKg: 0 });
    expect(await shop.read('/api/lots/TQ/store')).toMatchObject({ holds: [{ lifted: { reason: 'looked at' } }] });
    expect(await shop.read('/api/lots/BU-TR')).toMatchObject({ inputs: [{ lot: 'TQ' }] });
  });

  it('was weighed wrong: set anew, it holds what it holds', async () => {
    await shop.correct(await container('TR-1'), { kind: 'container', amount: kg(190) });
    expect((await box('TR-1')).leftKg).toBe(172);
  });

  it('is of no bucket: that is made of what it is made of', async () => {
    const corrects = await container('TR-1');
    for (const [lot, status] of [
      ['BU-TR', 422],
      ['NO-SUCH', 422],
    ] as const) {
      const refused = await shop.post(
        '/api/corrections',
        shop.envelope({ corrects, reason: 'x', set: { kind: 'container', lot } }),
      );
      expect([refused.status, JSON.stringify(refused.body)]).toEqual([status, expect.stringContaining('/set/lot')]);
    }
  });
});

describe('a drum rejected', () => {
  it('and used by lot only after, on time and late, gives the same', async () => {
    await shop.receive('TB', 'RES-VE');
    await label('TB', ['TB-1', 'TB-2']);
    const rejected = shop.tick();
    await skin('811', { lot: 'TB' });
    await tell('TB-1', 'rejected', { happenedAt: rejected });
    await skin('812', { lot: 'TB' });
    expect([await rules('811'), await rules('812')]).toEqual([['container-rejected'], ['container-rejected']]);
  });
  it('and accepted again before the use, entered late in either order, is not broken by it', async () => {
    await shop.receive('TC', 'RES-VE');
    await label('TC', ['TC-1']);
    const [rejected, accepted] = [shop.tick(), shop.tick()];
    await skin('813', { container: 'TC-1' });
    await tell('TC-1', 'accepted', { happenedAt: accepted });
    await tell('TC-1', 'rejected', { happenedAt: rejected });
    expect(await rules('813')).toEqual([]);
  });
  it('while it is used: sees the use or is seen', async () => {
    await shop.receive('TD', 'RES-VE');
    const seen: unknown[] = [];
    for (let round = 0; round < 12; round += 1) {
      await label('TD', [`TD-${round}`]);
      const hull = `82${round}`;
      await shop.startHull(hull);
      const time = shop.tick();
      await Promise.all([
        shop.layer(hull, 'L2', [{ container: `TD-${round}`, amount: kg(1) }], at(time)),
        tell(`TD-${round}`, 'rejected', { happenedAt: time }),
      ]);
      seen.push(await rules(hull));
    }
    expect(seen).toEqual(seen.map(() => ['container-rejected']));
  });
});

describe('a state of a lot entered late', () => {
  it('brings to light what was used meanwhile', async () => {
    await shop.receive('TE', 'RES-VE');
    const bad = shop.tick();
    await skin('831', { lot: 'TE' });
    await shop.setState('TE', 'rejected', { happenedAt: bad });
    expect(await rules('831')).toEqual(['lot-not-released']);
  });
  it('while it is used: sees the use or is seen', async () => {
    const seen: unknown[] = [];
    for (let round = 0; round < 12; round += 1) {
      await shop.receive(`TF-${round}`, 'RES-VE');
      const hull = `84${round}`;
      await shop.startHull(hull);
      const time = shop.tick();
      await Promise.all([
        shop.layer(hull, 'L2', [{ lot: `TF-${round}`, amount: kg(1) }], at(time)),
        shop.setState(`TF-${round}`, 'held', { happenedAt: time }),
      ]);
      seen.push(await rules(hull));
    }
    expect(seen).toEqual(seen.map(() => ['lot-not-released']));
  });
});

describe('a retest entered late that shortens', () => {
  it('brings to light', async () => {
    await shop.receive('TG', 'GEL-W', { madeOn: '2025-01-01', expiresOn: '2026-12-01' });
    const tested = shop.tick();
    await shop.startHull('851');
    await shop.layer('851', 'L1', [{ lot: 'TG', amount: kg(18) }]);
    await shop.act('/api/lots/TG/retests', {
      enteredBy: 'QUA-1',
      expiresOn: '2026-01-01',
      result: 'gel time drifted',
      happenedAt: tested,
    });
    expect(await rules('851')).toEqual(['expired-lot']);
  });
});

describe('stock order and warning', () => {
  it('agree: first of the list gives no warning', async () => {
    await shop.receive('PW-OLD', 'PASTE', { amount: kg(10), madeOn: '2026-01-01', expiresOn: '2099-06-01' });
    await shop.receive('PW-NEW', 'PASTE', { amount: kg(10), madeOn: '2026-01-01', expiresOn: '2099-01-01' });
    const one = await shop.receipt('/api/mixes', { code: 'BW-1', inputs: [{ lot: 'PW-NEW', amount: kg(1) }] });
    expect(one.result['warnings']).toEqual([]);
    await shop.act('/api/lots/PW-NEW/holds', { enteredBy: 'QUA-1', kind: 'quality', reason: 'gel time' });
    const two = await shop.receipt('/api/mixes', { code: 'BW-2', inputs: [{ lot: 'PW-OLD', amount: kg(1) }] });
    expect(two.result['warnings']).toEqual([]);
  });
});

describe('a hold', () => {
  it('cannot be lifted before it was placed', async () => {
    await shop.receive('TH', 'RES-VE');
    const before = shop.tick();
    const id = await shop.act('/api/lots/TH/holds', { enteredBy: 'QUA-1', kind: 'quality', reason: 'x' });
    const answer = await shop.post(`/api/holds/${id}/lifts`, shop.envelope({ reason: 'y', happenedAt: before }));
    expect([answer.status, JSON.stringify(answer.body)]).toEqual([422, expect.stringContaining('/happenedAt')]);
  });
});

describe('what never was', () => {
  it('a lift: the hold went on, and what was used since was used under it', async () => {
    await shop.receive('TK', 'RES-VE');
    const hold = await shop.act('/api/lots/TK/holds', { enteredBy: 'QUA-1', kind: 'safety', reason: 'peroxide' });
    const lift = await shop.act(`/api/holds/${hold}/lifts`, { enteredBy: 'QUA-1', reason: 'sampled' });
    await skin('881', { lot: 'TK' });
    expect(await rules('881')).toEqual([]);
    await shop.correct(lift);
    expect(await rules('881')).toEqual(['lot-on-safety-hold']);
  });

  it('an acceptance of a drum: it had stayed rejected', async () => {
    await shop.receive('TL', 'RES-VE');
    await label('TL', ['TL-1']);
    await tell('TL-1', 'rejected');
    const accepted = await tell('TL-1', 'accepted');
    await skin('882', { container: 'TL-1' });
    expect(await rules('882')).toEqual([]);
    await shop.correct(accepted);
    expect(await rules('882')).toEqual(['container-rejected']);
  });
});

describe('a whole container rejected and never opened', () => {
  it('does not stand in the way of hulls when it was sent back whole', async () => {
    await shop.receive('TI', 'RES-VE');
    await label('TI', ['TI-1', 'TI-2']);
    await skin('861', { lot: 'TI' });
    await tell('TI-1', 'rejected');
    const hull = async () =>
      (await shop.read<HullView>('/api/hulls/861')).release.inTheWay.filter(
        ({ rule }) => rule === 'container-rejected',
      );
    expect(await hull()).toMatchObject([{ detail: expect.stringContaining('not known') }]);
    await shop.act('/api/lots/TI/losses', {
      what: 'returned to supplier',
      reason: 'water in it',
      container: 'TI-1',
      amount: kg(200),
    });
    expect(await hull()).toEqual([]);
  });
});
