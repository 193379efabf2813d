import type { LayerView, ReadingsView, UsedView, Verdict, VerdictView } from '@hull-record/paper';

/** Layers, uses and readings for papers; every lot, badge and number is invented. */
export const aUse = (changes: Partial<UsedView> = {}): UsedView => ({
  lot: 'SG-8907',
  supplierLots: ['TG-2611-04 (81 %)', 'TG-2610-17 (19 %)'],
  material: 'stitched glass 700 g/m²',
  amount: '56.4 kg',
  basis: 'weighed',
  corrected: false,
  ...changes,
});

export const someReadings = (count: number, changes: Partial<ReadingsView> = {}): ReadingsView => ({
  what: 'Barcol hardness, 16 h after lay-up',
  limits: 'each spot ≥ 36, that is 90 % of 40',
  rule: 'ASTM D2583 readings, limit from the resin data sheet',
  equipment: 'gauge HB-03, checked Mon 23 Nov 2026',
  plot: {
    ...{ unit: 'Barcol', min: 36 },
    points: Array.from({ length: count }, (_, i) => ({ value: 38 + (i % 8), verdict: 'inside' as const })),
  },
  rows: Array.from({ length: count }, (_, i) => ({
    spot: String(i + 1),
    value: `${38 + (i % 8)}`,
    place: `port, ${(0.4 + (i % 20) * 0.4).toFixed(2)} m from transom, 0.62 m girth`,
    verdict: 'inside' as const,
    byWhen: 'L-07, Tue 24 Nov 2026 08:10',
  })),
  ...changes,
});

export const aVerdict = (changes: Partial<VerdictView> = {}): VerdictView => ({
  topic: 'lay-up window',
  verdict: 'inside',
  detail: 'Begun 95 min after Skin coat; window 45 to 1440 min after Skin coat.',
  rule: 'Begun between the earliest and the latest time after the layer before ended; later is a secondary bond.',
  source: 'Window of the laminate schedule.',
  corrected: false,
  ...changes,
});

export const aLayer = (changes: Partial<LayerView> = {}): LayerView => ({
  position: '4',
  code: 'TS86-L/4',
  name: 'Bulk laminate, outer',
  hatch: 'woven',
  plies: '2 × stitched 700 g/m² + mat 300 g/m²',
  state: 'made',
  when: 'Mon 23 Nov 2026 07:40 to 10:55',
  doneBy: ['L-07', 'L-11'],
  enteredBy: 'L-02',
  climate: 'air 21.4 °C, 58 % relative humidity; mold 5.1 °C above dew point',
  note: null,
  used: [
    aUse(),
    aUse({
      lot: 'T2 fill 56',
      supplierLots: ['AR-60622-1 (81 %)', 'AR-60604-2 (15 %)', '9 earlier lots in the heel (4 %)'],
      material: 'vinyl ester VE-411',
      amount: '67.8 kg',
      basis: 'apportioned',
    }),
  ],
  readings: [someReadings(6)],
  verdicts: [aVerdict()],
  signature: 'Q-03, Tue 24 Nov 2026 09:05',
  holdPoint: 'Hold point 3, before core',
  corrected: [],
  ...changes,
});

export const aLayerToCome = (changes: Partial<LayerView> = {}): LayerView =>
  aLayer({
    state: 'to come',
    when: null,
    doneBy: [],
    enteredBy: null,
    climate: null,
    used: [],
    readings: [],
    signature: null,
    holdPoint: null,
    ...changes,
  });

/** One reading for each verdict there is. */
export const wetFilm = (): ReadingsView => ({
  what: 'Wet film thickness',
  limits: '16 to 22 mil (406 to 559 µm)',
  rule: 'ASTM D4414, limits from schedule TS86-L version 7',
  equipment: 'comb gauge CG-12',
  rows: (['inside', 'outside', 'cannot be judged', 'no limit'] as const).map((verdict: Verdict, i) => ({
    spot: String(i + 1),
    value: ['18 mil', '14 mil', 'no tooth read', '19 mil'][i] ?? '',
    place: `starboard, ${i + 1}.20 m from transom`,
    verdict,
    byWhen: 'L-07, Wed 18 Nov 2026 10:12',
  })),
});
