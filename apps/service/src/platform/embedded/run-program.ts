import { spawn } from 'node:child_process';
import type { Account } from './run-as.js';

/** How a program of PostgreSQL is run: as whom (itself when undefined) and in which folder. */
export interface RunOptions {
  readonly account: Account | undefined;
  readonly cwd: string;
}

const PASSED_ON = ['PATH', 'TZ', 'TMPDIR', 'SystemRoot', 'TEMP', 'TMP'];

/**
 * The environment of PostgreSQL's programs: a short list of what is passed on, so that no password of the service and
 * no PG* or LD_* variable gets through. The locale is fixed: what a cluster is made with must not depend on who starts it.
 */
export function programEnv(): NodeJS.ProcessEnv {
  const passed = PASSED_ON.flatMap((name) => (process.env[name] === undefined ? [] : [[name, process.env[name]]]));
  return { ...Object.fromEntries(passed), LC_ALL: 'C' };
}

/** The part of spawn's options that says as whom. */
export function asAccount(account: Account | undefined): { uid?: number; gid?: number } {
  return account ? { uid: account.uid, gid: account.gid } : {};
}

/** Runs a program to its end and resolves to its exit code (null after a signal) and all it printed. */
export function runProgram(
  file: string,
  args: readonly string[],
  { account, cwd }: RunOptions,
): Promise<{ code: number | null; output: string }> {
  return new Promise((resolve) => {
    const child = spawn(file, args, {
      cwd,
      env: programEnv(),
      stdio: ['ignore', 'pipe', 'pipe'],
      ...asAccount(account),
    });
    let output = '';
    for (const stream of [child.stdout, child.stderr])
      stream.on('data', (chunk: Buffer) => (output += chunk.toString()));
    child.on('error', (error) => resolve({ code: null, output: error.message }));
    child.on('close', (code) => resolve({ code, output: output.trim() }));
  });
}
