import { describe, expect, it } from '@jest/globals';
import { answerApart } from '../../../apps/service/src/cases/answer/answer-apart.js';
import { answerOf } from '../../../apps/service/src/cases/answer/answer-of.js';
import { NOTHING_LEFT_OUT, type CaseInputs } from '../../../apps/service/src/cases/inputs/case-inputs.js';
import { inputsText } from '../../../apps/service/src/cases/inputs/inputs-text.js';
import { canonical } from '../../../apps/service/src/platform/facts/digest.js';
import { caseSettings } from '../../study/case-of-plant.js';

/** The thread from its source, as a built service has it compiled. */
const THREAD = {
  file: new URL('../../../apps/service/src/cases/answer/answer-thread.ts', import.meta.url),
  execArgv: [
    '--conditions=source',
    '--import',
    new URL('../../support/load-typescript.mjs', import.meta.url).pathname,
    '--no-warnings',
  ],
};

const hulls = Array.from({ length: 24 }, (_, i) => ({
  ...{ number: `H${i}`, built: '2025-01', stratum: `S${i % 2}`, since: '2025-02', age: 300 + i, claimed: i < 5 },
  ...{ claimAges: i < 5 ? [300 + i] : [], until: 400 + i, from: 0, running: i >= 5 },
}));
const inputs: CaseInputs = {
  ...{ watchedUntil: '2026-06-30', exploratory: false, hulls, others: [], spots: [], warrantyCapDays: null },
  belowWater: null,
  leftOut: NOTHING_LEFT_OUT,
  lots: [
    {
      lot: 'Ä "1"',
      supplierLot: null,
      material: 'Résine\u2028',
      family: 'resin',
      hulls: [0, 1, 2, 3, 4, 9],
      shares: [1, 1, 0.1, 1e-7, 1e21, 0.3],
    },
    { lot: 'G', supplierLot: 'S', material: null, family: 'glass', hulls: [], shares: [] },
  ],
};

describe('an answer worked out apart', () => {
  it('is the one that is worked out here, with its steps told in order before it', async () => {
    const settings = caseSettings();
    const told: number[] = [];
    const apart = await answerApart(
      { settings, inputs: await inputsText(inputs) },
      (step) => {
        told.push(step);
        return Promise.resolve();
      },
      THREAD,
    );
    expect(canonical(apart)).toBe(canonical(await answerOf(settings, inputs)));
    expect(told).toEqual([2, 3, 4, 5]);
  }, 60_000);

  it('says what went wrong there', async () => {
    await expect(answerApart({ settings: caseSettings(), inputs: '{' }, undefined, THREAD)).rejects.toThrow(/JSON/);
  }, 60_000);
});

describe('the text of inputs', () => {
  it('is their canonical JSON', async () => {
    expect(await inputsText(inputs)).toBe(canonical(inputs));
  });

  it('refuses what JSON has no number for', async () => {
    const [hull] = hulls;
    for (const broken of [{ warrantyCapDays: NaN }, { hulls: [{ ...hull, claimAges: [1, Infinity] }] }])
      await expect(inputsText({ ...inputs, ...broken } as CaseInputs)).rejects.toThrow(TypeError);
  });
});
