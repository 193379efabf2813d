import { told } from './example-parts.js';

/** One request for each route of notices. All of it is invented. */
export const EXAMPLES_OF_NOTICES = {
  decideDuty: told({
    ...{ enteredBy: 'QUA-01', decision: 'substantial risk of injury', discoveredOn: '2026-03-02', decidedBy: 'QUA-01' },
    ...{ why: 'The stringer bond may let go under way.', counsel: 'Letter of 2 March 2026.' },
  }),
  giveNotice: told({
    code: 'DN-2026-1',
    contents: {
      defect: 'The bond of the stringer grid may not have cured.',
      hazard: 'The grid may come loose under way, and the bottom may fail.',
      measures: 'Stop using the boat. Bring it to a dealer, who tests the bond and renews it.',
      undertaking: 'The test and the repair are free of charge.',
      ...{ manufacturer: 'Invented Boats', address: '1 Slip Road, Calder Bay', make: 'TS' },
    },
  }),
  mailNotice: told({
    class: 'certified mail',
    recipients: [{ hull: '86-0112', owner: '8d5f7c1e-6f0a-4c7b-9f14-2f4a8f3b9a10', proof: 'certified no. 7' }],
  }),
  returnMailing: told({ why: 'Moved, no forwarding address.' }),
  reportNotice: told({ what: 'initial', sentOn: '2026-04-01', proof: 'certified no. 9' }),
};
