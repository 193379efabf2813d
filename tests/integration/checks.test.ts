import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import type { HullView, NonconformityPage, PartView, Stops } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;

beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.act('/api/people', { badge: 'LEAD-1', name: 'A lead', roles: ['shift lead'] });
  await shop.act('/api/materials', { code: 'COB', name: 'Cobalt promoter', role: 'promoter' });
  for (const [lot, material, more] of [
    ['VE', 'RES-VE', {}],
    ['GEL', 'GEL-W', {}],
    ['GEL-OLD', 'GEL-W', { madeOn: '2025-01-01', expiresOn: '2025-04-01' }],
    ['VE-Q', 'RES-VE', { state: 'quarantined' }],
    ['CAT', 'MEKP', {}],
    ['COB-1', 'COB', {}],
  ] as const)
    await shop.receive(lot, material, more);
});
afterAll(() => service.close());

const ask = async (path: string, fields: Fields): Promise<Stops> => {
  const { status, body } = await shop.post(path, shop.envelope(fields));
  expect(status).toBe(200);
  return body as unknown as Stops;
};
const planned = (layer: string, lots: readonly string[], more: Fields = {}): Fields => {
  const at = shop.tick();
  return {
    layer,
    startedAt: at,
    endedAt: at,
    happenedAt: at,
    doneBy: ['LAM-1'],
    used: lots.map((lot) => ({ lot, amount: kg(5) })),
    ...more,
  };
};
const part = (hull: string): Promise<PartView> => shop.read(`/api/parts/${hull}-H`);

describe('a check before the act', () => {
  it('stops what would break a rule, says what to do, and records nothing', async () => {
    await shop.startHull('901');
    const { stops } = await ask('/api/parts/901-H/layers/check', planned('L1', ['GEL-OLD']));
    expect(stops).toMatchObject([
      { rule: 'expired-lot', goesOn: 'shift lead', remedy: expect.stringContaining('retest') },
    ]);
    expect((await part('901')).layers[0]?.record).toBeNull();
    expect((await ask('/api/parts/901-H/layers/check', planned('L1', ['GEL']))).stops).toEqual([]);
  });

  it('says what the record then opens, whatever is planned', async () => {
    const lots = fc.subarray(['VE', 'GEL', 'GEL-OLD', 'VE-Q', 'CAT'], { minLength: 1 });
    const climate = fc.constantFrom({}, { climate: { airTemperature: { value: 12, unit: 'C' } } });
    let hull = 0;
    await fc.assert(
      fc.asyncProperty(fc.constantFrom('L1', 'L2', 'L3'), lots, climate, async (layer, used, more) => {
        hull += 1;
        await shop.startHull(`CH-${hull}`);
        const plan = planned(layer, used, more);
        const told = (await ask(`/api/parts/CH-${hull}-H/layers/check`, plan)).stops.map(({ rule, detail }) => ({
          rule,
          detail,
        }));
        const { body } = await shop.post(`/api/parts/CH-${hull}-H/layers`, shop.envelope(plan));
        const opened = (body.result as unknown as { nonconformities: { rule: string; detail: string }[] })
          .nonconformities;
        expect(opened.map(({ rule, detail }) => ({ rule, detail }))).toEqual(told);
      }),
      { numRuns: 25 },
    );
  });

  it('of what cannot be recorded is refused as the record would be', async () => {
    const { status, body } = await shop.post('/api/parts/901-H/layers/check', shop.envelope(planned('L9', [])));
    expect([status, JSON.stringify(body)]).toEqual([422, expect.stringContaining('/layer')]);
  });
});

