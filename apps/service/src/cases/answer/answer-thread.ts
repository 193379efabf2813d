import { parentPort, workerData } from 'node:worker_threads';
import type { CaseInputs } from '../inputs/case-inputs.js';
import { answerOf } from './answer-of.js';
import type { Asked, Told } from './answer-apart.js';

/** The thread of one answer: tells its steps, then what it found, and ends. */
const { settings, inputs } = workerData as Asked;
const tell = (told: Told): void => parentPort?.postMessage(told);
const answer = await answerOf(settings, JSON.parse(inputs) as CaseInputs, (step) => {
  tell({ step });
  return Promise.resolve();
});
tell({ answer });
