import { told } from './example-parts.js';

/** One request for each route about what is judged by. */
export const EXAMPLES_OF_RULES = {
  setPlantRules: told({
    ...{ enteredBy: 'QUA-01', marginRule: '5 F', shopWindow: 'class rule', barcolFraction: 0.9 },
    reason: 'Agreed with the class surveyor.',
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
  issueDataSheet: told({
    issue: 'Vinyl ester resin, issue 5',
    makerData: {
      catalystWindow: { min: 1.2, max: 2.4, unit: '%' },
      layUpWindow: { min: 1, max: 24, unit: 'h' },
      minimumBarcol: 40,
    },
  }),
};
