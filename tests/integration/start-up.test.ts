import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { createServer } from 'node:net';
import {
  askWith,
  build,
  cleanUp,
  isAlive,
  leftBehind,
  newFolder,
  postmasterOf,
  signInFirst,
  start,
  type Started,
} from '../support/start-up.js';

beforeAll(build, 120_000);
afterAll(cleanUp);

type Headers = Readonly<Record<string, string>>;

const json = async (url: string, headers: Headers = {}): Promise<unknown> => (await fetch(url, { headers })).json();

const registerDealer = async (url: string, signedIn: Headers): Promise<number> => {
  const body = {
    ...{ id: randomUUID(), enteredBy: 'ADMIN', device: 'DESK', happenedAt: new Date().toISOString() },
    ...{ code: 'NLM', name: 'Northlight Marine', place: 'Calder Bay' },
  };
  const headers = { 'content-type': 'application/json', ...signedIn };
  return (await fetch(`${url}/api/dealers`, { method: 'POST', headers, body: JSON.stringify(body) })).status;
};

describe('the service on its own database', () => {
  const dataDir = newFolder();
  let first: Started;
  let url: string;
  beforeAll(async () => {
    first = start({ DATA_DIR: dataDir });
    url = await first.url();
  });

  it('prints where to look, on a loopback address', async () => {
    expect(url).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/);
    await first.said(new RegExp(`API page   ${url}/api/docs\\n`));
    await first.said(new RegExp(`Data in    ${dataDir}\\n`));
    await first.said(/Database {3}\/\S*\/pg\n/);
    await first.said(/Ctrl-C stops it/);
  });

  it('is alive and ready', async () => {
    expect(await json(`${url}/health/live`)).toEqual({ live: true });
    expect(await json(`${url}/health/ready`)).toMatchObject({ ready: true, demo: { state: 'off' } });
  });

  it.each([
    ['a Host that only points here', { Host: 'evil.example' }, 'host-not-known'],
    ['a Host that begins like ours', { Host: '127.0.0.1.evil.example' }, 'host-not-known'],
    ['a page of another origin', { Origin: 'http://evil.example' }, 'origin-not-known'],
    ['a page on another port of this machine', { Origin: 'http://127.0.0.1:1' }, 'origin-not-known'],
    ['a page without an origin', { Origin: 'null' }, 'origin-not-known'],
  ])('refuses %s', async (_what, headers, code) => {
    for (const path of ['/api/lots', '/health/ready', '/api/docs', '/']) {
      const answer = await askWith(`${url}${path}`, headers as Record<string, string>);
      expect(answer).toMatchObject({ status: 403, body: { type: `/problems/${code}`, status: 403 } });
      expect(answer.type).toContain('application/problem+json');
    }
  });

  it('answers its own page and a local name', async () => {
    expect((await askWith(`${url}/health/live`, { Origin: url })).status).toBe(200);
    const { port } = new URL(url);
    expect((await askWith(`${url}/health/live`, { Host: `localhost:${port}` })).status).toBe(200);
  });

  it('lets no second start use its data', async () => {
    const { code, errors } = await start({ DATA_DIR: dataDir }).ended;
    expect(code).toBe(1);
    expect(errors).toMatch(/^Cannot start\.\nThe data in \S+ is in use by process \d+\. .*\n$/);
    expect(await json(`${url}/health/ready`)).toMatchObject({ ready: true });
  });

  it('stops in order at Ctrl-C, though the terminal and npm both send it, and leaves no process and no lock', async () => {
    expect(await registerDealer(url, await signInFirst(first))).toBe(201);
    const postmaster = postmasterOf(dataDir);
    expect(isAlive(postmaster)).toBe(true);
    expect(leftBehind(dataDir).sort()).toEqual(['pg.owner', 'pg/postmaster.pid']);
    first.kill('SIGINT');
    first.kill('SIGINT');
    await first.said(/Stopping\./);
    first.kill('SIGINT');
    expect(await first.ended).toMatchObject({ code: 0, signal: null, errors: '' });
    expect((await first.ended).out).toMatch(/Stopping\.\nStopped\. The data stays\.\n$/);
    expect(isAlive(postmaster)).toBe(false);
    expect(leftBehind(dataDir)).toEqual([]);
  });

  it('keeps the data over a second start, and stops at SIGTERM too', async () => {
    const second = start({ DATA_DIR: dataDir });
    expect(await json(`${await second.url()}/api/dealers`, await signInFirst(second, false))).toMatchObject([
      { code: 'NLM' },
    ]);
    second.kill('SIGTERM');
    expect(await second.ended).toMatchObject({ code: 0, errors: '' });
    expect(leftBehind(dataDir)).toEqual([]);
  });

  it('says that its port is taken, and stops all that it had started', async () => {
    const taken = createServer().listen(0, '127.0.0.1');
    await once(taken, 'listening');
    const { port } = taken.address() as { port: number };
    const { code, out, errors } = await start({ DATA_DIR: dataDir, PORT: String(port) }).ended;
    taken.close();
    expect({ code, errors }).toEqual({
      code: 1,
      errors: `Cannot start.\nPORT: ${port} on 127.0.0.1 is taken: stop what listens there, or set PORT to another.\n`,
    });
    expect(out).not.toMatch(/Hull Record is at/);
    expect(leftBehind(dataDir)).toEqual([]);
  });

  it('says that the key of certificates does not open, and not to who issues the first one', async () => {
    const { code, out, errors } = await start({ DATA_DIR: dataDir, CERTIFICATE_KEY: '/nowhere/own.p12' }).ended;
    expect(code).toBe(1);
    expect(errors).toMatch(
      /^Cannot start\.\nCERTIFICATE_KEY: .*\/nowhere\/own\.p12.* Name a PKCS #12 file .*set CERTIFICATE_KEY_PASSPHRASE.*\n$/,
    );
    expect(out).not.toMatch(/Hull Record is at/);
    expect(leftBehind(dataDir)).toEqual([]);
  });

  it('starts again after that, and on localhost when it is told to', async () => {
    const third = start({ DATA_DIR: dataDir, HOST: 'localhost' });
    expect(await json(`${await third.url()}/health/ready`)).toMatchObject({ ready: true });
    third.kill('SIGINT');
    expect((await third.ended).code).toBe(0);
  });
});

describe('a start that is stopped before it is ready', () => {
  it('stops what it has started and leaves no process and no lock', async () => {
    const dataDir = newFolder();
    const started = start({ DATA_DIR: dataDir });
    await started.said(/A new database was made/);
    started.kill('SIGINT');
    expect(await started.ended).toMatchObject({ code: 0, signal: null, errors: '' });
    expect((await started.ended).out).toMatch(/Stopping\.\nStopped\. The data stays\.\n$/);
    expect((await started.ended).out).not.toMatch(/Hull Record is at/);
    expect(leftBehind(dataDir)).toEqual([]);
  });
});
