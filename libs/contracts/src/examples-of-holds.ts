import { told } from './example-parts.js';

/** One request for each route of holds. */
export const EXAMPLES_OF_HOLDS = {
  holdOther: told({
    ...{ enteredBy: 'QUA-01', on: { what: 'mold', code: 'M-86-1', state: 2 }, kind: 'quality' },
    reason: 'Release film came off with the gel coat.',
  }),
  narrowHold: told({
    ...{ enteredBy: 'QUA-01', minShare: 0.05 },
    reason: 'Five per cent of the lot in good resin gelled as certified in test G-31.',
  }),
  disposeHeld: told({
    ...{ enteredBy: 'QUA-01', hulls: ['86-0112'], what: 'checked' },
    evidence: 'Barcol at ten spots of the bottom, reading sheet B-118.',
  }),
  closeHold: told({ enteredBy: 'QUA-01', reason: 'Every hull is looked at; the rest of the lot went back.' }),
};
