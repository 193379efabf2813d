import sharp from 'sharp';
import { PORT_SIDE, type Shop } from './shop.js';
import { NOTE, STATION, used, type MakeSample } from './write-sample.js';

/** A layer of a new hull, made. */
const layerOf = async (shop: Shop, n: string, layer = 'L2'): Promise<string> => {
  await shop.startHull(n);
  return shop.layer(n, layer, []);
};

const defectOf = async (shop: Shop, n: string): Promise<string> => {
  await shop.startHull(n);
  return shop.defect(`${n}-H`);
};

const repairOf = async (shop: Shop, n: string): Promise<string> => shop.repair(`${n}-H`, [await defectOf(shop, n)]);

const jointOf = async (shop: Shop, n: string): Promise<string> => {
  await shop.startHull(n);
  await shop.startDeck(`${n}-D`);
  return shop.join(n, `${n}-D`);
};

const film = { what: 'wet film', unit: 'mil', equipment: 'MG-1', spots: [{ lastWet: '18.0', nextDry: 20 }] };

/** A valid request for each write about what is made, found wrong and put right. */
export const MAKING: Readonly<Record<string, MakeSample>> = {
  recordLayer: async (shop, n) => {
    await shop.startHull(n);
    const climate = {
      airTemperature: { value: 75, unit: 'F' },
      moldTemperature: { value: 21.5, unit: 'C' },
      relativeHumidity: { value: 55, unit: '%' },
    };
    const at = { startedAt: shop.tick(), endedAt: shop.tick() };
    const fields = { layer: 'L2', ...at, doneBy: ['LAM-2', 'LAM-1'], climate, ...(await used(shop, n)) };
    return { path: `/api/parts/${n}-H/layers`, fields, other: NOTE };
  },
  useInLayer: async (shop, n) => {
    const path = `/api/layers/${await layerOf(shop, n)}/used`;
    return { path, fields: await used(shop, n), other: STATION };
  },
  readLayer: async (shop, n) => ({
    path: `/api/layers/${await layerOf(shop, n, 'L1')}/readings`,
    fields: { ...film, spots: [{ lastWet: '18.0', nextDry: 20, place: PORT_SIDE }, { value: '0.50' }] },
    other: { what: 'thickness' },
  }),
  signHoldPoint: async (shop, n) => ({
    path: `/api/layers/${await layerOf(shop, n, 'L1')}/signatures`,
    fields: { enteredBy: 'INS-1' },
    other: STATION,
  }),
  useInJoint: async (shop, n) => {
    const path = `/api/joints/${await jointOf(shop, n)}/used`;
    return { path, fields: await used(shop, n), other: STATION };
  },
  reportDefect: async (shop, n) => {
    await shop.startHull(n);
    const size = { lengthMm: 40, widthMm: 12.5, depthMm: 0.8, grade: '6MD' };
    const fields = { kind: 'blister', layer: 'L2', place: PORT_SIDE, ...size };
    return { path: `/api/parts/${n}-H/defects`, fields, other: NOTE };
  },
  addPhoto: async (shop, n) => ({
    path: `/api/defects/${await defectOf(shop, n)}/photos`,
    fields: {},
    other: STATION,
    photo: await sharp({ create: { width: 8, height: 6, channels: 3, background: '#a0b0c0' } })
      .png()
      .toBuffer(),
  }),
  dispose: async (shop, n) => ({
    path: '/api/dispositions',
    fields: {
      ...{ of: 'defect', about: await defectOf(shop, n), disposition: 'use as is', concession: n },
      reason: 'cosmetic',
    },
    other: { reason: 'another' },
  }),
  recordRepair: async (shop, n) => {
    const defects = [await defectOf(shop, n)];
    const work = { procedure: 'Ground out 12:1.', taperRatio: 12, plies: ['mat 450', 'mat 450'], doneBy: ['PAT-1'] };
    const fields = {
      defects,
      ...work,
      grindOutMm: { lengthMm: 300, widthMm: 200, depthMm: 2.5 },
      ...(await used(shop, n)),
    };
    return { path: `/api/parts/${n}-H/repairs`, fields, other: { procedure: 'another' } };
  },
  useInRepair: async (shop, n) => {
    const path = `/api/repairs/${await repairOf(shop, n)}/used`;
    return { path, fields: await used(shop, n), other: STATION };
  },
  readRepair: async (shop, n) => ({
    path: `/api/repairs/${await repairOf(shop, n)}/readings`,
    fields: film,
    other: { what: 'thickness' },
  }),
  judgeRepair: async (shop, n) => ({
    path: `/api/repairs/${await repairOf(shop, n)}/acceptances`,
    fields: { enteredBy: 'INS-1', accepted: false, note: 'still soft' },
    other: { accepted: true },
  }),
  correct: async (shop, n) => {
    const corrects = await layerOf(shop, n);
    await shop.act(`/api/layers/${corrects}/used`, await used(shop, n));
    return {
      path: '/api/corrections',
      fields: { corrects, reason: 'entered for the wrong part' },
      other: { reason: 'another' },
    };
  },
};
