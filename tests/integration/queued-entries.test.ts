import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HullView, KeptEntry, PartView, UnprovedEntry } from '@hull-record/contracts';
import { device, enrol, sendUnder, type EnrolledBrowser } from '../support/devices.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
let tablet: EnrolledBrowser;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('GEL', 'GEL-W');
  await shop.receive('RES', 'RES-VE');
  await shop.receive('MAT', 'MAT-450');
  tablet = await device(shop, 'TAB-Q');
});
afterAll(() => service.close());

/** Takes the tablet over as somebody, from a time to another, as a sign-in there with a PIN does. */
const takeOver = async (badge: string, from: string, to: string): Promise<void> => {
  await service.asOwner(
    `insert into work.session (digest, person_id, device_id, csrf, begun_at, seen_at, until, ended_at)
     select sha256(convert_to($1 || $2, 'UTF8')), p.root, d.root, 'x', $2::text::timestamptz, $2::text::timestamptz, $3::text::timestamptz, $3::text::timestamptz from fact.person p, fact.device d
     where p.badge = $1 and d.code = 'TAB-Q'`,
    [badge, from, to],
  );
};

const layerOf = async (part: string, code: string) =>
  (await shop.read<PartView>(`/api/parts/${part}`)).layers.find(({ scheduled }) => scheduled.code === code)?.record;

const rulesOf = async (part: string): Promise<string[]> =>
  (await shop.read<PartView>(`/api/parts/${part}`)).nonconformities.map(({ rule }) => rule).sort();

describe('what waited on a device', () => {
  it('is of who had taken it over when it was entered, whatever has become of their session since', async () => {
    await takeOver('LAM-1', '2026-01-05T06:00:00Z', '2026-01-05T23:00:00Z');
    await shop.startHull('Q1');
    const at = shop.tick();
    const sent = await sendUnder(shop, tablet, '/api/parts/Q1-H/layers', {
      ...{ enteredBy: 'LAM-1', device: 'TAB-Q', layer: 'L1', startedAt: at, endedAt: at, happenedAt: at },
      ...{ doneBy: ['LAM-1'], used: [{ lot: 'GEL', amount: kg(18) }] },
    });
    expect(sent.status).toBe(201);
    const [entry] = await service.asOwner<{ identity: string }>('select identity from fact.journal where id = $1', [
      sent.body.id,
    ]);
    expect(entry?.identity).toBe('proved');
    expect(await rulesOf('Q1-H')).toEqual([]);
  });

  it('is judged by what that person was allowed then, and comes from that device alone', async () => {
    const lot = {
      code: 'Q-lot',
      material: 'RES-VE',
      supplier: 'Aldermoor Resins',
      supplierLot: 'S',
      state: 'released',
    };
    const entry = { ...lot, amount: kg(10), device: 'TAB-Q' };
    expect(await sendUnder(shop, tablet, '/api/lots', { ...entry, enteredBy: 'LAM-1' })).toMatchObject({
      status: 403,
      body: { type: '/problems/not-allowed-then' },
    });
    expect(await sendUnder(shop, tablet, '/api/lots', { ...entry, enteredBy: 'REC-1', device: 'TAB-1' })).toMatchObject(
      {
        status: 403,
        body: { type: '/problems/entered-elsewhere' },
      },
    );
    await shop.act('/api/people/REC-1/role-ends', { role: 'receiving', reason: 'left', happenedAt: shop.tick() });
    const before = { enteredAt: '2026-01-05T07:05:00Z', happenedAt: '2026-01-05T07:05:00Z' };
    expect((await sendUnder(shop, tablet, '/api/lots', { ...entry, ...before, enteredBy: 'REC-1' })).status).toBe(201);
    const after = { ...entry, code: 'Q-lot-2', enteredBy: 'REC-1', happenedAt: shop.tick() };
    expect((await sendUnder(shop, tablet, '/api/lots', after)).status).toBe(403);
  });

  it('is no quality decision, and nothing without a device', async () => {
    const decision = { of: 'defect', about: '5f0c1f5e-6f0e-4f43-9b1d-2f8f1f0b7a11', disposition: 'scrap', reason: 'x' };
    const sent = await sendUnder(shop, tablet, '/api/dispositions', {
      ...decision,
      enteredBy: 'QUA-1',
      device: 'TAB-Q',
    });
    expect(sent).toMatchObject({ status: 403, body: { type: '/problems/not-allowed' } });
    expect((await sendUnder(shop, { cookie: 'hull-record-device=made-up' }, '/api/lots', {})).status).toBe(401);
  });
});

