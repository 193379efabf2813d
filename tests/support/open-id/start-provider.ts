import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

/** A provider that runs. */
export interface RunningProvider {
  readonly issuer: string;
  /** What the service is told of it, as its client `hulls`. */
  readonly set: { name: string; issuer: string; clientId: string; clientSecret: string; publicUrl: null };
  stop(): Promise<void>;
}

const PROGRAM = fileURLToPath(new URL('./provider.mjs', import.meta.url));

const end = async (child: ChildProcess): Promise<void> => {
  if (child.exitCode !== null || child.signalCode !== null) return;
  child.kill('SIGTERM');
  await once(child, 'exit');
};

/**
 * Starts a provider.
 *
 * @param env AUTH_METHOD: how clients have to say who they are; PORT; SITE: its name when not 127.0.0.1
 */
export const startProvider = async (env: Readonly<Record<string, string>> = {}): Promise<RunningProvider> => {
  const child = spawn(process.execPath, [PROGRAM], {
    env: { PATH: process.env['PATH'], ...env },
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  const [issuer] = (await Promise.race([
    once(createInterface(child.stdout), 'line'),
    once(child, 'exit').then(() => Promise.reject(new Error('The provider ended before it listened.'))),
  ])) as [string];
  const set = { name: 'Harbour office', issuer, clientId: 'hulls', clientSecret: 'secret of hulls', publicUrl: null };
  return { issuer, set, stop: () => end(child) };
};
