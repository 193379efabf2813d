import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { chmodSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { type IncomingMessage, request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';

export type Env = Readonly<Record<string, string>>;

/** How a process of the service ended, and what it had said. */
export interface Ended {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly out: string;
  readonly errors: string;
}

/** A process of the service, started as `npm start` starts it. */
export interface Started {
  /** Waits until it has said something of this form; throws with all it said when it ends before. */
  said(pattern: RegExp): Promise<RegExpExecArray>;
  /** The address that it says, once it listens. */
  url(): Promise<string>;
  kill(signal: NodeJS.Signals): void;
  readonly ended: Promise<Ended>;
}

const running: ChildProcess[] = [];
const folders: string[] = [];

/** A new folder that also the user can reach as whom PostgreSQL runs. */
export const newFolder = (): string => {
  const folder = mkdtempSync(join(tmpdir(), 'hull-record-start-'));
  chmodSync(folder, 0o755);
  folders.push(folder);
  return folder;
};

/** Builds once, so that no two starts build at the same time. */
export const build = (): void => {
  for (const program of [['node_modules/typescript/bin/tsc', '-b', 'apps/service'], ['apps/web/build.mjs']]) {
    const { status, stdout, stderr } = spawnSync(process.execPath, program, { encoding: 'utf8' });
    if (status !== 0) throw new Error(`The build failed: ${stdout}${stderr}`);
  }
};

/** What `npm start` runs. */
const START = 'apps/service/start.mjs';
/** The same without a look at whether the build is up to date; a second quicker. */
export const BUILT = 'apps/service/dist/main.js';

/** Starts the service with this environment and no locale: on a free port and without the demo, unless it says otherwise. */
export const start = (env: Env, program = START): Started => {
  const whole = { PATH: process.env['PATH'], HOME: process.env['HOME'], PORT: '0', DEMO: 'off', ...env };
  const child = spawn(process.execPath, [program], { env: whole, stdio: ['ignore', 'pipe', 'pipe'] });
  running.push(child);
  const said = { out: '', errors: '' };
  child.stdout.on('data', (data: Buffer) => (said.out += data.toString()));
  child.stderr.on('data', (data: Buffer) => (said.errors += data.toString()));
  const ended = once(child, 'close').then(([code, signal]) => ({ code, signal, ...said }) as Ended);
  const waitFor = async (pattern: RegExp): Promise<RegExpExecArray> => {
    for (;;) {
      const found = pattern.exec(said.out);
      if (found) return found;
      if (child.exitCode !== null || child.signalCode !== null) {
        throw new Error(`It ended before it said ${pattern}: ${JSON.stringify(await ended)}`);
      }
      await sleep(20);
    }
  };
  return {
    said: waitFor,
    url: async () => (await waitFor(/Hull Record is at (\S+)/))[1] as string,
    kill: (signal) => child.kill(signal),
    ended,
  };
};

/** The process id of the PostgreSQL that serves a data folder, as PostgreSQL itself writes it down. */
export const postmasterOf = (dataDir: string): number =>
  Number(readFileSync(join(dataDir, 'pg', 'postmaster.pid'), 'utf8').split('\n')[0]);

export const isAlive = (pid: number): boolean => {
  try {
    return process.kill(pid, 0);
  } catch {
    return false;
  }
};

/** What a stopped service must not leave: the files by which a running one is known. */
export const leftBehind = (dataDir: string): string[] =>
  readdirSync(dataDir, { recursive: true, encoding: 'utf8' }).filter((name) => /\.owner$|postmaster\.pid$/.test(name));

/** Asks with headers that `fetch` would not send. */
export const askWith = async (url: string, headers: Env): Promise<{ status: number; type: string; body: unknown }> => {
  const asked = request(url, { headers });
  asked.end();
  const [answer] = (await once(asked, 'response')) as [IncomingMessage];
  let text = '';
  for await (const chunk of answer) text += String(chunk);
  return { status: answer.statusCode ?? 0, type: answer.headers['content-type'] ?? '', body: JSON.parse(text) };
};

/** Ends what a failed test left running, in order, and removes all folders. */
export const cleanUp = async (): Promise<void> => {
  for (const child of running.filter((each) => each.exitCode === null && each.signalCode === null)) {
    child.kill('SIGTERM');
    await once(child, 'close');
  }
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
};

/** A passphrase of tests. */
const PASSPHRASE = 'four winds over the harbour';

/** Signs in the first administrator, the first time with the one-time code that the start printed. Gives the headers. */
export const signInFirst = async (started: Started, first = true): Promise<Readonly<Record<string, string>>> => {
  const url = await started.url();
  const code = first ? (await started.said(/one-time code (\S+),/))[1] : undefined;
  const secret = { badge: 'ADMIN', secret: PASSPHRASE };
  const answer = await fetch(`${url}/api/${first ? 'first-sign-in' : 'sign-in'}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(first ? { ...secret, code } : secret),
  });
  const session = (await answer.json()) as { csrf: string };
  if (answer.status !== 200) throw new Error(`${answer.status} ${JSON.stringify(session)}`);
  const cookie = (answer.headers.get('set-cookie') ?? '').split(';')[0] as string;
  return { cookie, 'x-hull-record-csrf': session.csrf };
};
