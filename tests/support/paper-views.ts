import type { BuildRecordView, DefectView, MapMark, PartView, RepairView } from '@hull-record/paper';
import type { Skin } from '@hull-record/trade';
import { aLayer, aLayerToCome, aUse, someReadings, wetFilm } from './paper-layers.js';

/** A small open boat of 8.6 m as girths by station; invented. */
export const SKIN: Skin = {
  lengthMm: 8600,
  stations: [
    { xMm: 0, edgeGirthMm: 2150, chineGirthMm: 1280, waterlineGirthMm: 1450 },
    { xMm: 2000, edgeGirthMm: 2230, chineGirthMm: 1310, waterlineGirthMm: 1430 },
    { xMm: 4500, edgeGirthMm: 2250, chineGirthMm: 1240, waterlineGirthMm: 1150 },
    { xMm: 6500, edgeGirthMm: 1950, chineGirthMm: 980, waterlineGirthMm: 560 },
    { xMm: 7800, edgeGirthMm: 1250, chineGirthMm: 560 },
    { xMm: 8600, edgeGirthMm: 380 },
  ],
  transom: { halfWidthMm: 1150, heightMm: 900 },
};

export const aDefect = (changes: Partial<DefectView> = {}): DefectView => ({
  mark: 'D4',
  kind: 'air bubble (void)',
  place: 'port, 3.42 m from transom, 0.95 m girth',
  size: '22 × 14 mm',
  layer: 'layer 4, Bulk laminate, outer',
  state: 'open',
  ...{ disposition: null, note: null, verdicts: [], photos: [] },
  ...changes,
});

export const aRepair = (changes: Partial<RepairView> = {}): RepairView => ({
  mark: 'R-207',
  defects: ['D1'],
  when: 'Wed 25 Nov 2026 11:05',
  procedure: 'RP-04 version 3, scarfed patch from outside',
  geometry: 'taper 12:1, depth 1.4 mm, 48 × 40 mm at the surface',
  plies: '3 × mat 300 g/m²',
  used: [aUse({ lot: 'mix 1124-02', supplierLots: ['AR-60622-1 (100 %)'], amount: '0.24 kg' })],
  readings: [someReadings(2, { what: 'Barcol hardness on the patch' })],
  verdicts: [],
  doneBy: ['L-11'],
  outside: null,
  acceptance: 'Q-03, Wed 25 Nov 2026 14:20',
  ...changes,
});

const mark = (
  name: string,
  x: number,
  girth: number,
  state: MapMark['state'],
  side: 'port' | 'starboard',
): MapMark => ({
  mark: name,
  place: { surface: 'shell', side, fromTransomMm: x, girthMm: girth },
  state,
});

export const aHullPart = (changes: Partial<PartView> = {}): PartView => ({
  number: 'H-0147',
  kind: 'Hull molding',
  mold: 'M-86-2, pull 118',
  schedule: 'TS86-L, version 7',
  joined: null,
  readings: [],
  layers: [
    aLayer({
      position: '1',
      code: 'TS86-L/1',
      name: 'Gel coat, white 02',
      hatch: 'gel coat',
      plies: 'isophthalic gel coat, 0.50 mm wet',
      holdPoint: 'Hold point 1',
      readings: [wetFilm()],
    }),
    aLayer({
      position: '2',
      code: 'TS86-L/2',
      name: 'Skin coat',
      hatch: 'mat',
      plies: '2 × mat 300 g/m²',
      holdPoint: null,
      signature: null,
      corrected: ['amount of SG-8907 was 65.4 kg; digits were swapped (L-02, Mon 23 Nov 2026)'],
    }),
    aLayer({
      position: '3',
      code: 'TS86-L/3',
      name: 'Strake filling',
      hatch: 'putty',
      plies: 'polyester putty, 4 strakes',
      readings: [],
      holdPoint: null,
      signature: null,
    }),
    aLayer({ signature: null, note: 'Resin gun 3 stopped for 6 min at 08:31; wet edge kept.' }),
    aLayerToCome({
      position: '5',
      code: 'TS86-L/5',
      name: 'Core',
      hatch: 'core',
      plies: 'PVC 80 kg/m³, 15 mm, bonding putty',
    }),
    aLayerToCome({ position: '6', code: 'TS86-L/6', name: 'Bulk laminate, inner', hatch: 'woven' }),
    aLayerToCome({
      position: '7',
      code: 'TS86-L/7',
      name: 'Transom board',
      hatch: 'board',
      plies: 'composite board 50 mm, transom only',
    }),
    aLayerToCome({ position: '8', code: 'TS86-L/8', name: 'Inner coat', hatch: 'other', plies: 'flow coat, grey' }),
  ],
  defects: [
    aDefect({ mark: 'D1', size: '9 × 6 mm', state: 'repaired', disposition: 'repair R-207' }),
    aDefect({
      mark: 'D2',
      kind: 'pre-gel',
      size: '7 mm',
      layer: 'layer 1',
      state: 'concession',
      disposition: 'use as is, concession C-118',
    }),
    aDefect(),
  ],
  repairs: [aRepair()],
  nonconformities: [
    {
      rule: 'Lay-up window of layer 3, at most 24 h',
      detail: 'Layer 4 began 26 h after layer 3; judged a secondary bond.',
      when: 'Mon 23 Nov 2026 07:40',
      disposition: 'abraded and accepted, Q-03',
    },
    {
      rule: 'Climate of layer 4, mold 3 °C above dew point',
      detail: 'No dew point was recorded from 09:00 to 09:40.',
      when: 'Mon 23 Nov 2026 09:00',
      disposition: null,
    },
  ],
  map: {
    skin: SKIN,
    seenFrom: 'outside, from below',
    marks: [
      mark('D1', 2100, 700, 'repaired', 'port'),
      mark('D2', 5300, 1700, 'concession', 'starboard'),
      mark('D4', 3420, 950, 'open', 'port'),
      mark('D5', 3480, 990, 'open', 'port'),
      { mark: 'D6', place: { surface: 'transom', side: 'port', offsetMm: 420, heightMm: 500 }, state: 'other' },
    ],
  },
  ...changes,
});

