import { kg, type Shop } from './shop.js';
import { SKINS } from './shop-stock.js';
import { NOTE, plain, received, STATION, used, type MakeSample } from './write-sample.js';
import { ACCESS } from './write-samples-access.js';
import { GUNS } from './write-samples-guns.js';
import { HOLDS } from './write-samples-holds.js';
import { NOTICES } from './write-samples-notices.js';
import { STORE } from './write-samples-store.js';
import { TOUCH_UPS } from './write-samples-touch-ups.js';
import { CHECKS } from './write-samples-checks.js';
import { CASES } from './write-samples-cases.js';
import { CLAIMS } from './write-samples-claims.js';
import { CERTIFICATES } from './write-samples-certificates.js';
import { OWNERS } from './write-samples-owners.js';
import { MOLDS } from './write-samples-molds.js';
import { CHARTS } from './write-samples-charts.js';
import { RULES } from './write-samples-rules.js';
import { MAKING } from './write-samples-making.js';

const wholeHull = async (shop: Shop, n: string): Promise<void> => {
  for (const [code, material] of [
    ['gel', 'GEL-W'],
    ['resin', 'RES-VE'],
    ['glass', 'MAT-450'],
  ] as const)
    await shop.receive(`${n}-${code}`, material);
  await shop.wholeHull(n, { gel: `${n}-gel`, resin: { lot: `${n}-resin` }, glass: `${n}-glass` });
};

