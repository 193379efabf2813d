import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { AccessSettings } from '../../apps/service/src/platform/access/settings.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';
import { Client } from '../support/access/client.js';

const PIN = '271905';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
});
afterAll(() => service.close());

const codeFor = async (badge: string): Promise<string> =>
  String((await shop.post(`/api/people/${badge}/first-codes`, {})).body['code']);

/** A browser in which somebody chose a PIN with a one-time code. */
const arrived = async (badge: string, secret = PIN): Promise<Client> => {
  const client = new Client(service.url);
  expect((await client.firstSignIn(badge, await codeFor(badge), secret)).status).toBe(200);
  return client;
};

const person = async (badge: string, role = 'laminator'): Promise<string> => {
  await shop.act('/api/people', { badge, name: `Person ${badge}`, roles: [role] });
  return badge;
};

const SESSION = 'hull-record-session';

describe('a session', () => {
  it('is never one that a browser brought along, is new at each sign-in, and the one before is over', async () => {
    const client = new Client(service.url);
    client.setCookie(SESSION, 'brought-along');
    await person('S-1');
    await client.firstSignIn('S-1', await codeFor('S-1'), PIN);
    const first = client.cookie(SESSION);
    expect(first).not.toBe('brought-along');
    const copy = client.copy();
    expect((await copy.get('/api/hulls')).status).toBe(200);
    expect((await client.signIn('S-1', PIN)).status).toBe(200);
    expect(client.cookie(SESSION)).not.toBe(first);
    expect((await copy.get('/api/hulls')).status).toBe(401);
  });

  it('has a cookie that no script reads and no other site sends', async () => {
    await person('S-2');
    const answer = await new Client(service.url).firstSignIn('S-2', await codeFor('S-2'), PIN);
    const [cookie] = answer.headers['set-cookie'] ?? [];
    for (const word of ['HttpOnly', 'SameSite=Strict', 'Path=/']) expect(cookie).toContain(word);
  });

  it('is dead after signing out, after its time, after long idling, and when an administrator ends it', async () => {
    await person('S-3');
    const client = await arrived('S-3');
    const copies = [client.copy(), client.copy()];
    await client.post('/api/sign-out');
    for (const copy of copies) expect((await copy.get('/api/hulls')).status).toBe(401);
    for (const set of ["until = now() - interval '1 s'", "seen_at = now() - interval '5 hours'"]) {
      const other = new Client(service.url);
      await other.signIn('S-3', PIN);
      expect((await other.get('/api/hulls')).status).toBe(200);
      await service.asOwner(`update work.session set ${set} where ended_at is null and person_id =
        (select root from fact.person where badge = 'S-3')`);
      expect((await other.get('/api/hulls')).status).toBe(401);
    }
    const last = new Client(service.url);
    await last.signIn('S-3', PIN);
    await shop.post('/api/people/S-3/session-ends', {});
    expect((await last.get('/api/hulls')).status).toBe(401);
  });

  it('changes nothing without the secret of its own page, nor for a page of another site', async () => {
    await person('S-4', 'receiving');
    await person('S-5', 'receiving');
    const [client, other] = [await arrived('S-4'), await arrived('S-5')];
    const envelope = shop.envelope({
      enteredBy: 'S-4',
      code: 'C-1',
      material: 'RES-VE',
      supplier: 'A',
      supplierLot: 'x',
    });
    const lot = { ...envelope, amount: { quantity: 1, unit: 'kg', basis: 'weighed' }, state: 'quarantined' };
    const own = client.csrf;
    for (const csrf of [null, 'wrong', other.csrf]) {
      client.csrf = csrf;
      expect(await client.post('/api/lots', lot)).toMatchObject({
        status: 403,
        body: { type: '/problems/csrf-missing' },
      });
    }
    client.csrf = own;
    const foreign = await client.post('/api/lots', lot, { origin: 'https://other.example' });
    expect(foreign).toMatchObject({ status: 403, body: { type: '/problems/origin-not-known' } });
    expect((await client.post('/api/lots', lot)).status).toBe(201);
  });

  it('loses a role at once when it ends, and every other session when the PIN is changed', async () => {
    await person('S-6', 'warranty');
    const [client, elsewhere] = [await arrived('S-6'), new Client(service.url)];
    await elsewhere.signIn('S-6', PIN);
    expect((await client.get('/api/hulls/none/owners')).status).toBe(404);
    await shop.act('/api/people/S-6/role-ends', {
      role: 'warranty',
      reason: 'x',
      happenedAt: new Date().toISOString(),
    });
    expect((await client.get('/api/hulls/none/owners')).status).toBe(403);
    expect((await client.post('/api/secret', { present: '000111', secret: '918264' })).status).toBe(401);
    expect((await client.post('/api/secret', { present: PIN, secret: '918264' })).status).toBe(200);
    expect((await elsewhere.get('/api/session')).body['person']).toBeNull();
    expect((await client.get('/api/session')).body['person']).toMatchObject({ badge: 'S-6' });
  });
});

