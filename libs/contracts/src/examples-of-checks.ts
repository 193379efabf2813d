import { EXAMPLE_ID, taken, told } from './example-parts.js';

/** One request for each route about checks and going on. */
export const EXAMPLES_OF_CHECKS = {
  checkLayer: told({
    ...{ layer: 'L2', startedAt: '2026-05-14T08:05:00-04:00', endedAt: '2026-05-14T08:05:00-04:00' },
    doneBy: ['LAM-07'],
    used: [taken({ lot: 'B-0514-3' }, '20', 'kg')],
  }),
  checkMix: told({
    code: 'B-0514-5',
    inputs: [taken({ lot: 'VE-2231' }, '20', 'kg'), taken({ lot: 'CAT-88' }, '0.36', 'kg')],
  }),
  checkRepair: told({
    ...{ defects: [EXAMPLE_ID], procedure: 'Grind out to sound laminate and lay up again.', doneBy: ['PAT-01'] },
    geometry: { originalMm: 6, damageDepthMm: 6, taperMm: 72, patchMm: 6 },
  }),
  goOn: told({
    ...{ enteredBy: 'LEAD-1', part: '1431-H', layer: 'L2', rules: ['expired-lot'] },
    reason: 'No other drum on the night shift; expired yesterday.',
  }),
  recordRework: told({ enteredBy: 'INS-01', doneBy: ['LAM-07'], note: 'Ground and laid up again.' }),
};
