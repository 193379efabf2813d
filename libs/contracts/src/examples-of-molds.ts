import { taken, told } from './example-parts.js';

/** One request for each route about molds and layers of several parts. */
export const EXAMPLES_OF_MOLDS = {
  careForMold: told({
    ...{ what: 'waxed', doneBy: ['LAM-07'], duePulls: 4 },
    used: [taken({ lot: 'WAX-12' }, '0.2', 'kg')],
  }),
  moveToSchedule: told({
    ...{ enteredBy: 'QUA-01', version: 2, fromLayer: 'L3' },
    reason: 'Skin coat is made; the core is changed from here on.',
  }),
  recordLayers: told({
    parts: [
      { part: 'HATCH-21', weight: 1 },
      { part: 'HATCH-22', weight: 1 },
    ],
    ...{ layer: 'D1', startedAt: '2026-05-14T08:05:00-04:00', endedAt: '2026-05-14T08:40:00-04:00' },
    doneBy: ['LAM-07'],
    used: [taken({ lot: 'B-0514-3' }, '6', 'kg')],
  }),
};
