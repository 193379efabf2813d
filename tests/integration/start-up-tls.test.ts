import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { askSecurely, type Answered, type Asked } from '../support/ask-securely.js';
import { type Certificate, makeCertificate } from '../support/certificate.js';
import { type Clone, cloneDatabase } from '../support/clone.js';
import { addressesIn } from '../support/throttled.js';
import { build, BUILT, cleanUp, type Env, newFolder, start, type Started } from '../support/start-up.js';

const folder = newFolder();
let own: Certificate;
let other: Certificate;
let clone: Clone;
let env: Env;
let started: Started;
let url: string;
beforeAll(async () => {
  build();
  mkdirSync(join(folder, 'other'));
  [own, other] = [await makeCertificate(folder), await makeCertificate(join(folder, 'other'))];
  clone = await cloneDatabase();
  env = {
    ...{ DATABASE_URL: clone.serviceUrl, DATABASE_OWNER_URL: clone.ownerUrl, DATA_DIR: newFolder() },
    ...{ TLS_CERT: own.certFile, TLS_KEY: own.keyFile },
  };
  started = start(env, BUILT);
  url = await started.url();
}, 120_000);
afterAll(async () => {
  await cleanUp();
  await clone.drop();
});

const ask = (path: string, asked: Asked = {}): Promise<Answered> =>
  askSecurely(`${url}${path}`, { authority: own.authority, ...asked });

const PASSPHRASE = 'four winds over the harbour';

describe('a service with a certificate', () => {
  let cookie: string;

  it('says that it is at https, and answers there by its certificate', async () => {
    expect(url).toMatch(/^https:\/\/127\.0\.0\.1:\d+$/);
    expect(await ask('/health/ready')).toMatchObject({ status: 200 });
  });

  it('is not believed by who trusts another authority, or those of the world alone', async () => {
    await expect(ask('/health/live', { authority: other.authority })).rejects.toThrow(/certificate/);
    await expect(askSecurely(`${url}/health/live`)).rejects.toThrow(/certificate/);
  });

  it('refuses HTTP in clear on that port', async () => {
    await expect(askSecurely(url.replace('https:', 'http:'))).rejects.toThrow(/socket hang up|ECONNRESET/);
  });

  it('has browsers use TLS alone from then on (RFC 6797)', async () => {
    for (const path of ['/', '/api/session', '/api/docs', '/nothing'])
      expect((await ask(path)).headers['strict-transport-security']).toBe('max-age=31536000');
  });

  it('gives its cookies for TLS and this host alone (RFC 6265bis, section 4.1.3.2)', async () => {
    const code = (await started.said(/one-time code (\S+),/))[1] as string;
    const answer = await ask('/api/first-sign-in', { body: { badge: 'ADMIN', code, secret: PASSPHRASE } });
    expect(answer.status).toBe(200);
    const [line = '', ...more] = answer.headers['set-cookie'] ?? [];
    expect(more).toEqual([]);
    expect(line).toMatch(/^__Host-hull-record-session=[\w-]{32}; Path=\/; HttpOnly; Secure; SameSite=Strict$/);
    cookie = line.split(';')[0] as string;
  });

  it('takes the cookie by that name, and by no other', async () => {
    const badge = async (brought: string): Promise<unknown> =>
      (JSON.parse((await ask('/api/session', { headers: { cookie: brought } })).text) as { person: unknown }).person;
    expect(await badge(cookie)).toMatchObject({ badge: 'ADMIN' });
    expect(await badge(cookie.replace('__Host-', ''))).toBeNull();
  });

  it('takes nobody for a proxy: what is said about the caller is not heard', async () => {
    const headers = { 'x-forwarded-for': '203.0.113.9', 'x-forwarded-proto': 'http' };
    const secret = { badge: 'NOBODY', secret: 'not the passphrase' };
    expect((await ask('/api/sign-in', { headers, body: secret })).status).toBe(401);
    expect(await addressesIn(clone)).toEqual(['127.0.0.1']);
  });
});

describe('a start is refused', () => {
  it('with the key of another certificate', async () => {
    const { code, errors } = await start({ ...env, TLS_KEY: other.keyFile }, BUILT).ended;
    expect({ code, errors }).toEqual({
      code: 1,
      errors: `Cannot start.\nTLS_KEY: ${other.keyFile} is not the key of the certificate in TLS_CERT. Name the two of one pair.\n`,
    });
  });

  it.each([
    [
      'beyond this machine without a certificate',
      { HOST: '0.0.0.0', TLS_CERT: '', TLS_KEY: '' },
      'set TLS_CERT and TLS_KEY',
    ],
    ['beyond it without a name', { HOST: '0.0.0.0' }, 'Set PUBLIC_URL to the https address'],
    [
      'beyond it with the demo',
      { HOST: '0.0.0.0', PUBLIC_URL: 'https://hulls.example', DEMO: 'on' },
      'Set DEMO to off',
    ],
  ])('%s', async (_what, changed, remedy) => {
    const { code, out, errors } = await start({ ...env, ...changed }, BUILT).ended;
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(errors).toMatch(/^Cannot start\.\nHOST: 0\.0\.0\.0 is not a loopback address\. /);
    expect(errors).toContain(remedy);
  });
});