describe('catalyst on promoter without resin', () => {
  const inputs = ['COB-1', 'CAT'].map((lot) => ({ lot, amount: kg(1) }));

  it('is a stop that nothing lifts; when it happened it is kept, with the caution', async () => {
    const { stops } = await ask('/api/mixes/check', { code: 'BAD-1', inputs });
    expect(stops).toMatchObject([{ rule: 'catalyst-meets-promoter', goesOn: 'nobody' }]);
    const lead = { enteredBy: 'LEAD-1', lot: 'BAD-1', rules: ['catalyst-meets-promoter'], reason: 'in a hurry' };
    const refused = await shop.post('/api/go-ons', shop.envelope(lead));
    expect([refused.status, JSON.stringify(refused.body)]).toEqual([409, expect.stringContaining('/rules/0')]);
    const { result } = await shop.receipt('/api/mixes', { code: 'BAD-1', inputs });
    expect(JSON.stringify(result)).toContain('Never mix catalyst and promoter directly.');
  });

  it('puts what was made on safety hold: nobody goes on over it, and a use of it is held against it', async () => {
    const plan = {
      code: 'BAD-3',
      inputs: [
        { lot: 'BAD-1', amount: kg(0.5) },
        { lot: 'VE', amount: kg(5) },
      ],
    };
    const { stops } = await ask('/api/mixes/check', plan);
    expect(stops).toContainEqual(expect.objectContaining({ rule: 'lot-on-safety-hold', goesOn: 'nobody' }));
  });

  it('is a stop also when resin goes in last: what went in is told in its order', async () => {
    const resin = { lot: 'VE', amount: kg(20) };
    const { stops } = await ask('/api/mixes/check', { code: 'BAD-4', inputs: [...inputs, resin] });
    expect(stops.map(({ rule }) => rule)).toEqual(['catalyst-meets-promoter']);
  });

  it('with resin between them is a mix; promoter after catalyst is warned of', async () => {
    const resin = { lot: 'VE', amount: kg(20) };
    expect((await ask('/api/mixes/check', { code: 'OK-1', inputs: [resin, ...inputs] })).stops).toEqual([]);
    expect(
      (await ask('/api/mixes/check', { code: 'OK-2', inputs: [resin, ...[...inputs].reverse()] })).warnings,
    ).toContain('Promoter is stirred into the resin first, and catalyst goes in last.');
  });

  it('is seen through buckets: promoted nothing, catalysed nothing', async () => {
    await shop.mix('COB-B', [{ lot: 'COB-1', amount: kg(2) }]);
    const { stops } = await ask('/api/mixes/check', {
      code: 'BAD-2',
      inputs: [
        { lot: 'COB-B', amount: kg(1) },
        { lot: 'CAT', amount: kg(1) },
      ],
    });
    expect(stops.map(({ rule }) => rule)).toEqual(['catalyst-meets-promoter']);
  });
});

describe('the night shift', () => {
  it('goes on under nonconformance by the word of a shift lead; quality disposes before release', async () => {
    await shop.startHull('911');
    const word = { part: '911-H', layer: 'L1', rules: ['expired-lot'], reason: 'no other drum at night' };
    expect((await shop.post('/api/go-ons', shop.envelope({ ...word, enteredBy: 'LAM-1' }))).status).toBe(403);
    await shop.act('/api/go-ons', { ...word, enteredBy: 'LEAD-1' });
    await shop.act('/api/parts/911-H/layers', planned('L1', ['GEL-OLD']));
    const [open] = (await part('911')).nonconformities;
    expect(open).toMatchObject({
      rule: 'expired-lot',
      goOn: { by: 'LEAD-1', reason: 'no other drum at night' },
      disposition: null,
    });
    const { items } = await shop.read<NonconformityPage>('/api/nonconformities?part=911-H&open=yes');
    expect(items).toMatchObject([{ rule: 'expired-lot', hull: '911', open: true, goOn: { by: 'LEAD-1' } }]);
    await shop.dispose('nonconformity', String(open?.id), 'use as is', 'C-911');
    expect((await shop.read<NonconformityPage>('/api/nonconformities?part=911-H&open=yes')).items).toEqual([]);
  });

  it('never goes on over a safety hold', async () => {
    await shop.receive('VE-H', 'RES-VE');
    await shop.act('/api/lots/VE-H/holds', { enteredBy: 'QUA-1', kind: 'safety', reason: 'drum bulges' });
    await shop.startHull('912');
    const { stops } = await ask('/api/parts/912-H/layers/check', planned('L1', ['VE-H']));
    expect(stops.find(({ rule }) => rule === 'lot-on-safety-hold')).toMatchObject({ goesOn: 'nobody' });
    const word = { enteredBy: 'LEAD-1', part: '912-H', layer: 'L1', rules: ['lot-on-safety-hold'], reason: 'x' };
    expect((await shop.post('/api/go-ons', shop.envelope(word))).status).toBe(409);
  });
});

