import type { EquipmentRecallView, RecalledView } from '@hull-record/paper';
import { PAPER } from './paper.js';

export const aRecalled = (changes: Partial<RecalledView> = {}): RecalledView => ({
  ...{ part: 'H-0147', hull: 'TS86-147', place: 'layer L1, spot 2', what: 'Wet film', value: '18 mil (457 µm)' },
  ...{ when: '23 Nov 2026 07:40 UTC−5', by: 'L-07', disposition: null },
  ...changes,
});

/** A gauge that was good, then bad, and is not good again; invented. */
export const aRecall = (changes: Partial<EquipmentRecallView> = {}): EquipmentRecallView => ({
  ...PAPER,
  ...{ equipment: 'MG-1', kind: 'gauge', description: 'Notch gauge of steel' },
  checks: [
    {
      ...{ when: '20 Nov 2026 07:00 UTC−5', what: 'Reference film', found: '20 mil; limits 19 to 21 mil', good: true },
      ...{ by: 'Q-03', note: 'certificate C-88', disposition: null },
    },
    {
      ...{ when: '24 Nov 2026 07:00 UTC−5', what: 'Reference film', found: '23 mil; limits 19 to 21 mil', good: false },
      ...{ by: 'Q-03', note: 'worn notch', disposition: null },
    },
  ],
  windows: [
    {
      what: 'reference film',
      opens: 'after the last good check, 20 Nov 2026 07:00 UTC−5',
      foundBad: '24 Nov 2026 07:00 UTC−5, by Q-03',
      closes: 'not yet: it was not found good since',
      readings: [aRecalled(), aRecalled({ place: 'layer L1, spot 3', disposition: 'use as is under concession C-9' })],
      drawn: [],
    },
  ],
  source: 'ISO 9001:2015 7.1.5.2',
  ...changes,
});
