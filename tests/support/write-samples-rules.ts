import { type MakeSample } from './write-sample.js';

/** A valid request for each write about what is judged by. */
export const RULES: Readonly<Record<string, MakeSample>> = {
  setPlantRules: () =>
    Promise.resolve({
      path: '/api/plant-rules',
      fields: { marginRule: '3 C', shopWindow: null, barcolFraction: 0.95, reason: 'agreed' },
      other: { barcolFraction: 0.9 },
    }),
  takePartReadings: async (shop, n) => {
    await shop.startHull(n);
    const limits = { min: 395.5, max: 425, unit: 'kg' };
    const fields = { what: 'part weight', unit: 'lb', spots: [{ value: '905.0' }], limits, source: 'target' };
    return { path: `/api/parts/${n}-H/readings`, fields, other: { source: 'another' } };
  },
  takeLotReadings: async (shop, n) => {
    await shop.receive(n, 'RES-VE');
    const fields = {
      what: 'gel time',
      unit: 'min',
      spots: [{ value: '17.50' }],
      limits: { max: 20, unit: 'min' },
      source: 'x',
    };
    return { path: `/api/lots/${n}/readings`, fields, other: { source: 'another' } };
  },
  importClimate: (_shop, n) => {
    const at = '2026-01-04T10:00:00.000Z';
    const points = [{ at, airTemperature: { value: 71.5, unit: 'F' }, relativeHumidity: { value: 55, unit: '%' } }];
    return Promise.resolve({ path: `/api/areas/${n}/climate`, fields: { points }, other: { station: 'S' } });
  },
  setFlawLimits: () => {
    const bubble = { kind: 'air-bubble', II: { mm: 1.25, inches: 0.05 }, III: null, source: 'invented' };
    const fields = { level: 'II', rows: [bubble], reason: 'agreed' };
    return Promise.resolve({ path: '/api/flaw-limits', fields, other: { level: null } });
  },
  issueDataSheet: async (shop, n) => {
    await shop.act('/api/materials', { code: n, name: n, role: 'resin' });
    const makerData = { catalystWindow: { min: 1.25, unit: '%' }, layUpWindow: { max: 24.5, unit: 'h' } };
    return { path: `/api/materials/${n}/data-sheets`, fields: { issue: '2', makerData }, other: { issue: '3' } };
  },
};
