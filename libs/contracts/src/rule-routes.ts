import { z } from 'zod';
import { get, post } from './route.js';
import * as climate from './climate.js';
import { ReadingsReceipt, ReadWhole } from './readings.js';
import * as verdicts from './verdicts.js';

/** What is judged by: data sheets of materials, and the rules a plant chose. */
export const ruleRoutes = {
  setPlantRules: post({
    path: '/api/plant-rules',
    tag: 'rules',
    summary: 'Choose by which published rules the plant judges from then on.',
    body: verdicts.SetPlantRules,
    response: verdicts.PlantRulesReceipt,
  }),
  readPlantRules: get({
    path: '/api/plant-rules',
    tag: 'rules',
    summary: 'By which published rules the plant judges, with their sources.',
    response: verdicts.PlantRulesView,
  }),
  issueDataSheet: post({
    path: '/api/materials/:material/data-sheets',
    tag: 'materials',
    summary: "Record a new issue of a material's data sheet.",
    body: verdicts.IssueDataSheet,
    response: verdicts.DataSheetReceipt,
  }),
  listDataSheets: get({
    path: '/api/materials/:material/data-sheets',
    tag: 'materials',
    summary: "The issues of a material's data sheet, the newest first.",
    response: z.array(verdicts.DataSheetView),
  }),
  takePartReadings: post({
    path: '/api/parts/:part/readings',
    tag: 'readings',
    summary: 'Take readings of a whole part, such as its weight at demold; each is judged.',
    body: ReadWhole,
    response: ReadingsReceipt,
  }),
  takeLotReadings: post({
    path: '/api/lots/:lot/readings',
    tag: 'readings',
    summary: 'Take readings of a lot, such as gel time, peak exotherm or viscosity; each is judged.',
    body: ReadWhole,
    response: ReadingsReceipt,
  }),
  importClimate: post({
    path: '/api/areas/:area/climate',
    tag: 'rules',
    summary: 'Import a series of the climate log of an area; layers made there meanwhile are judged by it.',
    body: climate.ImportClimate,
    response: climate.ClimateReceipt,
  }),
  readClimate: get({
    path: '/api/areas/:area/climate',
    tag: 'rules',
    summary: 'The climate log of an area, with the dew point of each point.',
    query: climate.ReadClimateQuery,
    response: climate.ClimateLogView,
  }),
} as const;