describe('a signature without a PIN', () => {
  const layer = async (hull: string, code: string, lots: readonly string[]): Promise<string> =>
    shop.layer(
      hull,
      code,
      lots.map((lot) => ({ lot, amount: kg(9) })),
    );
  let signature: string;

  it('lifts the hold point for the next layer only, is shown as provisional, and does not count for release', async () => {
    await shop.startHull('Q2');
    const gel = await layer('Q2', 'L1', ['GEL']);
    const sent = await sendUnder(shop, tablet, `/api/layers/${gel}/signatures`, {
      enteredBy: 'INS-1',
      device: 'TAB-Q',
    });
    expect(sent).toMatchObject({ status: 201, body: { result: { identity: 'stated' } } });
    signature = sent.body.id;
    expect((await layerOf('Q2-H', 'L1'))?.signature).toMatchObject({ by: 'INS-1', identity: 'provisional' });
    await layer('Q2', 'L2', ['RES', 'MAT']);
    expect(await rulesOf('Q2-H')).toEqual(['identity-not-proved']);
    await layer('Q2', 'L3', ['RES', 'MAT']);
    expect(await rulesOf('Q2-H')).toEqual(['hold-point-passed', 'identity-not-proved']);
    const { release } = await shop.read<HullView>('/api/hulls/Q2');
    const said = JSON.stringify(release);
    expect(said).toContain('is signed provisionally: its signer has to confirm it');
    expect(said).toContain('INS-1 has to confirm it');
  });

  it('is confirmed by its signer alone, and counts from then on', async () => {
    const waiting = await shop.read<UnprovedEntry[]>('/api/unproved-entries');
    expect(waiting.at(-1)).toMatchObject({ enteredBy: 'INS-1', device: 'TAB-Q', parts: ['Q2-H'], refused: null });
    const path = `/api/unproved-entries/${signature}/confirmations`;
    const another = await shop.post(path, shop.envelope({ enteredBy: 'QUA-1', confirmed: true }));
    expect(another).toMatchObject({ status: 403, body: { type: '/problems/not-allowed' } });
    expect((await shop.post(path, shop.envelope({ enteredBy: 'INS-1', confirmed: false }))).status).toBe(400);
    await shop.act(path, { enteredBy: 'INS-1', confirmed: true });
    expect((await layerOf('Q2-H', 'L1'))?.signature).toMatchObject({ by: 'INS-1', identity: 'proved' });
    expect(JSON.stringify((await shop.read<HullView>('/api/hulls/Q2')).release)).not.toContain('has to confirm it');
    const left = await shop.read<UnprovedEntry[]>('/api/unproved-entries');
    expect(left.map(({ enteredBy }) => enteredBy)).not.toContain('INS-1');
  });

  it('that is refused stays a nonconformity, and another inspector signs', async () => {
    await shop.startHull('Q3');
    const gel = await layer('Q3', 'L1', ['GEL']);
    const sent = await sendUnder(shop, tablet, `/api/layers/${gel}/signatures`, {
      enteredBy: 'INS-1',
      device: 'TAB-Q',
    });
    const path = `/api/unproved-entries/${sent.body.id}/confirmations`;
    await shop.act(path, { enteredBy: 'INS-1', confirmed: false, reason: 'I was at home' });
    expect((await layerOf('Q3-H', 'L1'))?.signature).toMatchObject({ identity: 'refused' });
    await shop.sign(gel, { enteredBy: 'QUA-1' });
    expect((await layerOf('Q3-H', 'L1'))?.signature).toMatchObject({ by: 'QUA-1', identity: 'proved' });
    expect(await rulesOf('Q3-H')).toEqual(['identity-not-proved']);
    expect(JSON.stringify((await shop.read<HullView>('/api/hulls/Q3')).release)).toContain('INS-1 has to confirm it');
  });
});

describe('a device that was revoked', () => {
  it('has its queue kept, for quality to admit once or set aside', async () => {
    await shop.act('/api/people', { badge: 'REC-9', name: 'Person REC-9', roles: ['receiving'] });
    await device(shop, 'TAB-R');
    const lost = await enrol(shop, 'TAB-R');
    await shop.act('/api/devices/TAB-R/revocations', { reason: 'left on the yard' });
    const lot = {
      material: 'RES-VE',
      supplier: 'Aldermoor Resins',
      supplierLot: 'S',
      amount: kg(10),
      state: 'released',
    };
    const entries = ['K-1', 'K-2'].map((code) => ({ ...lot, code, enteredBy: 'REC-9', device: 'TAB-R' }));
    for (const entry of entries) {
      const sent = await sendUnder(shop, lost, '/api/lots', entry);
      expect(sent).toMatchObject({ status: 403, body: { type: '/problems/device-revoked', kept: expect.any(String) } });
    }
    const kept = await shop.read<KeptEntry[]>('/api/kept-entries');
    expect(kept.map(({ enteredBy, body, decided }) => [enteredBy, (body as { code: string }).code, decided])).toEqual([
      ['REC-9', 'K-1', null],
      ['REC-9', 'K-2', null],
    ]);
    expect((await shop.get('/api/lots/K-1')).status).toBe(404);
    const decide = (i: number, admitted: boolean) =>
      shop.post(
        `/api/kept-entries/${kept[i]?.id}/decisions`,
        shop.envelope({ enteredBy: 'QUA-1', admitted, reason: 'the crew says so' }),
      );
    expect(await decide(0, true)).toMatchObject({ status: 201, body: { result: { admitted: true } } });
    expect((await decide(1, false)).status).toBe(201);
    expect((await decide(0, true)).status).toBe(409);
    expect((await shop.get('/api/lots/K-1')).status).toBe(200);
    expect((await shop.get('/api/lots/K-2')).status).toBe(404);
    const [author] = await service.asOwner<{ badge: string; code: string }>(
      `select p.badge, d.code from fact.journal j join fact.person p on p.root = j.person_id join fact.device d on d.root = j.device_id
       where j.id = (select entry_id from fact.lot where code = 'K-1')`,
    );
    expect(author).toEqual({ badge: 'REC-9', code: 'TAB-R' });
  });
});