/** A valid request for each write of the service, by the name of its route. */
export const SAMPLES: Readonly<Record<string, MakeSample>> = {
  identifyLot: async (shop, n) => {
    await shop.startHull(n);
    const unidentified = { role: 'resin', looks: 'amber, in a pail without a label' };
    await shop.layer(n, 'L2', [{ unidentified, amount: kg(4) }]);
    const { layers } = await shop.read<{ layers: { record: { used: { lot: string }[] } | null }[] }>(
      `/api/parts/${n}-H`,
    );
    const lot = layers.flatMap(({ record }) => record?.used ?? [])[0]?.lot;
    return {
      path: `/api/lots/${lot}/identifications`,
      fields: { as: await received(shop, n), reason: 'the label was found' },
      other: { reason: 'another' },
    };
  },
  ...ACCESS,
  registerPerson: plain('/api/people', (n) => ({ badge: n, name: 'A. Person', roles: ['laminator', 'patcher'] }), {
    roles: ['quality'],
  }),
  registerDevice: plain('/api/devices', (n) => ({ code: n, description: 'Tablet', ratedForClassifiedArea: false }), {
    description: 'Another',
  }),
  registerEquipment: plain('/api/equipment', (n) => ({ code: n, kind: 'scale', description: 'Scale' }), {
    kind: 'oven',
  }),
  registerDealer: plain('/api/dealers', (n) => ({ code: n, name: 'Saltmere Boats', place: 'Saltmere' }), {
    name: 'Another',
  }),
  registerMaterial: plain(
    '/api/materials',
    (n) => ({
      ...{ code: n, name: 'Gel coat, grey', role: 'gel coat', maker: 'Aldermoor', shelfLifeDays: 90 },
      makerData: { catalystWindow: { min: 1.2, max: 2.5, unit: '%' }, minimumBarcol: 35 },
      ...{ densityKgPerL: 1.28, lossAllowance: 0.05 },
    }),
    { name: 'Another' },
  ),
  registerTank: plain('/api/tanks', (n) => ({ code: n, material: 'RES-VE', capacityKg: 900.5 }), { capacityKg: 901 }),
  fillTank: async (shop, n) => {
    const lot = await received(shop, n);
    await shop.act('/api/tanks', { code: n, material: 'RES-VE', capacityKg: 900 });
    await shop.act(`/api/tanks/${n}/fills`, { code: `${n}-1`, heel: null, inputs: [{ lot, amount: kg('100.10') }] });
    const heel = { quantity: '20', unit: 'lb', basis: 'metered' };
    const fields = { code: `${n}-2`, heel, inputs: [{ lot, amount: kg('0.3') }] };
    return { path: `/api/tanks/${n}/fills`, fields, other: { heel: null } };
  },
  receiveLot: plain(
    '/api/lots',
    (n) => ({
      ...{ code: n, material: 'GEL-W', supplier: 'Aldermoor Resins', supplierLot: `S-${n}`, madeOn: '2026-01-02' },
      amount: { quantity: '018.50', unit: 'L', basis: 'weighed' },
      certificate: { viscosity: 1.5, colour: 'white' },
    }),
    { supplierLot: 'another' },
  ),
  changeLotState: async (shop, n) => ({
    path: `/api/lots/${await received(shop, n)}/states`,
    fields: { state: 'held', reason: 'certificate is missing' },
    other: { state: 'rejected' },
  }),
  makeMix: async (shop, n) => {
    const lot = await received(shop, n);
    const fields = {
      code: n,
      inputs: [
        { lot, amount: kg('0.1') },
        { lot, amount: kg('0.2') },
      ],
    };
    return { path: '/api/mixes', fields, other: { code: `${n}-other` } };
  },
  cutKit: async (shop, n) => {
    await shop.receive(`${n}-roll`, 'MAT-450');
    const inputs = [{ lot: `${n}-roll`, amount: { quantity: 12.5, unit: 'm2', basis: 'as scheduled' } }];
    return { path: '/api/kits', fields: { code: n, inputs }, other: { code: `${n}-other` } };
  },
  registerModel: plain('/api/models', (n) => ({ code: n, name: 'TS 99', skins: SKINS }), { name: 'Another' }),
  publishSchedule: async (shop, n) => {
    await shop.act('/api/models', { code: n, name: 'TS 99', skins: SKINS });
    const readings = [{ what: 'thickness', spots: 2, limits: { min: 0.5, unit: 'mm' } }];
    const climate = { relativeHumidity: { max: 80, unit: '%' } };
    const layUpWindow = { earliestMinutes: 45, latestMinutes: 1_440 };
    const first = { code: 'A', name: 'Skin', materials: [{ material: 'RES-VE' }], readings, climate, layUpWindow };
    const layers = [first, { code: 'B', name: 'Bulk', materials: [{ material: 'RES-PE' }], predecessors: ['A'] }];
    return {
      path: `/api/models/${n}/schedules`,
      fields: { partKind: 'deck', version: 1, layers },
      other: { version: 2 },
    };
  },
  registerMold: plain('/api/molds', (n) => ({ code: n, model: 'TS86', partKind: 'deck' }), { partKind: 'hatch' }),
  startHull: plain('/api/hulls', (n) => ({ number: n, model: 'TS86', mold: 'M-86-1' }), { partNumber: 'another' }),
  assignHin: async (shop, n) => {
    await shop.startHull(n);
    const serial = n.padStart(5, '0');
    return {
      path: `/api/hulls/${n}/hins`,
      fields: { hin: `TRZ${serial}A626` },
      other: { hin: `TRZ${serial}B626` },
    };
  },
  recordLifeFact: async (shop, n) => {
    await shop.startHull(n);
    return { path: `/api/hulls/${n}/life`, fields: { what: 'at dealer', dealer: 'NLM' }, other: NOTE };
  },
  releaseHull: async (shop, n) => {
    await wholeHull(shop, n);
    return { path: `/api/hulls/${n}/releases`, fields: {}, other: STATION };
  },
  joinPart: async (shop, n) => {
    await shop.startHull(n);
    await shop.startDeck(`${n}-D`);
    const fields = { part: `${n}-D`, doneBy: ['LAM-2', 'LAM-1'], ...(await used(shop, n)) };
    return { path: `/api/hulls/${n}/joints`, fields, other: { doneBy: ['LAM-1'] } };
  },
  startPart: plain('/api/parts', (n) => ({ number: n, kind: 'deck', model: 'TS86', mold: 'M-86-D' }), {
    scheduleVersion: 1,
  }),
  ...GUNS,
  ...STORE,
  ...HOLDS,
  ...NOTICES,
  ...MOLDS,
  ...RULES,
  ...CHARTS,
  ...CASES,
  ...CLAIMS,
  ...OWNERS,
  ...CERTIFICATES,
  ...CHECKS,
  ...TOUCH_UPS,
  ...MAKING,
};
