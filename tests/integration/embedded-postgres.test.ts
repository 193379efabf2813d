import { afterAll, afterEach, beforeAll, describe, expect, it } from '@jest/globals';
import { transformFileSync } from '@swc/core';
import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { once } from 'node:events';
import * as fs from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import pg from 'pg';
import { type Embedded, type EmbeddedOptions, startEmbedded } from '../../apps/service/src/platform/embedded/index.js';
import { locateNative } from '../../apps/service/src/platform/embedded/locate-binaries.js';
import { databaseAccount } from '../../apps/service/src/platform/embedded/run-as.js';

type Started = Omit<Embedded, 'stop'> & { readonly lines: readonly string[] };
const SOURCE = 'apps/service/src/platform/embedded';
const SETTINGS = { fsync: 'off' };
const asRoot = process.getuid?.() === 0;
const base = fs.mkdtempSync(join(tmpdir(), 'embedded-postgres-'));
const children: ChildProcess[] = [];
const servers: Embedded[] = [];

/** A starter of its own process: prints one line of JSON when PostgreSQL is ready, and stops it on SIGTERM alone. */
const RUNNER = `
import { startEmbedded } from './embedded/index.js'; const lines = [];
process.on('SIGINT', () => undefined);
const running = await startEmbedded({ ...JSON.parse(process.argv[2]), say: (line) => lines.push(line) });
process.on('SIGTERM', () => running.stop().then(() => process.exit(0)));
process.stdout.write(JSON.stringify({ ...running, lines }) + '\\n');`;

/** Puts the embedded folder as plain JavaScript where every user can read it, and Node beside it. */
function makeRunner(): void {
  process.umask(0o022);
  fs.chmodSync(base, 0o755);
  fs.mkdirSync(join(base, 'run/embedded'), { recursive: true });
  fs.writeFileSync(join(base, 'run/package.json'), '{"type":"module"}');
  fs.writeFileSync(join(base, 'run/main.js'), RUNNER);
  for (const file of fs.readdirSync(SOURCE)) {
    const { code } = transformFileSync(join(SOURCE, file));
    fs.writeFileSync(join(base, 'run/embedded', file.replace(/\.ts$/, '.js')), code);
  }
  fs.copyFileSync(process.execPath, join(base, 'run/node'));
}

const newFolder = (): string => fs.mkdirSync(join(base, randomUUID()), { recursive: true }) ?? '';

/** Copies the programs without the links between libraries, as npm leaves them when install scripts are off. */
function bareNative(to: string): string {
  fs.cpSync(locateNative(), to, { recursive: true, filter: (path) => !fs.lstatSync(path).isSymbolicLink() });
  return to;
}

async function start(dataDir: string, more: Partial<EmbeddedOptions> = {}): Promise<Started> {
  const lines: string[] = [];
  const running = await startEmbedded({ dataDir, settings: SETTINGS, say: (line) => lines.push(line), ...more });
  servers.push(running);
  return { ...running, lines };
}

/** Starts it in a process of its own, with the environment and as the user given. */
async function launch(options: Partial<EmbeddedOptions>, how: object = {}): Promise<[Started, ChildProcess]> {
  const given = JSON.stringify({ settings: SETTINGS, nativeDir: locateNative(), ...options });
  const stdio: ['ignore', 'pipe', 'inherit'] = ['ignore', 'pipe', 'inherit'];
  const child = spawn(join(base, 'run/node'), ['run/main.js', given], { cwd: base, stdio, detached: true, ...how });
  children.push(child);
  const ended = once(child, 'exit').then(([code, signal]) => Promise.reject(new Error(`It ended: ${code ?? signal}`)));
  const [line] = (await Promise.race([once(child.stdout, 'data'), ended])) as [Buffer];
  ended.catch(() => undefined);
  return [JSON.parse(line.toString()) as Started, child];
}

async function end(child: ChildProcess | undefined, signal: NodeJS.Signals): Promise<void> {
  if (child && child.exitCode === null && child.signalCode === null && child.kill(signal)) await once(child, 'exit');
}

async function stopAll(): Promise<void> {
  await Promise.all(servers.splice(0).map((server) => server.stop()));
  await Promise.all(children.splice(0).map((child) => end(child, 'SIGTERM')));
}

async function query({ host, port, superuser }: Started, sql: string): Promise<Record<string, unknown>[]> {
  const client = new pg.Client({ host, port, database: 'postgres', ...superuser });
  await client.connect();
  return (await client.query<Record<string, unknown>>(sql).finally(() => client.end())).rows;
}

beforeAll(makeRunner);
afterEach(stopAll);
afterAll(() => fs.rmSync(base, { recursive: true, force: true }));

