import type { HoldPointsView, HoldPointView, PaperPart } from '@hull-record/paper';
import { someReadings } from '../paper-layers.js';
import { aDefect } from '../paper-views.js';
import { PAPER } from './paper.js';

/** The part that papers of the shop are about; invented. */
export const PART: PaperPart = {
  ...{ number: 'H-0147', kind: 'Hull molding', hull: 'TS86-147', hin: 'TRZ86147K627', model: 'TS 86, open, 8.6 m' },
  ...{ mold: 'M-86-2', schedule: 'TS86 hull molding, version 7', scrapped: null },
};

export const aHoldPoint = (changes: Partial<HoldPointView> = {}): HoldPointView => ({
  ...{ name: 'Hold point 1', layer: 'layer 1, Gel coat (L1)' },
  made: {
    ...{ when: '23 Nov 2026 07:10 to 08:40 UTC−5', doneBy: ['L-07', 'L-11'], enteredBy: 'L-02' },
    climate: 'air 21.4 °C; limits of the schedule: air 18 to 28 °C',
  },
  readings: [someReadings(3)],
  missing: ['Wet film: 3 of 6 spots read.'],
  verdicts: [
    {
      ...{ topic: 'lay-up window', verdict: 'outside', detail: 'Layer 2 began 26 h after layer 1.' },
      ...{ rule: 'at most 24 h', source: 'schedule version 7', corrected: false },
    },
  ],
  nonconformities: [
    { rule: 'Climate', detail: 'No dew point was recorded.', when: '23 Nov 2026 09:00 UTC−5', disposition: null },
  ],
  defects: [aDefect()],
  signature: null,
  ...changes,
});

/** A sheet with a hold point to be signed, one that is signed, and one whose layer is to come. */
export const aHoldPointSheet = (changes: Partial<HoldPointsView> = {}): HoldPointsView => ({
  ...PAPER,
  part: PART,
  holdPoints: [
    aHoldPoint(),
    aHoldPoint({
      ...{ name: 'Hold point 2', layer: 'layer 4, Bulk laminate (L4)', missing: [], verdicts: [], nonconformities: [] },
      ...{ defects: [], signature: 'signed by Q-03, 24 Nov 2026 14:20 UTC−5; identity stated, not proved' },
    }),
    aHoldPoint({
      ...{ name: 'Hold point 3', layer: 'layer 8, Inner coat (L8)', made: null, readings: [], missing: [] },
      ...{ verdicts: [], nonconformities: [], defects: [] },
    }),
  ],
  nonconformities: [],
  defects: [aDefect({ mark: 'D9', layer: 'layer not known' })],
  ...changes,
});
