import { told } from './example-parts.js';

/** One request for each route about cases. All of it is invented. */
export const EXAMPLES_OF_CASES = {
  openCase: told({ enteredBy: 'QUA-01', code: 'BLISTERS-26', title: 'Blisters reported at haul-out in spring 2026' }),
  freezeCase: told({
    ...{ enteredBy: 'QUA-01', kind: 'blister', models: ['TS86'], origin: 'sold to first purchaser', reportLagDays: 30 },
    ...{ exposureShare: 0.05, seed: 20260514, reason: 'Seven dealers have reported within a month.' },
  }),
  lookAtCase: told({ enteredBy: 'QUA-01' }),
};
