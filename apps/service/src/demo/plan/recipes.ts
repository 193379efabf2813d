import type { MaterialCode } from './materials.js';
import type { PartKind } from './models.js';
import { barcol, thickness, wetFilm, type LayerRecipe, type Take } from './recipe.js';

const bucket = (perM2: number, ...materials: [MaterialCode, ...MaterialCode[]]): Take => ({
  ...{ way: 'bucket', materials, unit: 'kg', perM2 },
});
const gun = (perM2: number, ...materials: [MaterialCode, ...MaterialCode[]]): Take => ({
  ...{ way: 'gun', materials, unit: 'kg', perM2 },
});
const kit = (plies: number, material: MaterialCode): Take => ({
  ...{ way: 'kit', materials: [material], unit: 'm2', perM2: plies },
});
const store = (perM2: number, material: MaterialCode, unit: 'kg' | 'm2' = 'kg'): Take => ({
  ...{ way: 'store', materials: [material], unit, perM2 },
});

/** A ply of mat 300 g/m2, 30 per cent glass. */
const MAT = [300, 0.3] as const;

const HULL: readonly LayerRecipe[] = [
  {
    ...{ code: 'H1', name: 'Gel coat', plies: ['gel coat, 0.50 mm wet'], day: 0, from: '07:30', minutes: 70 },
    ...{ takes: [gun(0.66, 'GEL-W', 'GEL-N')], readings: [wetFilm(8)], holdPoint: 'HP 1', latestNextMinutes: 1440 },
    lossAllowance: 0.3,
  },
  {
    ...{ code: 'H2', name: 'Skin coat', plies: ['2 x mat 300 g/m2'], day: 1, from: '07:10', minutes: 100 },
    ...{ takes: [bucket(1.4, 'VE'), store(2, 'MAT-300', 'm2')], readings: [barcol(6, 32), thickness(6, 1, 1.9)] },
    ...{ holdPoint: 'HP 2', laminate: [MAT, MAT] },
  },
  {
    ...{ code: 'H3', name: 'Strake filling', zone: 'strakes', plies: ['polyester putty, 4 strakes'] },
    ...{ day: 2, from: '10:30', minutes: 60, takes: [store(0.2, 'PUT-S')] },
  },
  {
    ...{ code: 'H4', name: 'Bulk laminate, outer', plies: ['2 x (stitched 700 g/m2 + mat 300 g/m2)'] },
    ...{ day: 3, from: '07:00', minutes: 195, takes: [gun(2.1, 'VE'), kit(2, 'STI-700'), kit(2, 'MAT-300')] },
    ...{ readings: [barcol(12, 36)], holdPoint: 'HP 3, before core' },
    laminate: [[700, 0.5], MAT, [700, 0.5], MAT],
  },
  {
    ...{ code: 'H5', name: 'Core', zone: 'bottom and topsides', plies: ['PVC 80 kg/m3, 15 mm, in bonding putty'] },
    ...{ day: 4, from: '10:30', minutes: 150, takes: [kit(0.7, 'COR-15'), store(0.5, 'PUT-C')] },
  },
  {
    ...{ code: 'H6', name: 'Bulk laminate, inner', plies: ['stitched 900 g/m2 + mat 300 g/m2'] },
    ...{ day: 5, from: '07:00', minutes: 160, takes: [gun(1.5, 'PE'), kit(1, 'STI-900'), kit(1, 'MAT-300')] },
    ...{ readings: [barcol(8, 34)], laminate: [[900, 0.5], MAT] },
  },
  {
    ...{ code: 'H7', name: 'Transom board', zone: 'transom', plies: ['composite board 50 mm, transom only'] },
    ...{ day: 6, from: '09:30', minutes: 90 },
    takes: [{ way: 'store', materials: ['BRD-50'], unit: 'pc', perPart: 1 }, store(0.22, 'PUT-C')],
  },
  {
    ...{ code: 'H8', name: 'Inner coat', plies: ['flow coat, grey'], day: 7, from: '08:00', minutes: 80 },
    ...{ takes: [bucket(0.45, 'FLOW-G')], holdPoint: 'HP 4, end of laminating' },
  },
];

const DECK: readonly LayerRecipe[] = [
  {
    ...{ code: 'D1', name: 'Gel coat', plies: ['gel coat, 0.50 mm wet'], day: 1, from: '09:30', minutes: 60 },
    ...{ takes: [gun(0.64, 'GEL-W')], readings: [wetFilm(4)], holdPoint: 'HP D1', lossAllowance: 0.3 },
  },
  {
    ...{ code: 'D2', name: 'Skin coat', plies: ['mat 450 g/m2'], day: 2, from: '07:20', minutes: 75 },
    ...{ takes: [bucket(1.05, 'VE'), store(1, 'MAT-450', 'm2')], laminate: [[450, 0.3]] },
  },
  {
    ...{ code: 'D3', name: 'Core', plies: ['mat 450 g/m2, PVC 80 kg/m3, 20 mm'], day: 4, from: '07:00', minutes: 150 },
    takes: [gun(1.3, 'PE'), kit(0.6, 'COR-20'), kit(1, 'MAT-450'), store(0.4, 'PUT-C')],
  },
  {
    ...{ code: 'D4', name: 'Inner laminate', plies: ['stitched 700 g/m2'], day: 5, from: '10:30', minutes: 110 },
    ...{ takes: [gun(0.9, 'PE'), kit(1, 'STI-700')], readings: [barcol(6, 34)], holdPoint: 'HP D2' },
  },
];

const GRID: readonly LayerRecipe[] = [
  {
    ...{ code: 'G1', name: 'Laminate', plies: ['chopped roving 1200 g/m2'], day: 3, from: '10:40', minutes: 90 },
    ...{ takes: [gun(2.2, 'PE'), store(1.2, 'ROV-24')], readings: [barcol(4, 34)] },
  },
  {
    ...{ code: 'G2', name: 'Top coat', plies: ['flow coat, grey'], day: 4, from: '13:00', minutes: 40 },
    takes: [bucket(0.3, 'FLOW-G')],
  },
];

/** How each part is laminated, layers outside in. */
export const RECIPES: Readonly<Record<PartKind, readonly LayerRecipe[]>> = {
  'hull molding': HULL,
  deck: DECK,
  'stringer grid': GRID,
};
