import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ConfigWrong, readConfig } from '../../../apps/service/src/platform/config/config.js';
import { makeCertificate, type Certificate } from '../../support/certificate.js';

const folder = mkdtempSync(join(tmpdir(), 'hull-record-reach-'));
let own: Certificate;
let other: Certificate;
beforeAll(async () => {
  own = await makeCertificate(folder);
  mkdirSync(join(folder, 'other'));
  other = await makeCertificate(join(folder, 'other'));
  writeFileSync(join(folder, 'nothing.pem'), 'not a certificate');
});
afterAll(() => rmSync(folder, { recursive: true }));

type Env = Readonly<Record<string, string>>;

const PUBLIC_URL = 'https://hulls.example';
const OPENID = { OPENID_ISSUER: 'https://office.example', OPENID_CLIENT_ID: 'hulls', OPENID_CLIENT_SECRET: 'kept' };
const tls = (): Env => ({ TLS_CERT: own.certFile, TLS_KEY: own.keyFile });
const proxied: Env = { TRUSTED_PROXY: '172.30.5.2', PUBLIC_URL };

describe('how the service is reached', () => {
  it('is at this machine alone, in clear, when nothing is set', () => {
    const nothing = { host: '127.0.0.1', tls: null, trustedProxy: [], publicUrl: null, openId: null };
    expect(readConfig({})).toMatchObject(nothing);
  });

  it('is by TLS with the certificate and key that are named, at this machine or beyond it', () => {
    const read = { cert: readFileSync(own.certFile), key: readFileSync(own.keyFile) };
    expect(readConfig({ ...tls() })).toMatchObject({ host: '127.0.0.1', tls: read, publicUrl: null });
    const beyond = { ...tls(), HOST: '0.0.0.0', PUBLIC_URL: `${PUBLIC_URL}:8443/`, DEMO: 'off' };
    expect(readConfig(beyond)).toMatchObject({ host: '0.0.0.0', tls: read, publicUrl: `${PUBLIC_URL}:8443` });
  });

  it('is behind proxies that are trusted, by address or network', () => {
    const set = { TRUSTED_PROXY: ' 172.30.5.2, 10.1.0.0/16,fd00::/8 ', PUBLIC_URL, HOST: '::', DEMO: 'off' };
    expect(readConfig(set)).toMatchObject({
      ...{ host: '::', tls: null, publicUrl: PUBLIC_URL },
      trustedProxy: ['172.30.5.2', '10.1.0.0/16', 'fd00::/8'],
    });
  });

  it('has the sign-in of the office when its three settings are there', () => {
    const openId = { issuer: 'https://office.example', clientId: 'hulls', clientSecret: 'kept' };
    expect(readConfig(OPENID).openId).toEqual({ name: 'the office', ...openId, publicUrl: null });
    const named = readConfig({ ...OPENID, ...proxied, OPENID_NAME: ' Harbour office ' }).openId;
    expect(named).toEqual({ name: 'Harbour office', ...openId, publicUrl: PUBLIC_URL });
  });

  it.each(['http://127.0.0.1:9000', 'http://[::1]:9000', 'http://localhost:9000'])(
    'may ask a provider on this machine in clear: %s',
    (issuer) => expect(readConfig({ ...OPENID, OPENID_ISSUER: issuer }).openId).toMatchObject({ issuer }),
  );
});

