import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { mkdtemp, mkdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Client, type Reply } from '../support/access/client.js';
import { startService, type RunningService } from '../support/service.js';

const PAGE = '<!doctype html><meta name="plant-time-zone" content="UTC"><title>Hull Record</title>';

let webDir: string;
let service: RunningService;
let client: Client;
beforeAll(async () => {
  webDir = await mkdtemp(join(tmpdir(), 'hull-record-web-'));
  await mkdir(join(webDir, 'dist/assets'), { recursive: true });
  await writeFile(join(webDir, 'dist/index.html'), PAGE);
  for (const file of ['main.js', 'main.js.br', 'code-worker-AB_c-1.js', 'xcode-worker-1.js', 'code-worker-1.html'])
    await writeFile(join(webDir, 'dist/assets', file), 'export {};');
  service = await startService({ webDir });
  client = new Client(service.url, await service.signedIn());
});
afterAll(async () => {
  await service.close();
  await rm(webDir, { recursive: true });
});

/** Directives of a security policy by name. */
const policyOf = ({ headers }: Reply): ReadonlyMap<string, readonly string[]> =>
  new Map(
    String(headers['content-security-policy'])
      .split('; ')
      .map((directive) => directive.split(' '))
      .map(([name = '', ...values]) => [name, values]),
  );

const EVERY_KIND = [
  ['a page', '/hulls', 200],
  ['what the page is built of', '/assets/main.js', 200],
  ['an answer', '/api/hulls', 200],
  ['an answer at an address in other letters', '/API/hulls', 200],
  ['a refusal', '/api/hulls/none', 404],
  ['what is not there', '/api/none', 404],
  ['how it is', '/health/live', 200],
] as const;

describe('what the service sends', () => {
  it.each(EVERY_KIND)(
    'as %s may run nothing that is not its own, and stand in no other page',
    async (_, path, status) => {
      const reply = await client.get(path, { accept: path === '/hulls' ? 'text/html' : '*/*' });
      expect(reply.status).toBe(status);
      const policy = policyOf(reply);
      expect(policy.get('default-src')).toEqual(["'self'"]);
      for (const none of ['object-src', 'base-uri', 'frame-ancestors']) expect(policy.get(none)).toEqual(["'none'"]);
      expect(policy.get('form-action')).toEqual(["'self'"]);
      expect(reply.headers['content-security-policy']).not.toMatch(/unsafe-|\*|https?:/);
      expect(reply.headers).toMatchObject({
        'x-content-type-options': 'nosniff',
        'referrer-policy': 'no-referrer',
        'cross-origin-opener-policy': 'same-origin',
        'cross-origin-resource-policy': 'same-origin',
      });
      expect(reply.headers).not.toHaveProperty('x-powered-by');
      expect(reply.headers).not.toHaveProperty('access-control-allow-origin');
    },
  );

  it('as the thread that reads codes may compile WebAssembly, and do nothing else but fetch it', async () => {
    const policy = policyOf(await client.get('/assets/code-worker-AB_c-1.js'));
    expect([...policy]).toEqual([
      ['default-src', ["'none'"]],
      ['script-src', ["'wasm-unsafe-eval'"]],
      ['connect-src', ["'self'"]],
    ]);
    for (const other of ['/assets/xcode-worker-1.js', '/assets/code-worker-1.html', '/assets/code-worker-none.js/'])
      expect([other, policyOf(await client.get(other)).get('default-src')]).toEqual([other, ["'self'"]]);
  });

  it.each(['/api/hulls', '/API/hulls', '/Api/Session', '/api/none'])(
    '%s is kept by nobody on the way',
    async (path) => {
      expect((await client.get(path)).headers['cache-control']).toBe('no-store');
    },
  );

  it('as the refusal of a compressed file is plain, and kept by nobody on the way', async () => {
    const compressed = { 'accept-encoding': 'br' };
    expect((await client.get('/assets/main.js', compressed)).headers['content-encoding']).toBe('br');
    for (const [header, value, status] of [
      ['if-match', '"another"', 412],
      ['range', 'bytes=999-', 416],
    ] as const) {
      const reply = await client.get('/assets/main.js', { ...compressed, [header]: value });
      expect(reply).toMatchObject({ status, body: { status }, headers: { 'cache-control': 'no-store' } });
      expect(reply.headers).not.toHaveProperty('content-encoding');
    }
  });

  it.each(['/api/none', '/API/none', '/Health/none', '/ASSETS/none.js'])('%s is no page', async (path) => {
    const reply = await client.get(path, { accept: 'text/html' });
    expect([reply.status, String(reply.headers['content-type'])]).toEqual([
      404,
      expect.stringContaining('application/problem+json'),
    ]);
  });
});
