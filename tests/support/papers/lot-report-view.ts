import type { HoldingHullView, LotReportView } from '@hull-record/paper';
import { someReadings } from '../paper-layers.js';
import { PAPER } from './paper.js';

export const aHoldingHull = (changes: Partial<HoldingHullView> = {}): HoldingHullView => ({
  ...{ hull: 'TS86-147', hin: 'TRZ86147K627', kg: '48.2 kg', shareOfHull: '31.4 %', largestShare: '62 %' },
  ...{ basis: 'apportioned', now: 'Shipped, Northlight Marine, since 5 Jan 2027 10:00 UTC−5' },
  places: [
    {
      ...{ part: 'H-0147', place: 'layer TS86-L/2', role: 'resin', kg: '20.1 kg', share: '62 %' },
      ...{ basis: 'metered', when: '23 Nov 2026 07:10 to 08:40 UTC−5' },
    },
    {
      ...{ part: 'H-0147', place: 'repair R1', role: 'resin', kg: '0.24 kg', share: '100 %' },
      ...{ basis: 'apportioned', when: '25 Nov 2026 11:05 UTC−5' },
    },
  ],
  ...changes,
});

/** A received lot of resin that was tested again, held a while, and went into hulls, buckets and a tank; invented. */
export const aLotReport = (changes: Partial<LotReportView> = {}): LotReportView => ({
  ...PAPER,
  lot: 'AR-60622',
  state: 'Released: it may be used until its last day.',
  released: true,
  identity: [
    ['Origin', 'received'],
    ['Tank', null],
    ['Material', 'Vinyl ester resin (RES-VE)'],
    ['Supplier', 'Aldermoor Resins'],
    ['Supplier’s lot', 'TG-2611-04'],
    ['Amount', '1000 kg, weighed'],
    ['Last day of use', '2027-02-01'],
  ],
  certificate: [['viscosity', '420 mPa s']],
  certified: [['Catalyst, percent of resin by mass', '1 to 2 %']],
  history: [
    { when: '20 Nov 2026 08:00 UTC−5', what: 'Held', why: 'Gel time was short.', by: 'QUA-1' },
    { when: '21 Nov 2026 08:00 UTC−5', what: 'Released', why: 'Read again, inside.', by: 'QUA-1' },
  ],
  containers: [
    {
      ...{ label: 'AR-60622/1', kind: 'drum', amount: '220 kg', left: '12.5 kg' },
      ...{ place: 'Store 2', state: 'opened' },
    },
  ],
  madeOf: [],
  assumes: null,
  readings: [someReadings(2, { what: 'Gel time' })],
  verdicts: [],
  nonconformities: [{ rule: 'Expired lot', detail: 'Used after its last day.', when: '2 Feb 2027', disposition: null }],
  hulls: [aHoldingHull(), aHoldingHull({ hull: 'part D-0160, in no hull', hin: null, kg: 'trace, under 1e-9' })],
  possibly: {
    why: 'They hold material that nobody could name when it was used (U-1).',
    hulls: [aHoldingHull({ hull: 'TS86-150', hin: null, now: 'in the plant' })],
  },
  lotsMade: [
    { lot: 'mix 1124-02', origin: 'bucket', amount: '9.8 kg', basis: 'weighed', when: '24 Nov 2026 07:30 UTC−5' },
  ],
  balance: [
    ['Received or made', '1000'],
    ['Left by the book', '−12.5'],
  ],
  balanced: 'Overdrawn: count it. The weakest basis of any line: apportioned.',
  ...changes,
});