export const aDeckPart = (): PartView => ({
  ...{ number: 'D-0151', kind: 'Deck molding', mold: 'M-86-D1, pull 97' },
  schedule: 'TS86-D, version 4',
  joined: 'Thu 26 Nov 2026 13:00',
  readings: [],
  layers: [aLayerToCome({ position: '1', name: 'Gel coat, grey 11', hatch: 'gel coat' })],
  defects: [],
  repairs: [],
  nonconformities: [],
});

/** The usual hull, in work: four layers made, four to come, one defect open. */
export const aView = (changes: Partial<BuildRecordView> = {}): BuildRecordView => ({
  plantName: 'Tarrow Sound Boats',
  hullNumber: 'TS86-147',
  hin: {
    text: 'TRZ86147K627',
    decoded: ['manufacturer TRZ, serial 86147', 'certified November 2026, model year 2027'],
    placement: 'Primary: starboard.',
  },
  ...{ model: 'TS 86, open, 8.6 m', cut: 'internal: people by badge', equipment: [] },
  stateAsOf: { instant: '2026-11-26T14:30:00Z', text: 'Thu 26 Nov 2026 09:30 (UTC−05:00)' },
  complete: false,
  completeness: 'Not complete: 5 layers are to be made, 1 defect is open, and the hull is not released.',
  lifeFacts: [
    { when: 'Wed 18 Nov 2026 07:10', what: 'part H-0147 started', whereBy: 'bay 2, L-02' },
    { when: 'Thu 26 Nov 2026 08:00', what: 'HIN assigned', whereBy: 'office, Q-03' },
  ],
  parts: [aHullPart(), aDeckPart()],
  joints: [
    {
      what: 'Deck to hull',
      parts: 'D-0151 to H-0147',
      when: 'Thu 26 Nov 2026 13:00',
      doneBy: ['L-07', 'L-11'],
      enteredBy: 'L-02',
      used: [
        aUse({
          lot: 'BP-0331',
          supplierLots: ['HC-7741 (100 %)'],
          material: 'bonding paste',
          amount: '11.2 kg',
          basis: 'as scheduled',
          corrected: true,
        }),
      ],
      readings: [],
      note: null,
    },
  ],
  nonconformities: [
    {
      rule: 'expired lot',
      detail: 'Lot SG-8907 expired on 2026-11-20 and was used on 2026-11-23.',
      when: 'Mon 23 Nov 2026 07:20',
      disposition: 'use as is, concession C-121',
    },
  ],
  corrections: [
    {
      when: 'Mon 23 Nov 2026 15:02',
      what: 'amount of SG-8907 in layer 2',
      before: '65.4 kg',
      after: '56.4 kg',
      reason: 'digits were swapped',
      by: 'L-02',
    },
  ],
  cautions: [
    'Laminate and gel coat dust irritates skin, eyes and lungs: use extraction and a fitted respirator.',
    'A repair to structure follows an approved procedure; data sheets and local codes come first.',
  ],
  sources: ['33 CFR 181, hull identification numbers', 'ASTM D4414, wet film thickness by notch gages'],
  ...changes,
});

/** A hull of which nothing is made: no parts' layers, no facts. */
export const anEmptyView = (): BuildRecordView =>
  aView({
    hin: null,
    completeness: 'Not complete: no layer is made and the hull is not released.',
    lifeFacts: [],
    parts: [
      aHullPart({
        layers: [aLayerToCome()],
        defects: [],
        repairs: [],
        nonconformities: [],
        map: { skin: SKIN, seenFrom: 'outside, from below', marks: [] },
      }),
    ],
    joints: [],
    nonconformities: [],
    corrections: [],
    cautions: [],
    sources: [],
  });
