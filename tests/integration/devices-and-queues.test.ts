import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { KeptEntry, PartView } from '@hull-record/contracts';
import { device, enrol, sendUnder, type EnrolledBrowser } from '../support/devices.js';
import { taken } from '../support/photos.js';
import { readPages, solid } from '../support/read-pdf.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
let tablet: EnrolledBrowser;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('GEL', 'GEL-W');
  tablet = await device(shop, 'TAB-D');
});
afterAll(() => service.close());

const lot = { material: 'GEL-W', supplier: 'Aldermoor Resins', supplierLot: 'S', amount: kg(10), state: 'released' };
const decide = (id: string | undefined, admitted: boolean) =>
  shop.post(
    `/api/kept-entries/${id}/decisions`,
    shop.envelope({ enteredBy: 'QUA-1', admitted, reason: 'the crew says so' }),
  );

describe('a correction that waited on a device', () => {
  it('of what another entered is judged by what its author was allowed when it was entered', async () => {
    await shop.act('/api/people', { badge: 'LEA-8', name: 'Person LEA-8', roles: ['shift lead'] });
    const count = await shop.act('/api/lots/GEL/counts', { quantity: 900, unit: 'kg', enteredBy: 'REC-1' });
    const later = await shop.act('/api/lots/GEL/counts', { quantity: 890, unit: 'kg', enteredBy: 'REC-1' });
    const then = shop.tick();
    const end = { role: 'shift lead', reason: 'changed shift', happenedAt: shop.tick() };
    await shop.act('/api/people/LEA-8/roles', { role: 'receiving', happenedAt: then });
    await shop.act('/api/people/LEA-8/role-ends', end);
    const correct = { enteredBy: 'LEA-8', device: 'TAB-D', reason: 'counted twice' };
    const sent = await sendUnder(shop, tablet, '/api/corrections', {
      ...{ ...correct, corrects: count, happenedAt: then, enteredAt: then },
    });
    expect(sent.status).toBe(201);
    const after = { ...correct, corrects: later, happenedAt: shop.tick() };
    expect(await sendUnder(shop, tablet, '/api/corrections', after)).toMatchObject({
      status: 403,
      body: { type: '/problems/not-allowed', detail: expect.stringContaining('correct what another entered') },
    });
  });
});

describe('a device that is enrolled again', () => {
  it('ends the session of the browser that was it before, and its credential', async () => {
    const before = await enrol(shop, 'TAB-D');
    const signedIn = await service.signedIn('LAM-1', 'TAB-D');
    const own = () => fetch(`${service.url}/api/hulls`, { headers: { ...signedIn } });
    expect((await own()).status).toBe(200);
    tablet = await enrol(shop, 'TAB-D');
    expect((await own()).status).toBe(401);
    const entry = { ...lot, code: 'D-1', enteredBy: 'REC-1', device: 'TAB-D' };
    expect(await sendUnder(shop, before, '/api/lots', entry)).toMatchObject({
      status: 403,
      body: { type: '/problems/device-revoked' },
    });
    expect((await sendUnder(shop, tablet, '/api/lots', { ...entry, code: 'D-2' })).status).toBe(201);
  });

  it('is never the one that stands for every browser', async () => {
    const { status, body } = await shop.post('/api/devices/DESK/enrolment-codes', {});
    expect([status, body['type'], body['detail']]).toEqual([
      409,
      '/problems/stands-for-all',
      'DESK stands for every browser that is not enrolled: register a device of its own for this one.',
    ]);
  });
});

describe('an entry that is kept of a revoked device', () => {
  let lost: EnrolledBrowser;
  const waiting = async (): Promise<KeptEntry[]> =>
    (await shop.read<KeptEntry[]>('/api/kept-entries')).filter(({ device: at }) => at === 'TAB-X');

  beforeAll(async () => {
    lost = await device(shop, 'TAB-X');
    await shop.act('/api/devices/TAB-X/revocations', { reason: 'lost' });
  });

  it('is decided about once, of one who admits it and one who sets it aside at the same time', async () => {
    for (let i = 0; i < 4; i += 1) {
      const entry = { ...lot, code: `X-${i}`, enteredBy: 'REC-1', device: 'TAB-X' };
      expect((await sendUnder(shop, lost, '/api/lots', entry)).status).toBe(403);
    }
    const kept = await waiting();
    expect(kept).toHaveLength(4);
    const answers = await Promise.all(
      kept.map(({ id }) => Promise.all([decide(id, true), decide(id, false), decide(id, false)])),
    );
    for (const three of answers) expect(three.map(({ status }) => status).sort()).toEqual([201, 409, 409]);
    for (const [i, { body, decided }] of (await waiting()).entries()) {
      const { code } = body as { code: string };
      const there = (await shop.get(`/api/lots/${code}`)).status;
      expect([i, there]).toEqual([i, decided?.admitted ? 200 : 404]);
    }
  });

  it('may be a photo as large as is taken', async () => {
    await shop.startHull('D1');
    const defect = await shop.defect('D1-H');
    const photo = Buffer.concat([await taken(300, 200), Buffer.alloc(29 * 1024 * 1024)]);
    const form = new FormData();
    form.set('record', JSON.stringify(shop.envelope({ enteredBy: 'INS-1', device: 'TAB-X' })));
    form.set('photo', new Blob([new Uint8Array(photo)]), 'photo.jpg');
    const answer = await fetch(`${service.url}/api/defects/${defect}/photos`, {
      method: 'POST',
      headers: { cookie: lost.cookie, 'x-hull-record-queued': '1' },
      body: form,
    });
    expect(await answer.json()).toMatchObject({ type: '/problems/device-revoked', kept: expect.any(String) });
    expect((await waiting()).at(-1)).toMatchObject({ enteredBy: 'INS-1', decided: null });
  });
});

describe('an acceptance without a PIN', () => {
  it('is shown as provisional, on screen and on paper, until who accepted confirms it', async () => {
    await shop.startHull('D2');
    const repair = await shop.repair('D2-H', [await shop.defect('D2-H')]);
    const sent = await sendUnder(shop, tablet, `/api/repairs/${repair}/acceptances`, {
      ...{ enteredBy: 'INS-1', device: 'TAB-D', accepted: true },
    });
    expect(sent.status).toBe(201);
    const shown = async () => (await shop.read<PartView>('/api/parts/D2-H')).repairs[0]?.acceptance?.identity;
    const printed = async (): Promise<string> => {
      const headers = await service.signedIn('QUA-1', 'TAB-1');
      const answer = await fetch(`${service.url}/api/hulls/D2/build-record.pdf`, { headers: { ...headers } });
      return solid(await readPages(Buffer.from(await answer.arrayBuffer())));
    };
    expect(await shown()).toBe('provisional');
    expect(await printed()).toContain('acceptedbyINS-1');
    expect(await printed()).toContain('provisional:enteredwithoutaPIN');
    await shop.act(`/api/unproved-entries/${sent.body.id}/confirmations`, { enteredBy: 'INS-1', confirmed: true });
    expect(await shown()).toBe('proved');
    expect(await printed()).not.toContain('provisional:enteredwithoutaPIN');
  });
});