describe('a disposition', () => {
  const early = async (hull: string): Promise<string> => {
    await shop.startHull(hull);
    await shop.act(`/api/parts/${hull}-H/layers`, planned('L2', ['VE']));
    return String((await part(hull)).nonconformities[0]?.id);
  };

  it('is for quality, and not for who made it', async () => {
    const about = await early('921');
    const decision = { of: 'nonconformity', about, disposition: 'scrap', reason: 'x' };
    expect((await shop.post('/api/dispositions', shop.envelope({ ...decision, enteredBy: 'REC-1' }))).status).toBe(403);
    await shop.act('/api/people', { badge: 'BOTH', name: 'Both', roles: ['laminator', 'quality'] });
    await shop.startHull('922');
    await shop.act('/api/parts/922-H/layers', planned('L2', ['VE'], { doneBy: ['BOTH'] }));
    const own = { ...decision, about: (await part('922')).nonconformities[0]?.id, enteredBy: 'BOTH' };
    const refused = await shop.post('/api/dispositions', shop.envelope(own));
    expect([refused.status, JSON.stringify(refused.body)]).toEqual([409, expect.stringContaining('disposer-is-maker')]);
    await shop.act('/api/dispositions', { ...decision, enteredBy: 'BOTH' });
  });

  it('to rework closes when the rework was done and inspected by another person', async () => {
    const about = await early('923');
    const asked = await shop.dispose('nonconformity', about, 'rework');
    const openOnes = async (): Promise<number> =>
      (await shop.read<NonconformityPage>('/api/nonconformities?part=923-H&open=yes')).items.length;
    expect(await openOnes()).toBe(1);
    const rework = { doneBy: ['LAM-1'], note: 'ground and laid up again' };
    expect(
      (await shop.post(`/api/dispositions/${asked}/rework`, shop.envelope({ ...rework, enteredBy: 'LAM-1' }))).status,
    ).toBe(409);
    await shop.act(`/api/dispositions/${asked}/rework`, { ...rework, enteredBy: 'INS-1' });
    expect(await openOnes()).toBe(0);
  });
});

describe('people', () => {
  it('a lead enters for a crew: who entered and who did it are both kept', async () => {
    await shop.startHull('931');
    await shop.act(
      '/api/parts/931-H/layers',
      planned('L1', ['GEL'], { enteredBy: 'LEAD-1', doneBy: ['LAM-1', 'LAM-2'] }),
    );
    expect((await part('931')).layers[0]?.record).toMatchObject({ enteredBy: 'LEAD-1', doneBy: ['LAM-1', 'LAM-2'] });
  });

  it('badges are the same in any case of letters', async () => {
    await shop.startHull('932', { enteredBy: 'lam-1' });
    const again = await shop.post(
      '/api/people',
      shop.envelope({ badge: 'lam-1', name: 'Another', roles: ['laminator'] }),
    );
    expect([again.status, JSON.stringify(again.body)]).toEqual([409, expect.stringContaining('/badge')]);
  });
});

describe('after release', () => {
  it('a hold questions the hull again, and leaving meanwhile is said', async () => {
    await shop.receive('VE-R', 'RES-VE');
    await shop.receive('MAT-R', 'MAT-450');
    await shop.wholeHull('941', { gel: 'GEL', resin: { lot: 'VE-R' }, glass: 'MAT-R' });
    expect((await shop.post('/api/hulls/941/releases', shop.envelope({ enteredBy: 'LAM-1' }))).status).toBe(409);
    await shop.act('/api/hulls/941/releases', { enteredBy: 'QUA-1' });
    await shop.act('/api/lots/VE-R/holds', { enteredBy: 'QUA-1', kind: 'quality', reason: 'gel time' });
    expect((await shop.read<HullView>('/api/hulls/941')).release).toMatchObject({
      questioned: true,
      inTheWay: [{ rule: 'lot-on-hold' }],
    });
    const { result } = await shop.receipt('/api/hulls/941/life', { what: 'left the place of manufacture' });
    expect(JSON.stringify(result)).toContain('left-while-questioned');
  });
});
