import { EXAMPLES_OF_ACCESS } from './examples-of-access.js';
import { EXAMPLES_OF_GUNS } from './examples-of-guns.js';
import { EXAMPLES_OF_HOLDS } from './examples-of-holds.js';
import { EXAMPLES_OF_NOTICES } from './examples-of-notices.js';
import { EXAMPLES_OF_STORE } from './examples-of-store.js';
import { EXAMPLES_OF_TOUCH_UPS } from './examples-of-touch-ups.js';
import { EXAMPLES_OF_CHECKS } from './examples-of-checks.js';
import { EXAMPLES_OF_CHARTS } from './examples-of-charts.js';
import { EXAMPLES_OF_CASES } from './examples-of-cases.js';
import { EXAMPLES_OF_CLAIMS } from './examples-of-claims.js';
import { EXAMPLES_OF_CERTIFICATES } from './examples-of-certificates.js';
import { EXAMPLES_OF_OWNERS } from './examples-of-owners.js';
import { EXAMPLES_OF_LABELS } from './examples-of-labels.js';
import { EXAMPLES_OF_RULES } from './examples-of-rules.js';
import { EXAMPLES_OF_MOLDS } from './examples-of-molds.js';
import { EXAMPLES_OF_MAKING } from './examples-of-making.js';
import { atTheDesk, taken, told } from './example-parts.js';
import type { routes } from './routes.js';

const SKIN = {
  lengthMm: 8_600,
  stations: [
    { xMm: 0, edgeGirthMm: 1_900, chineGirthMm: 1_150, waterlineGirthMm: 1_250 },
    { xMm: 8_600, edgeGirthMm: 900, chineGirthMm: 500, waterlineGirthMm: 600 },
  ],
  transom: { halfWidthMm: 1_250, heightMm: 900 },
};

const LAYERS = [
  {
    code: 'L1',
    name: 'Gel coat',
    materials: [{ material: 'GEL-W', target: { quantity: '18', unit: 'kg' } }],
    readings: [{ what: 'wet film', spots: 12, limits: { min: 16, max: 20, unit: 'mil' }, source: 'own procedure' }],
    climate: { airTemperature: { min: 18, max: 28, unit: 'C' } },
    layUpWindow: { earliestMinutes: 45, latestMinutes: 1_440 },
    holdPoint: 'Gel coat, before the skin coat',
  },
  {
    code: 'L2',
    name: 'Skin coat',
    plies: ['2 x chopped strand mat 450 g/m2'],
    materials: [{ material: 'RES-VE' }, { material: 'MAT-450' }],
    predecessors: ['L1'],
  },
];

/** One request for each route that takes a body, invented throughout; the API page shows them. */
export const EXAMPLES: Readonly<Partial<Record<keyof typeof routes, object>>> = {
  ...EXAMPLES_OF_ACCESS,
  ...EXAMPLES_OF_GUNS,
  ...EXAMPLES_OF_STORE,
  ...EXAMPLES_OF_HOLDS,
  ...EXAMPLES_OF_NOTICES,
  ...EXAMPLES_OF_MOLDS,
  ...EXAMPLES_OF_RULES,
  ...EXAMPLES_OF_LABELS,
  ...EXAMPLES_OF_OWNERS,
  ...EXAMPLES_OF_CERTIFICATES,
  ...EXAMPLES_OF_CHECKS,
  ...EXAMPLES_OF_CLAIMS,
  ...EXAMPLES_OF_CASES,
  ...EXAMPLES_OF_CHARTS,
  ...EXAMPLES_OF_TOUCH_UPS,
  identifyLot: told({ enteredBy: 'QUA-01', as: 'VE-2231', reason: 'The drum was found with its label inside.' }),
  registerPerson: atTheDesk({ badge: 'LAM-07', name: 'A. Example', roles: ['laminator'] }),
  registerDevice: atTheDesk({ code: 'TAB-3', description: 'Tablet at mold 3', ratedForClassifiedArea: false }),
  registerEquipment: atTheDesk({ code: 'MG-2', kind: 'gauge', description: 'Wet-film gauge, 2 to 40 mil' }),
  registerDealer: atTheDesk({ code: 'NLM', name: 'Northlight Marine', place: 'Calder Bay' }),
  registerMaterial: atTheDesk({
    ...{ code: 'RES-VE', name: 'Vinyl ester resin, promoted', role: 'resin', maker: 'Aldermoor Resins' },
    ...{ shelfLifeDays: 90, densityKgPerL: 1.05, lossAllowance: 0.03 },
    makerData: { catalystWindow: { min: 1.2, max: 2.4, unit: '%' }, dataSheet: 'Vinyl ester resin, issue 4' },
  }),
  registerTank: atTheDesk({ code: 'T1', material: 'RES-VE', capacityKg: 4_000 }),
  fillTank: told({
    ...{ code: 'T1-014', heel: { quantity: '410', unit: 'kg', basis: 'metered' } },
    inputs: [taken({ lot: 'VE-2231' }, '1950', 'kg')],
  }),
  receiveLot: told({
    ...{ code: 'VE-2231', material: 'RES-VE', supplier: 'Aldermoor Resins', supplierLot: 'A-77120' },
    ...{ amount: { quantity: '430', unit: 'lb', basis: 'weighed' }, madeOn: '2026-04-20' },
    ...{ certificate: { 'viscosity, cP': 450, 'gel time, min': 22 }, state: 'quarantined' },
  }),
  changeLotState: told({ state: 'released', reason: 'Certificate checked, gel test passed.' }),
  makeMix: told({
    ...{ code: 'B-0514-3', inputs: [taken({ tank: 'T1' }, '20', 'kg'), taken({ lot: 'CAT-118' }, '0.36', 'kg')] },
  }),
  cutKit: told({ code: 'K-86-12', inputs: [taken({ lot: 'MAT-0907' }, '42.5', 'm2')] }),
  registerModel: atTheDesk({ code: 'TS86', name: 'TS 86, open, 8.6 m', skins: { 'hull molding': SKIN } }),
  publishSchedule: atTheDesk({ partKind: 'hull molding', version: 1, layers: LAYERS }),
  registerMold: atTheDesk({ code: 'M-86-1', model: 'TS86', partKind: 'hull molding' }),
  startHull: told({ number: '86-0112', model: 'TS86', mold: 'M-86-1' }),
  assignHin: told({ hin: 'TRZ08612E626' }),
  recordLifeFact: told({ what: 'at dealer', dealer: 'NLM' }),
  releaseHull: told({}),
  joinPart: told({
    ...{ part: '86-0112-D', doneBy: ['LAM-07', 'LAM-02'] },
    used: [taken({ lot: 'PASTE-31' }, '9.5', 'kg')],
  }),
  startPart: told({ number: '86-0112-D', kind: 'deck', model: 'TS86', mold: 'M-86-D' }),
  sharedLots: { hulls: ['86-0112', '86-0115', 'TRZ08619F626'], minShare: 0.01 },
  ...EXAMPLES_OF_MAKING,
};
