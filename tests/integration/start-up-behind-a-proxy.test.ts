import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { askSecurely, freePort, type Answered, type Asked } from '../support/ask-securely.js';
import { type Clone, cloneDatabase } from '../support/clone.js';
import { build, BUILT, cleanUp, newFolder, start, type Started } from '../support/start-up.js';
import { addressesIn } from '../support/throttled.js';

/** Two addresses of this machine stand for two machines. */
const PROXY = '127.0.0.2';
const NO_PROXY = '127.0.0.3';
const HOST = 'hulls.example';

const PASSPHRASE = 'four winds over the harbour';
const PIN = '918264';

let clone: Clone;
let started: Started;
let url: string;
beforeAll(async () => {
  build();
  clone = await cloneDatabase();
  const port = await freePort();
  url = `http://127.0.0.1:${port}`;
  started = start(
    {
      ...{ DATABASE_URL: clone.serviceUrl, DATABASE_OWNER_URL: clone.ownerUrl, DATA_DIR: newFolder() },
      ...{ TRUSTED_PROXY: PROXY, PUBLIC_URL: `https://${HOST}`, PORT: port },
    },
    BUILT,
  );
  await started.url();
}, 120_000);
afterAll(async () => {
  await cleanUp();
  await clone.drop();
});

type Told = Readonly<Record<string, string>>;

/** What a proxy tells of a request that came to it over TLS; what is before the last address the caller made up. */
const TOLD: Told = { host: HOST, 'x-forwarded-proto': 'https', 'x-forwarded-for': '203.0.113.9, 198.51.100.7' };

const ask = (from: string, path: string, headers: Told = TOLD, more: Asked = {}): Promise<Answered> =>
  askSecurely(`${url}${path}`, { from, headers, ...more });

const wrongTry = (from: string, headers: Told = TOLD): Promise<Answered> =>
  ask(from, '/api/sign-in', headers, { body: { badge: 'NOBODY', secret: 'not the passphrase' } });

const typeOf = ({ status, text }: Answered): unknown => [status, (JSON.parse(text) as { type?: string }).type];

describe('behind a proxy', () => {
  it('the service says the address under which browsers reach it', async () => {
    expect(await started.url()).toBe(`https://${HOST}`);
  });

  it('it answers what the proxy passes on under its name, and has browsers use TLS alone', async () => {
    const answer = await ask(PROXY, '/health/ready');
    expect(answer.status).toBe(200);
    expect(answer.headers['strict-transport-security']).toBe('max-age=31536000');
  });

  it('the address of who tries is the one that the proxy saw, not what the caller told it', async () => {
    expect((await wrongTry(PROXY)).status).toBe(401);
    expect(await addressesIn(clone)).toEqual(['198.51.100.7']);
  });

  it('nobody else is heard: who is no proxy is counted by the address of the connection', async () => {
    expect((await wrongTry(NO_PROXY)).status).toBe(401);
    expect(await addressesIn(clone)).toEqual([NO_PROXY, '198.51.100.7']);
  });

  it('what the proxy took in clear is refused, with the address to use', async () => {
    const answer = await ask(PROXY, '/health/ready', { ...TOLD, 'x-forwarded-proto': 'http' });
    expect(typeOf(answer)).toEqual([403, '/problems/tls-needed']);
    expect(answer.text).toContain(`Use https://${HOST}`);
  });

  it('another name is refused, whoever says that it was asked for by the right one', async () => {
    for (const from of [PROXY, NO_PROXY]) {
      const wrong = { ...TOLD, host: 'evil.example', 'x-forwarded-host': HOST };
      expect(typeOf(await ask(from, '/health/ready', wrong))).toEqual([403, '/problems/host-not-known']);
      expect((await ask(from, '/health/ready', { ...TOLD, 'x-forwarded-host': 'evil.example' })).status).toBe(200);
    }
  });

  it('cookies are for TLS and this host alone, and a PIN does not serve from this machine, since a proxy may be there', async () => {
    const code = (await started.said(/one-time code (\S+),/))[1] as string;
    const arrived = await ask(PROXY, '/api/first-sign-in', TOLD, {
      body: { badge: 'ADMIN', code, secret: PASSPHRASE },
    });
    const [line = ''] = arrived.headers['set-cookie'] ?? [];
    expect(line).toMatch(/^__Host-hull-record-session=[\w-]{32}; Path=\/; HttpOnly; Secure; SameSite=Strict$/);
    const { csrf } = JSON.parse(arrived.text) as { csrf: string };
    const signedIn = { ...TOLD, cookie: line.split(';')[0] as string, 'x-hull-record-csrf': csrf };
    const changed = await ask(PROXY, '/api/secret', signedIn, { body: { present: PASSPHRASE, secret: PIN } });
    expect(changed.status).toBe(200);
    const statusWith = async (secret: string): Promise<number> =>
      (await ask('127.0.0.1', '/api/sign-in', { host: '127.0.0.1' }, { body: { badge: 'ADMIN', secret } })).status;
    expect([await statusWith(PIN), await statusWith(PASSPHRASE)]).toEqual([401, 200]);
  });
});