describe('the embedded database', () => {
  it('keeps its rows over a restart and listens on the loopback address alone', async () => {
    const first = await start(newFolder(), { settings: { ...SETTINGS, listen_addresses: '*', work_mem: '5MB' } });
    await query(first, 'CREATE TABLE lot AS SELECT 7 AS kg');
    const names = `'listen_addresses','unix_socket_directories','jit','random_page_cost','max_connections','shared_buffers','work_mem'`;
    const shown = await query(first, `SELECT setting FROM pg_settings WHERE name IN (${names}) ORDER BY name`);
    expect(shown.map((row) => row.setting)).toEqual(['off', '127.0.0.1', '60', '1.1', '32768', '', '5120']);
    await stopAll();
    expect(fs.readdirSync(first.dataDir).sort()).toEqual(['pg', 'pg.password', 'postgres.log']);
    expect(await query(await start(first.dataDir), 'SELECT kg FROM lot')).toEqual([{ kg: 7 }]);
  });

  it('writes through to the disk by default, and asks for a password that only the service may read', async () => {
    const server = await start(newFolder(), { settings: {} });
    expect(await query(server, 'SHOW fsync')).toEqual([{ fsync: 'on' }]);
    const file = fs.statSync(`${server.clusterDir}.password`);
    expect(file).toMatchObject({ mode: 0o100600, uid: process.getuid?.() });
    const stranger = { ...server, superuser: { user: 'postgres', password: 'guess' } };
    await expect(query(stranger, 'SELECT 1')).rejects.toThrow(/password authentication failed/);
  });

  it.each([{}, { LANG: 'POSIX', LC_ALL: 'POSIX' }])('is UTF-8 when the locale is set by %j', async (locale) => {
    const [server] = await launch({ dataDir: newFolder() }, { env: { PATH: process.env.PATH, ...locale } });
    const sql = `SELECT current_setting('server_encoding') AS encoding, datlocprovider AS provider, datlocale AS locale, upper('ø') FROM pg_database`;
    expect((await query(server, sql))[0]).toEqual({ encoding: 'UTF8', provider: 'b', locale: 'C.UTF-8', upper: 'Ø' });
  });

  it('does not hear the Ctrl-C that the terminal sends to the group of the service', async () => {
    const [server, child] = await launch({ dataDir: newFolder() });
    process.kill(-(child.pid ?? NaN), 'SIGINT');
    await sleep(500);
    expect(await query(server, 'SELECT 1 AS one')).toEqual([{ one: 1 }]);
    await end(child, 'SIGTERM');
    await expect(query(server, 'SELECT 1')).rejects.toThrow(/ECONNREFUSED/);
  });

  it('refuses a port that is taken, shows what PostgreSQL said, and gives the folder free', async () => {
    const dataDir = newFolder();
    const { port } = await start(newFolder());
    await expect(start(dataDir, { port })).rejects.toThrow(/did not start[^]*could not bind/);
    await expect(start(dataDir)).resolves.toHaveProperty('dataDir', dataDir);
  });
});

describe('a folder of data', () => {
  it('is refused to a second start while the first runs, and the first goes on', async () => {
    const [server, child] = await launch({ dataDir: newFolder() });
    await expect(start(server.dataDir)).rejects.toThrow(`in use by process ${child.pid}`);
    expect(await query(server, 'SELECT 1 AS one')).toEqual([{ one: 1 }]);
  });

  it('goes to one of two simultaneous first starts', async () => {
    const dataDir = newFolder();
    const results = await Promise.allSettled([start(dataDir), start(dataDir)]);
    const lost = results.filter(({ status }) => status === 'rejected');
    expect(lost).toMatchObject([{ reason: { code: 'already-owned' } }]);
  });

  it('keeps every row when its service was killed, and what that left running is stopped', async () => {
    const [orphan, child] = await launch({ dataDir: newFolder() });
    await query(orphan, 'CREATE TABLE lot AS SELECT 7 AS kg');
    await end(child, 'SIGKILL');
    expect(await query(orphan, 'SELECT kg FROM lot')).toEqual([{ kg: 7 }]);
    const server = await start(orphan.dataDir);
    expect(server.lines).toContainEqual(expect.stringContaining('left running'));
    expect(await query(server, 'SELECT kg FROM lot')).toEqual([{ kg: 7 }]);
  });

  it('is not held by a process that only has the number of an old server or owner', async () => {
    const { clusterDir, dataDir } = await start(newFolder());
    await stopAll();
    const { uid, gid } = fs.statSync(clusterDir);
    const stranger = spawn('sleep', ['100'], { uid, gid, stdio: 'ignore' });
    children.push(stranger);
    fs.writeFileSync(join(clusterDir, 'postmaster.pid'), `${stranger.pid}\n${clusterDir}\n1\n1\n\n\n\nready\n`);
    fs.writeFileSync(`${clusterDir}.owner`, `${stranger.pid} another-boot/1\n`);
    expect(await query(await start(dataDir), 'SELECT 1 AS one')).toEqual([{ one: 1 }]);
    expect([stranger.exitCode, stranger.signalCode]).toEqual([null, null]);
  });

  it('is made anew after a first start that was interrupted', async () => {
    const dataDir = newFolder();
    const interrupted = expect(launch({ dataDir })).rejects.toThrow(/SIGKILL/);
    while (!fs.readdirSync(dataDir).some((name) => /^pg\.new-\w+$/.test(name))) await sleep(5);
    await Promise.all([interrupted, end(children[0], 'SIGKILL')]);
    fs.mkdirSync(join(dataDir, 'pg.new'));
    expect(await query(await start(dataDir), 'SELECT 1 AS one')).toEqual([{ one: 1 }]);
    expect(fs.readdirSync(dataDir).sort()).toEqual(['pg', 'pg.owner', 'pg.password', 'postgres.log']);
  });

  it('is refused when another major version made it, with what was found and what to do', async () => {
    const { clusterDir, dataDir } = await start(newFolder());
    await stopAll();
    fs.writeFileSync(join(clusterDir, 'PG_VERSION'), '17\n');
    const refusal = /made by PostgreSQL 17; this release brings PostgreSQL 18.*DATABASE_URL/;
    await expect(start(dataDir)).rejects.toThrow(refusal);
  });

  it('is not replaced by an empty database when it lay elsewhere and is gone', async () => {
    const dataDir = newFolder();
    fs.writeFileSync(join(dataDir, 'postgres-location'), `${join(base, 'nowhere/pg')}\n`);
    await expect(start(dataDir)).rejects.toMatchObject({ code: 'data-missing' });
    expect(fs.readdirSync(dataDir)).toEqual(['postgres-location']);
  });
});

