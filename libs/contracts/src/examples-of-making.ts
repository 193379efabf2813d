import { EXAMPLE_ID, taken, told } from './example-parts.js';

const PLACE = { surface: 'shell', side: 'port', fromTransomMm: 2_400, girthMm: 620 };

/** One request for each route about what is made, found wrong and put right. */
export const EXAMPLES_OF_MAKING = {
  recordLayer: told({
    ...{ layer: 'L2', startedAt: '2026-05-14T08:05:00-04:00', endedAt: '2026-05-14T09:15:00-04:00' },
    doneBy: ['LAM-07', 'LAM-02'],
    climate: { airTemperature: { value: 74, unit: 'F' }, relativeHumidity: { value: 52, unit: '%' } },
    used: [taken({ lot: 'B-0514-3' }, '20', 'kg'), taken({ lot: 'K-86-12' }, '1', 'pc')],
  }),
  useInLayer: told({ used: [taken({ lot: 'B-0514-4' }, '11.5', 'kg')] }),
  readLayer: told({
    ...{ what: 'wet film', unit: 'mil', equipment: 'MG-2' },
    spots: [
      { lastWet: '18', nextDry: '20', place: PLACE },
      { lastWet: '16', nextDry: '18' },
    ],
  }),
  signHoldPoint: told({ enteredBy: 'INS-01' }),
  useInJoint: told({ used: [taken({ lot: 'PASTE-31' }, '2', 'kg')] }),
  reportDefect: told({ kind: 'blister', layer: 'L2', place: PLACE, lengthMm: 6, grade: '6M' }),
  dispose: told({
    ...{ enteredBy: 'QUA-01', of: 'defect', about: EXAMPLE_ID, disposition: 'use as is', concession: 'C-0031' },
    reason: 'Cosmetic, above the waterline, within the finish limits of the model.',
  }),
  recordRepair: told({
    ...{ defects: [EXAMPLE_ID], procedure: 'Ground out to sound laminate and laid up again.', taperRatio: 12 },
    grindOutMm: { lengthMm: 240, widthMm: 180, depthMm: 2.5 },
    plies: ['mat 450', 'mat 450'],
    doneBy: ['PAT-01'],
    used: [taken({ lot: 'VE-2231' }, '0.8', 'kg')],
  }),
  useInRepair: told({ used: [taken({ lot: 'GEL-118' }, '0.15', 'kg')] }),
  readRepair: told({ what: 'Barcol hardness', unit: 'Barcol', spots: [{ value: '38' }, { value: '40' }] }),
  judgeRepair: told({ enteredBy: 'INS-01', accepted: true }),
  correct: told({
    ...{ corrects: EXAMPLE_ID, reason: 'The scale was read in pounds.' },
    set: { kind: 'used', amount: { quantity: '18.5', unit: 'lb', basis: 'weighed' } },
  }),
};
