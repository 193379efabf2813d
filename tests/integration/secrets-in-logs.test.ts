import { afterAll, beforeAll, expect, it } from '@jest/globals';
import { randomUUID } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Client } from '../support/access/client.js';
import { build, cleanUp, newFolder, start } from '../support/start-up.js';

const PIN = '604183';
const PASSPHRASE = 'nine grey herons wade at dusk';

beforeAll(build, 120_000);
afterAll(cleanUp);

/** Every file below a folder that is a log. */
const logsBelow = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter(
      (entry) =>
        entry.isFile() && /log/i.test(`${entry.parentPath}/${entry.name}`) && !/wal|xact/i.test(entry.parentPath),
    )
    .map((entry) => join(entry.parentPath, entry.name));

it('no secret is in what the service and its database say, whatever is done with it', async () => {
  const dataDir = newFolder();
  const service = start({ DATA_DIR: dataDir });
  const url = await service.url();
  const [, code = ''] = await service.said(/one-time code (\S+),/);
  const client = new Client(url);
  const secrets: (string | undefined)[] = [PIN, PASSPHRASE];
  const envelope = () => ({
    ...{ id: randomUUID(), enteredBy: 'ADMIN', device: 'DESK', happenedAt: new Date().toISOString() },
  });

  expect((await client.firstSignIn('ADMIN', code, PIN)).status).toBe(200);
  secrets.push(client.cookie('hull-record-session'), client.csrf ?? undefined);
  expect((await client.post('/api/secret', { present: PIN, secret: PASSPHRASE })).status).toBe(200);
  // In the wrong field, in the address, in what is no JSON, and where a text is too long for the database.
  const other = new Client(url);
  expect((await other.signIn(PIN, PIN)).status).toBe(401);
  expect((await other.signIn('ADMIN\u0000', PASSPHRASE)).status).toBeGreaterThanOrEqual(400);
  expect((await other.get(`/api/lots?search=${PIN}&limit=x`)).status).toBeGreaterThanOrEqual(400);
  const broken = { method: 'POST', headers: { 'content-type': 'application/json' }, body: `{"secret":"${PIN}"` };
  expect((await fetch(`${url}/api/sign-in`, broken)).status).toBe(400);

  const tablet = { ...envelope(), code: 'TAB-1', description: 'Tablet', ratedForClassifiedArea: false };
  expect((await client.post('/api/devices', tablet)).status).toBe(201);
  const enrolment = await client.post('/api/devices/TAB-1/enrolment-codes');
  secrets.push(enrolment.body['code']);
  expect((await client.post('/api/enrolments', { code: enrolment.body['code'] })).status).toBe(200);
  secrets.push(client.cookie('hull-record-device'));
  const token = await client.post('/api/tokens', {
    badge: 'ADMIN',
    device: 'TAB-1',
    name: 'scale',
    scopes: ['read'],
    days: 1,
  });
  expect(token.status).toBe(200);
  secrets.push(token.body['token']);
  const bearer = { authorization: `Bearer ${String(secrets.at(-1))}` };
  expect((await new Client(url, bearer).get('/api/hulls')).status).toBe(200);
  const firstCode = await client.post('/api/people/ADMIN/first-codes');
  secrets.push(firstCode.body['code']);

  // A guess at the code of a certificate is told to whoever looks after the service, but not what was guessed.
  const guess = '7X2KD 9QW4M H3V8T B6N1R C5P0S Z2';
  const check = { code: guess };
  expect((await new Client(url).post('/api/certificate-checks', check)).body).toMatchObject({ is: 'not known' });
  secrets.push(guess, guess.replaceAll(' ', ''));

  service.kill('SIGTERM');
  const { out, errors } = await service.ended;
  const logs = logsBelow(dataDir);
  expect(logs.length).toBeGreaterThan(0);
  // The one-time code of the first start is what is said, once, to who started it.
  expect(out.split(code)).toHaveLength(2);
  expect(`${out}${errors}`).toMatch(/certificate was asked for that is not known, from \S*127\.0\.0\.1/);
  const said = [out, errors, ...logs.map((path) => readFileSync(path, 'latin1'))].join('\n');
  for (const [i, secret] of secrets.entries()) {
    expect([i, typeof secret, (secret ?? '').length > 5]).toEqual([i, 'string', true]);
    expect([i, said.includes(secret as string)]).toEqual([i, false]);
  }
}, 120_000);
