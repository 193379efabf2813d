import type { ClassView, GroupView, InquiryView, RowView, TriangleView } from '@hull-record/paper';
import { PAPER } from './paper.js';

export const aRow = (changes: Partial<RowView> = {}): RowView => ({
  ...{ named: 'VE-118', family: 'resin in hull molding, Skin coat', standing: 'strong' },
  ...{ observed: '6 of 7 hulls', expected: '1.8 expected, 4.2 hull-years' },
  ...{
    ratio: { ratio: 3.3, lower: 1.2, upper: 7.2 },
    ratioText: '3.3',
    limits: '1.2 to 7.2',
    odds: 'odds at least 12.1',
  },
  ...{ p: 'p 0.00007', q: 'q 0.00042' },
  crude: { exposed: '6 / 1', others: '0 / 16', p: '0.000069', differs: null },
  ...changes,
});

export const aClass = (changes: Partial<ClassView> = {}): ClassView => ({
  ...aRow(),
  members: [{ lot: 'VE-118', supplierLot: 'AR-60622-1', material: 'Vinyl ester resin', family: 'resin, Skin coat' }],
  ...{ together: null, nearly: null, adjusted: 'adjusted p 0.002', posterior: '0.98 to 0.999' },
  ...{ dose: 'z 1.9, p 0.03', shares: '3 % to 100 %, median 62 %' },
  atShares: [
    { from: '1 %', says: '6 of 8' },
    { from: '20 %', says: '5 of 6' },
  ],
  ...changes,
});

export const aGroup = (changes: Partial<GroupView> = {}): GroupView => ({
  group: 'all hulls at risk',
  sentence: '6 of 23 hulls have a claim; 2.1 more are expected.',
  says: [['90 % interval', '0 to 5']],
  curve: [
    { days: 120, without: 0.9, lower: 0.7, upper: 0.97 },
    { days: 150, without: 0.74, lower: null, upper: null },
  ],
  mean: [{ days: 120, mean: 0.1, lower: 0, upper: 0.22 }],
  ages: [{ age: '6 months', atRisk: '17', without: '74 %', mean: '0.26' }],
  ...changes,
});

/** Months of building from 2026-01 on, so many months watched each; a claim in every third cell. */
export const aTriangle = (rows: number, months: number): TriangleView => ({
  since: 'left the place of manufacture',
  rows: Array.from({ length: rows }, (_, i) => ({
    built: `${2026 + Math.floor(i / 12)}-${String((i % 12) + 1).padStart(2, '0')}`,
    cells: Array.from({ length: months }, (_each, at) => ({ claims: at % 3 === 0 ? 1 : 0, atRisk: 5 })),
  })),
});

/** A look at blisters of the spring, of which one lot stands out; invented. */
export const anInquiry = (changes: Partial<InquiryView> = {}): InquiryView => ({
  ...PAPER,
  ...{ case: 'C-1', title: 'Blisters of the spring', counsel: null, look: 'look 2 of 3 that were taken' },
  verdict: 'Strong: claims are associated with VE-118.',
  exploratory: { is: true, says: 'Exploratory: frozen after claims that it is tested by.' },
  sentences: ['6 of 23 hulls at risk have a first claim that counts.'],
  triangle: aTriangle(3, 9),
  hulls: [['At risk', '23']],
  settings: [['Time origin', 'left the place of manufacture']],
  tests: '9 classes were tested.',
  classes: [aClass()],
  untestable: { says: '1 class cannot be judged.', rows: [{ named: 'MAT-A', hulls: '23', observed: '6', p: '1' }] },
  cover: {
    steps: [{ named: 'VE-118', explains: '6', runnerUp: 'MAT-B' }],
    unexplained: 'Every claim goes with a class.',
  },
  apart: [aRow({ named: 'MO-1', family: 'mold', standing: 'none' })],
  places: {
    ...{
      says: 'Places of 6 hulls are known.',
      cannotSay: 'Where nobody looked is not known.',
      cluster: 'Scan: p 0.01.',
    },
    spots: [{ x: 0.45, y: 0.3 }],
    zones: [
      {
        ...{ name: 'midship, inner half, port', hulls: 6, perArea: '5.0', inCluster: true },
        ...{ from: { x: 0.3, y: 0 }, to: { x: 0.7, y: 0.5 } },
      },
    ],
  },
  ahead: {
    says: [['Warranty', 'no claim counts beyond 1826 days']],
    groups: [aGroup()],
    months: [{ month: '2026-10', expected: [0.2], limits: [{ lower: 0, upper: 1 }] }],
    cannotSay: 'It goes on as it went.',
  },
  next: ['Test retained samples of VE-118, by licensed practice.'],
  cannotSay: ['That a lot is associated with claims does not say that it led to them.'],
  methods: [{ what: 'Stratified test', how: 'Exact log-rank', source: 'Mantel 1966' }],
  again: [['Answer SHA-256', 'a'.repeat(64)]],
  ...changes,
});
