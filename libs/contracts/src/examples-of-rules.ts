import { told } from './example-parts.js';

/** One request for each route about what is judged by. */
export const EXAMPLES_OF_RULES = {
  setPlantRules: told({
    ...{ enteredBy: 'QUA-01', marginRule: '5 F', shopWindow: 'class rule', barcolFraction: 0.9 },
    reason: 'Agreed with the class surveyor.',
  }),
  takePartReadings: told({
    ...{ what: 'part weight', unit: 'kg', equipment: 'SC-1', spots: [{ value: '412.5' }] },
    ...{ limits: { min: 395, max: 425, unit: 'kg' }, source: 'Target of the model, 3.7 % either way' },
  }),
  takeLotReadings: told({
    ...{ what: 'gel time', unit: 'min', spots: [{ value: '17' }] },
    ...{ limits: { min: 14, max: 20, unit: 'min' }, source: 'Certificate of the lot, cup test at 25 C' },
  }),
  importClimate: told({
    points: [
      {
        at: '2026-05-14T08:00:00-04:00',
        airTemperature: { value: 72, unit: 'F' },
        relativeHumidity: { value: 54, unit: '%' },
      },
    ],
  }),
  planPatch: {
    ...{ damage: { lengthMm: 120, widthMm: 80 }, originalMm: 6, damageDepthMm: 4, taperRatio: 12 },
    plies: [
      { arealMass: { value: 450, unit: 'g/m2' }, fibreMassFraction: 0.3 },
      { arealMass: { value: 24, unit: 'oz/yd2' }, fibreMassFraction: 0.48 },
      { arealMass: { value: 1.5, unit: 'oz/ft2' }, fibreMassFraction: 0.3 },
    ],
  },
  setFlawLimits: told({
    ...{ enteredBy: 'QUA-01', level: 'II', reason: 'Agreed with the owners for visible surfaces.' },
    rows: [
      {
        ...{ kind: 'air-bubble', II: { mm: 2, inches: 0.08, count: { atMost: 2, areaMm2: 645.16 } }, III: null },
        source: 'Drawing note of the model',
      },
    ],
  }),
  issueDataSheet: told({
    issue: 'Vinyl ester resin, issue 5',
    makerData: {
      catalystWindow: { min: 1.2, max: 2.4, unit: '%' },
      layUpWindow: { min: 1, max: 24, unit: 'h' },
      minimumBarcol: 40,
      dosing: [
        { temperature: { value: 65, unit: 'F' }, percentByMass: 2.2 },
        { temperature: { value: 77, unit: 'F' }, percentByMass: 1.8 },
      ],
    },
  }),
};