it('programs that are not packaged, not installed or not executable are reported with the remedy', async () => {
  expect(() => locateNative('sunos', 'x64')).toThrow(/not packaged.*set DATABASE_URL and DATABASE_OWNER_URL/);
  expect(() => locateNative('linux', 'ppc64')).toThrow(/npm ci.*DATABASE_URL and DATABASE_OWNER_URL/);
  const nativeDir = bareNative(join(base, 'modeless'));
  fs.chmodSync(join(nativeDir, 'bin/initdb'), 0o644);
  const refusal = /initdb may not be executed.*npm ci.*DATABASE_URL and DATABASE_OWNER_URL/;
  await expect(start(newFolder(), { nativeDir })).rejects.toThrow(refusal);
});

/** Every path that this user can take must run: both as root, the ordinary one otherwise. */
describe('whoever starts it', () => {
  const ran: string[] = [];
  afterAll(() => expect(ran).toEqual(asRoot ? ['ordinary', 'root'] : ['ordinary']));

  it('an ordinary user gets everything in DATA_DIR, and missing library links are made in place', async () => {
    const dataDir = newFolder();
    const nativeDir = bareNative(join(base, 'native'));
    const user = asRoot ? { uid: 65534, gid: 65534 } : {}; // nobody: not the account that root chooses
    if (asRoot) spawnSync('chown', ['-R', '65534:65534', dataDir, nativeDir]);
    const [server, child] = await launch({ dataDir, nativeDir }, user);
    expect(await query(server, 'SELECT 1 AS one')).toEqual([{ one: 1 }]);
    expect(server.lines).toEqual([`A new database was made in ${join(dataDir, 'pg')}.`]);
    expect(fs.readdirSync(dataDir).sort()).toEqual(['pg', 'pg.owner', 'pg.password', 'postgres.log']);
    expect(fs.readlinkSync(join(nativeDir, 'lib/libpq.so.5'))).toMatch(/^libpq/);
    await end(child, 'SIGTERM');
    await start(dataDir, { nativeDir }); // Once as root, if this is root: it must stay the user's.
    await stopAll();
    await launch({ dataDir, nativeDir }, user);
    expect(fs.statSync(server.clusterDir).uid).toBe(asRoot ? 65534 : process.getuid?.());
    ran.push('ordinary');
  });

  const outOfClosedFolders = async (): Promise<void> => {
    const dataDir = join(base, 'closed/data');
    const options = { nativeDir: bareNative(join(base, 'closed/native')), stateDir: join(base, 'state') };
    spawnSync('chmod', ['-R', 'go=', join(base, 'closed')]);
    const first = await start(dataDir, options);
    await query(first, 'CREATE TABLE lot AS SELECT 7 AS kg');
    const { name, uid } = databaseAccount();
    expect(fs.readFileSync(join(dataDir, 'postgres-location'), 'utf8')).toBe(`${first.clusterDir}\n`);
    expect(fs.statSync(first.clusterDir)).toMatchObject({ uid, mode: 0o40700 });
    expect(first.lines).toEqual([
      expect.stringMatching(RegExp(`cannot reach ${dataDir}: .* kept in ${options.stateDir}/[0-9a-f]{12}/pg`)),
      expect.stringContaining(`runs as the user ${name}`),
      expect.stringMatching(RegExp(`programs are copied to ${options.stateDir}/postgresql-18\\.\\d+\\.$`)),
      `A new database was made in ${first.clusterDir}.`,
    ]);
    await stopAll();
    spawnSync('chmod', ['go+x', join(base, 'closed'), options.nativeDir]); // The way is open now, the files are not.
    expect(await query(await start(dataDir, options), 'SELECT kg FROM lot')).toEqual([{ kg: 7 }]);
    ran.push('root');
  };
  if (asRoot) it('root runs it as another user, out of folders that only root can enter', outOfClosedFolders);
});