/** What is set, which variable the refusal begins with, and what it says to do. */
const REFUSED: readonly [string, () => Env, string, string][] = [
  ['beyond this machine in clear', () => ({ HOST: '0.0.0.0' }), 'HOST', 'set TLS_CERT and TLS_KEY, or TRUSTED_PROXY'],
  ['a bracketed address to listen on', () => ({ HOST: '[::1]' }), 'HOST', 'set HOST to 127.0.0.1, ::1 or localhost'],
  [
    'beyond it without a name',
    () => ({ ...tls(), HOST: '0.0.0.0', DEMO: 'off' }),
    'HOST',
    'Set PUBLIC_URL to the https',
  ],
  ['beyond it with the demo', () => ({ ...tls(), HOST: '::', PUBLIC_URL }), 'HOST', 'Set DEMO to off'],
  ['behind a proxy with the demo', () => ({ ...proxied, HOST: '0.0.0.0' }), 'HOST', 'Set DEMO to off'],
  ['a proxy without a name', () => ({ TRUSTED_PROXY: '127.0.0.1' }), 'PUBLIC_URL', 'set the https address'],
  ['a name without a certificate or proxy', () => ({ PUBLIC_URL }), 'TLS_CERT or TRUSTED_PROXY', 'PUBLIC_URL is for'],
  ['a name without https', () => ({ ...tls(), PUBLIC_URL: 'http://hulls.example' }), 'PUBLIC_URL', 'https address'],
  ['a folder', () => ({ ...tls(), PUBLIC_URL: `${PUBLIC_URL}/hulls` }), 'PUBLIC_URL', `set ${PUBLIC_URL}, or another`],
  ['a key alone', () => ({ TLS_KEY: own.keyFile }), 'TLS_CERT', 'TLS_CERT and TLS_KEY name two files'],
  ['a certificate alone', () => ({ TLS_CERT: own.certFile }), 'TLS_KEY', 'TLS_CERT and TLS_KEY name two files'],
  ['no file', () => ({ ...tls(), TLS_CERT: join(folder, 'none') }), 'TLS_CERT', 'that the service may read'],
  ['no key file', () => ({ ...tls(), TLS_KEY: folder }), 'TLS_KEY', 'that the service may read'],
  ['no certificate in it', () => ({ ...tls(), TLS_CERT: join(folder, 'nothing.pem') }), 'TLS_CERT', 'in PEM form that'],
  ['no key in it', () => ({ ...tls(), TLS_KEY: own.certFile }), 'TLS_KEY', 'in PEM form that does'],
  ['the key of another', () => ({ ...tls(), TLS_KEY: other.keyFile }), 'TLS_KEY', 'Name the two of one pair'],
  ...['proxy.example', 'loopback', '0.0.0.0/0', '::/0', '10.0.0.0/33', '10.0.0.0/8/8', '10.0.0', 'fd00::/129'].map(
    (peer): (typeof REFUSED)[number] => [
      `the proxy ${peer}`,
      () => ({ ...proxied, TRUSTED_PROXY: `127.0.0.1,${peer}` }),
      'TRUSTED_PROXY',
      'Name addresses or networks',
    ],
  ),
  ...Object.keys(OPENID).map((name): (typeof REFUSED)[number] => [
    `the office without ${name}`,
    () => ({ ...OPENID, [name]: '' }),
    name,
    'needs OPENID_ISSUER, OPENID_CLIENT_ID and OPENID_CLIENT_SECRET',
  ]),
  [
    'a provider in clear',
    () => ({ ...OPENID, OPENID_ISSUER: 'http://office.example' }),
    'OPENID_ISSUER',
    'https address',
  ],
  [
    'where an issuer is described',
    () => ({ ...OPENID, OPENID_ISSUER: 'https://office.example/.well-known/openid-configuration' }),
    'OPENID_ISSUER',
    'without /.well-known/',
  ],
  [
    'an issuer with a query',
    () => ({ ...OPENID, OPENID_ISSUER: 'https://office.example/?a=b' }),
    'OPENID_ISSUER',
    'issuer',
  ],
];

describe('a refusal names the variable and the remedy', () => {
  it.each(REFUSED)('%s', (_what, env, variable, remedy) => {
    let refused: unknown;
    try {
      readConfig(env());
    } catch (error) {
      refused = error;
    }
    expect(refused).toBeInstanceOf(ConfigWrong);
    const { message } = refused as ConfigWrong;
    expect(message.startsWith(`${variable}: `)).toBe(true);
    expect(message).toContain(remedy);
    expect(message).not.toContain('kept');
  });
});
