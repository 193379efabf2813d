import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HullView } from '@hull-record/contracts';
import { Drums } from '../support/drums.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
let drums: Drums;

beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  drums = new Drums(service, shop);
});
afterAll(() => service.close());

const at = (time: string): Fields => ({ startedAt: time, endedAt: time, happenedAt: time });

describe('a drum rejected', () => {
  it('is perhaps the one used where the lot alone was named, entered late or on time', async () => {
    await shop.receive('TB', 'RES-VE');
    await drums.label('TB', ['TB-1', 'TB-2']);
    const rejected = shop.tick();
    await drums.skin('811', { lot: 'TB' });
    await drums.tell('TB-1', 'rejected', { happenedAt: rejected });
    await drums.skin('812', { lot: 'TB' });
    expect([await drums.rules('811'), await drums.rules('812')]).toEqual([
      ['container-rejected'],
      ['container-rejected'],
    ]);
  });
  it('and accepted again before it was used is not held against the use, though both are entered late', async () => {
    await shop.receive('TC', 'RES-VE');
    await drums.label('TC', ['TC-1']);
    const [rejected, accepted] = [shop.tick(), shop.tick()];
    await drums.skin('813', { container: 'TC-1' });
    await drums.tell('TC-1', 'accepted', { happenedAt: accepted });
    await drums.tell('TC-1', 'rejected', { happenedAt: rejected });
    expect(await drums.rules('813')).toEqual([]);
  });
  it('while material is used sees the use, or is seen by it', async () => {
    await shop.receive('TD', 'RES-VE');
    const seen: unknown[] = [];
    for (let round = 0; round < 12; round += 1) {
      await drums.label('TD', [`TD-${round}`]);
      const hull = `82${round}`;
      await shop.startHull(hull);
      const time = shop.tick();
      await Promise.all([
        shop.layer(hull, 'L2', [{ container: `TD-${round}`, amount: kg(1) }], at(time)),
        drums.tell(`TD-${round}`, 'rejected', { happenedAt: time }),
      ]);
      seen.push(await drums.rules(hull));
    }
    expect(seen).toEqual(seen.map(() => ['container-rejected']));
  });
});

describe('a state of a lot entered late', () => {
  it('brings to light what was used meanwhile', async () => {
    await shop.receive('TE', 'RES-VE');
    const bad = shop.tick();
    await drums.skin('831', { lot: 'TE' });
    await shop.setState('TE', 'rejected', { happenedAt: bad });
    expect(await drums.rules('831')).toEqual(['lot-not-released']);
  });
  it('while material is used sees the use, or is seen by it', async () => {
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
      seen.push(await drums.rules(hull));
    }
    expect(seen).toEqual(seen.map(() => ['lot-not-released']));
  });
});

describe('a retest entered late', () => {
  it('that gives an earlier last day brings to light what was used after it', async () => {
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
    expect(await drums.rules('851')).toEqual(['expired-lot']);
  });
});

describe('the order of stock and its warning', () => {
  it('agree: taking the first of the list gives no warning, and what is on hold is not first', async () => {
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
    await drums.skin('881', { lot: 'TK' });
    expect(await drums.rules('881')).toEqual([]);
    await shop.correct(lift);
    expect(await drums.rules('881')).toEqual(['lot-on-safety-hold']);
  });

  it('an acceptance of a drum: it had stayed rejected', async () => {
    await shop.receive('TL', 'RES-VE');
    await drums.label('TL', ['TL-1']);
    await drums.tell('TL-1', 'rejected');
    const accepted = await drums.tell('TL-1', 'accepted');
    await drums.skin('882', { container: 'TL-1' });
    expect(await drums.rules('882')).toEqual([]);
    await shop.correct(accepted);
    expect(await drums.rules('882')).toEqual(['container-rejected']);
  });
});

describe('a whole container rejected and never opened', () => {
  it('does not stand in the way of hulls when it was sent back whole', async () => {
    await shop.receive('TI', 'RES-VE');
    await drums.label('TI', ['TI-1', 'TI-2']);
    await drums.skin('861', { lot: 'TI' });
    await drums.tell('TI-1', 'rejected');
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