describe('guessing', () => {
  it('is stopped after five wrong PINs, also of fifty at once, and the right one does not help then', async () => {
    await person('G-1');
    await arrived('G-1');
    const tries = await Promise.all(
      Array.from({ length: 50 }, (_, i) => new Client(service.url).signIn('G-1', String(300_000 + i))),
    );
    const counted = (status: number): number => tries.filter((each) => each.status === status).length;
    expect([counted(401), counted(429)]).toEqual([5, 45]);
    const right = await new Client(service.url).signIn('G-1', PIN);
    expect(right).toMatchObject({ status: 429, body: { type: '/problems/too-many-tries' } });
    await service.asOwner('delete from work.sign_in_failure');
  });

  it('learns nothing of which badges there are', async () => {
    await person('G-2');
    await arrived('G-2');
    const [wrong, unknown] = [
      await new Client(service.url).signIn('G-2', '999111'),
      await new Client(service.url).signIn('G-NOBODY', '999111'),
    ];
    expect(wrong.status).toBe(401);
    expect([unknown.status, unknown.body]).toEqual([wrong.status, wrong.body]);
    await service.asOwner('delete from work.sign_in_failure');
  });

  it('keeps nothing of a secret that was typed as the badge, and stops it as it stops a badge', async () => {
    const client = new Client(service.url);
    for (let i = 0; i < 5; i += 1) expect((await client.signIn('915533', '915533')).status).toBe(401);
    expect((await client.signIn('915533', '915533')).status).toBe(429);
    const kept = await service.asOwner<{ about: string }>('select about from work.sign_in_failure');
    expect(kept.map(({ about }) => about).join('\n')).toMatch(/^no badge, \d{1,4} from /m);
    expect(JSON.stringify(kept)).not.toContain('915533');
    await service.asOwner('delete from work.sign_in_failure');
  });

  it('a one-time code serves once, of two at once too, and not after its time', async () => {
    await person('G-3');
    const code = await codeFor('G-3');
    const both = await Promise.all([1, 2].map(() => new Client(service.url).firstSignIn('G-3', code, PIN)));
    expect(both.map(({ status }) => status).sort()).toEqual([200, 401]);
    const late = await codeFor('G-3');
    await service.asOwner("update work.first_code set until = now() - interval '1 s'");
    expect((await new Client(service.url).firstSignIn('G-3', late, PIN)).status).toBe(401);
    await service.asOwner('delete from work.sign_in_failure');
  });

  it('a PIN does not serve in a browser that is neither enrolled nor at the machine; a passphrase does', async () => {
    const far = await startService({ access: new AccessSettings({ localIsHere: false }) });
    const desk = new Shop(far);
    const passphrase = 'four winds over the harbour';
    await desk.act('/api/people', { badge: 'F-1', name: 'Person F-1', roles: ['laminator'] });
    try {
      for (const secret of [PIN, passphrase]) {
        const { body } = await desk.post('/api/people/F-1/first-codes', {});
        expect((await new Client(far.url).firstSignIn('F-1', String(body['code']), secret)).status).toBe(200);
      }
      expect((await new Client(far.url).signIn('F-1', PIN)).status).toBe(401);
      expect((await new Client(far.url).signIn('F-1', passphrase)).status).toBe(200);
      await desk.act('/api/devices', { code: 'TAB-F', description: 'Tablet', ratedForClassifiedArea: false });
      const tablet = new Client(far.url);
      const { body } = await desk.post('/api/devices/TAB-F/enrolment-codes', {});
      expect((await tablet.post('/api/enrolments', { code: body['code'] })).status).toBe(200);
      expect((await new Client(far.url).post('/api/enrolments', { code: body['code'] })).status).toBe(403);
      expect(await tablet.signIn('F-1', PIN)).toMatchObject({
        status: 200,
        body: { device: 'TAB-F', enrolled: true },
      });
    } finally {
      await far.close();
    }
  });
});

describe('what is sent', () => {
  it.each([
    ['/api/sign-in', { badge: 'ADMIN', secret: PIN, roles: ['administrator'] }],
    ['/api/first-sign-in', { badge: 'ADMIN', code: 'x', secret: PIN, personId: 'x' }],
  ])('to %s with a field that is none is refused', async (path, body) => {
    expect((await new Client(service.url).post(path, body)).status).toBe(400);
  });

  it('cannot say of itself that it is proved, nor who is meant', async () => {
    await person('M-1', 'quality');
    const client = await arrived('M-1');
    const limits = { spotsInAZone: 5, spotsOnAPart: 12, largestMm: 10, source: 'x' };
    const sent = { ...shop.envelope({ enteredBy: 'ADMIN' }), ...limits };
    const claims = { identity: 'proved', personId: 'x', rows: [], reason: 'x' };
    const more = await client.post('/api/touch-up-limits', { ...sent, ...claims });
    expect(more.status).toBe(400);
    expect(more.body).toMatchObject({ errors: Object.keys(claims).map((name) => ({ pointer: `/${name}` })) });
    const answer = await client.post('/api/touch-up-limits', sent);
    expect(answer).toMatchObject({ status: 403, body: { type: '/problems/entered-by-another' } });
  });
});
