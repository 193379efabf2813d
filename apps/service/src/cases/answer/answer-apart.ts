import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import type { CaseAnswer } from '@hull-record/contracts';
import type { CaseInputs } from '../inputs/case-inputs.js';
import type { CaseSettings } from '../settings.js';
import { answerOf } from './answer-of.js';

/** What a thread is asked: frozen settings, and inputs as the text that is kept of them. */
export interface Asked {
  readonly settings: CaseSettings;
  readonly inputs: string;
}

/** What it tells. */
export type Told = { readonly step: number } | { readonly answer: CaseAnswer };

/** Where the code of the thread is; null where only its source is, as in tests: then it is worked out here. */
export interface Thread {
  readonly file: URL;
  readonly execArgv?: readonly string[];
}

const COMPILED = new URL('./answer-thread.js', import.meta.url);
const thread: Thread | null = existsSync(fileURLToPath(COMPILED)) ? { file: COMPILED } : null;

/**
 * The answer of a look, worked out in a thread of its own: it is seconds of arithmetic, during which everybody else at the
 * plant would wait. The same answer as `answerOf` gives, which it calls.
 *
 * @param tell is told each step
 * @throws whatever went wrong in the thread
 */
export const answerApart = (
  asked: Asked,
  tell: (step: number) => Promise<void> = () => Promise.resolve(),
  where: Thread | null = thread,
): Promise<CaseAnswer> => {
  if (!where) return answerOf(asked.settings, JSON.parse(asked.inputs) as CaseInputs, tell);
  return new Promise((resolve, reject) => {
    const worker = new Worker(where.file, {
      workerData: asked,
      ...(where.execArgv && { execArgv: [...where.execArgv] }),
    });
    // One after the other and before the answer, or an old step would be written over the end. What cannot be told of
    // progress is no reason to give up the work.
    let telling = Promise.resolve();
    worker.on('message', (told: Told) => {
      if ('answer' in told) resolve(telling.then(() => told.answer));
      else telling = telling.then(() => tell(told.step)).catch(() => undefined);
    });
    worker.on('error', reject);
    worker.on('exit', (code) => reject(new Error(`The thread of the answer ended with ${code} and without one.`)));
  });
};
