import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { Drums } from '../support/drums.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
let drums: Drums;

beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  drums = new Drums(service, shop);
});
afterAll(() => service.close());

describe('a correction of what was drawn from a drum', () => {
  it('of its amount keeps the drum', async () => {
    await shop.receive('TA', 'RES-VE');
    await drums.label('TA', ['TA-1', 'TA-2']);
    const layer = await drums.skin('801', { container: 'TA-1' });
    await shop.correct(await drums.usedIn(layer), { kind: 'used', amount: kg(50) });
    expect((await drums.read('TA-1')).leftKg).toBe(150);
  });
  it('of its drum is judged by the other drum, of one thing only and one that is there', async () => {
    await drums.tell('TA-2', 'rejected', { note: 'water in it' });
    const layer = await drums.skin('802', { container: 'TA-1' });
    await shop.correct(await drums.usedIn(layer), { kind: 'used', container: 'TA-2' });
    expect(await drums.broken('802')).toMatchObject([
      { rule: 'container-rejected', detail: 'Container TA-2 of lot TA had been rejected when it was used.' },
    ]);
    expect((await drums.read('TA-2')).leftKg).toBe(195);
    const both = await shop.post(
      '/api/corrections',
      shop.envelope({
        corrects: await drums.usedIn(layer),
        reason: 'x',
        set: { kind: 'used', container: 'TA-1', lot: 'TA' },
      }),
    );
    expect([both.status, JSON.stringify(both.body)]).toEqual([400, expect.stringContaining('/set/container')]);
    const none = await shop.post(
      '/api/corrections',
      shop.envelope({ corrects: await drums.usedIn(layer), reason: 'x', set: { kind: 'used', container: 'NO-SUCH' } }),
    );
    expect([none.status, JSON.stringify(none.body)]).toEqual([422, expect.stringContaining('/set/container')]);
  });
  it('of the amount that went into a bucket keeps the drum', async () => {
    await shop.mix('BU-TA', [{ container: 'TA-1', amount: kg(10) }]);
    const before = (await drums.read('TA-1')).leftKg;
    const input = await drums.standing(
      'lot_input',
      'x.lot_id = (select l.root from fact.lot l where l.code = $1)',
      'BU-TA',
    );
    await shop.correct(input, { kind: 'lot input', amount: kg(20) });
    expect((await drums.read('TA-1')).leftKg).toBe(before - 10);
  });
});

describe('a drum that was labelled as of another lot', () => {
  const container = (label: string): Promise<string> => drums.standing('container', 'x.label = $1', label);

  it('takes what was drawn from it, its hold and its losses to the lot it is of', async () => {
    await shop.receive('TQ', 'RES-VE', { state: 'quarantined' });
    await shop.receive('TR', 'RES-VE');
    await drums.label('TR', ['TR-1']);
    const hold = await shop.act('/api/lots/TR/holds', {
      enteredBy: 'QUA-1',
      kind: 'quality',
      reason: 'dent',
      container: 'TR-1',
    });
    await shop.act(`/api/holds/${hold}/lifts`, { reason: 'looked at' });
    await drums.skin('871', { container: 'TR-1' });
    await shop.mix('BU-TR', [{ container: 'TR-1', amount: kg(10) }]);
    await shop.act('/api/lots/TR/losses', { what: 'spilled', reason: 'x', container: 'TR-1', amount: kg(3) });
    expect(await drums.rules('871')).toEqual([]);
    await shop.correct(await container('TR-1'), { kind: 'container', lot: 'TQ' });
    expect(await drums.rules('871')).toEqual(['lot-not-released']);
    expect(await drums.read('TR-1')).toMatchObject({ lot: 'TQ', leftKg: 182, holds: [] });
    expect(await shop.read('/api/lots/TQ/balance')).toMatchObject({ usedKg: 5, putIntoKg: 10, lostKg: 3 });
    expect(await shop.read('/api/lots/TR/balance')).toMatchObject({ usedKg: 0, putIntoKg: 0, lostKg: 0 });
    expect(await shop.read('/api/lots/TQ/store')).toMatchObject({ holds: [{ lifted: { reason: 'looked at' } }] });
    expect(await shop.read('/api/lots/BU-TR')).toMatchObject({ inputs: [{ lot: 'TQ' }] });
  });

  it('was weighed wrong: set anew, it holds what it holds', async () => {
    await shop.correct(await container('TR-1'), { kind: 'container', amount: kg(190) });
    expect((await drums.read('TR-1')).leftKg).toBe(172);
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
