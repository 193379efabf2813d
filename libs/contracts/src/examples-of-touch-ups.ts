import { taken, told } from './example-parts.js';

/** One request for each route about touch-ups, re-inspections and scrapped parts. */
export const EXAMPLES_OF_TOUCH_UPS = {
  recordTouchUp: told({
    spots: [{ zone: 'port topside', kind: 'pit', count: 6, largestMm: 3 }],
    doneBy: ['PAT-01'],
    used: [taken({ lot: 'GEL-118' }, '0.2', 'kg')],
  }),
  judgeTouchUp: told({ enteredBy: 'INS-01', accepted: true }),
  setTouchUpLimit: told({
    ...{ enteredBy: 'QUA-01', spotsInAZone: 8, spotsOnAPart: 30, largestMm: 12 },
    source: 'Finish procedure FP-3, issue 2',
  }),
  inspectRepairAgain: told({ enteredBy: 'INS-01', passed: false, note: 'A halo shows around the patch.' }),
  answerAsk: told({ lot: 'B-0514-3', note: 'The bucket was stirred for a few seconds only.' }),
  scrapPart: told({ enteredBy: 'QUA-01', reason: 'Prerelease over half of the deck.' }),
};
