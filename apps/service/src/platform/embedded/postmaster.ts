import { type ChildProcess, spawn } from 'node:child_process';
import { closeSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { EmbeddedPostgresError } from './embedded-error.js';
import { program } from './locate-binaries.js';
import { readPostmasterFile } from './postmaster-file.js';
import type { Account } from './run-as.js';
import { asAccount, programEnv } from './run-program.js';
import { lastLines, openLog, type ServerLog } from './server-log.js';
import { stopPostmaster } from './stop-postmaster.js';

/** The settings PostgreSQL is started with; jit and random_page_cost are for short queries on solid-state disks. */
export const DEFAULT_SETTINGS: Readonly<Record<string, string>> = {
  shared_buffers: '256MB',
  random_page_cost: '1.1',
  jit: 'off',
  max_connections: '60',
};

interface Wanted {
  readonly nativeDir: string;
  readonly cluster: string;
  readonly account: Account | undefined;
  readonly port: number;
  readonly settings: Readonly<Record<string, string>>;
  readonly say: (line: string) => void;
}

/** A PostgreSQL that accepts connections; `stop` may be called more than once. */
export interface Postmaster {
  readonly pid: number;
  stop(): Promise<void>;
}

/** Where it listens comes last, so that no setting opens it to a network or adds a socket. */
function argumentsFor({ cluster, port, settings }: Wanted): string[] {
  const ours = { listen_addresses: '127.0.0.1', unix_socket_directories: '', port: String(port) };
  const all = { ...DEFAULT_SETTINGS, ...settings, ...ours };
  return ['-D', cluster, ...Object.entries(all).flatMap(([name, value]) => ['-c', `${name}=${value}`])];
}

/** Detached gives it a process group of its own: the terminal's Ctrl-C must reach the service alone, which stops it. */
function launch(wanted: Wanted, log: ServerLog): ChildProcess {
  const { account, cluster, nativeDir } = wanted;
  const stdio: ['ignore', number, number] = ['ignore', log.handle, log.handle];
  const options = { cwd: dirname(cluster), env: programEnv(), detached: true, stdio, ...asAccount(account) };
  const child = spawn(program(nativeDir, 'postgres'), argumentsFor(wanted), options);
  closeSync(log.handle);
  return child;
}

/** Watches a child: resolves to how it ended, in words. */
function ending(child: ChildProcess): Promise<string> {
  return new Promise((resolve) => {
    child.on('error', (error) => resolve(error.message));
    child.on('exit', (code, signal) => resolve(signal ?? `exit code ${code}`));
  });
}

/** Waits as long as the process lives: recovery after a crash may take minutes, and ending it would only begin it anew. */
async function ready({ cluster, say }: Wanted, pid: number, ended: () => boolean): Promise<void> {
  for (let waits = 1; !ended(); waits += 1) {
    const file = readPostmasterFile(cluster);
    if (file?.pid === pid && file.ready) return;
    if (waits % 300 === 0) say(`PostgreSQL is still starting (${waits / 20} s); it may be recovering from a crash.`);
    await sleep(50);
  }
}

/**
 * Starts PostgreSQL on a cluster and resolves when it accepts connections.
 *
 * @throws EmbeddedPostgresError `start-failed` with the last lines of its log, which is `postgres.log` beside the cluster.
 */
export async function startPostmaster(wanted: Wanted): Promise<Postmaster> {
  const log = openLog(join(dirname(wanted.cluster), 'postgres.log'), wanted.account);
  const child = launch(wanted, log);
  const pid = child.pid ?? 0;
  let end: string | undefined;
  let stopping: Promise<void> | undefined;
  const gone = ending(child).then((how) => {
    end = how;
  });
  await ready(wanted, pid, () => end !== undefined);
  if (end !== undefined) {
    const message = `PostgreSQL did not start (${end}). Its log ${log.path} ends:\n${lastLines(log)}`;
    throw new EmbeddedPostgresError('start-failed', message);
  }
  void gone.then(() => stopping ?? wanted.say(`PostgreSQL ended unexpectedly (${end}); see ${log.path}.`));
  const stop = async (): Promise<void> => (end === undefined ? stopPostmaster(wanted.nativeDir, pid) : undefined);
  return { pid, stop: () => (stopping ??= stop().then(() => gone)) };
}
