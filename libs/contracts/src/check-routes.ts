import * as checks from './checks.js';
import { MakeMix } from './lots.js';
import { RecordLayer } from './parts.js';
import { RecordRepair } from './repairs.js';
import { get, post } from './route.js';

/** What is asked before an act, going on over it, and what was done against a rule. */
export const checkRoutes = {
  checkLayer: post({
    path: '/api/parts/:part/layers/check',
    tag: 'layers',
    summary: 'Ask what recording this layer would find wrong; nothing is recorded.',
    body: RecordLayer,
    response: checks.Stops,
  }),
  checkRepair: post({
    path: '/api/parts/:part/repairs/check',
    tag: 'repairs',
    summary: 'Ask what recording this repair would find wrong; nothing is recorded.',
    body: RecordRepair,
    response: checks.Stops,
  }),
  checkMix: post({
    path: '/api/mixes/check',
    tag: 'lots',
    summary: 'Ask what recording this bucket would find wrong; nothing is recorded.',
    body: MakeMix,
    response: checks.Stops,
  }),
  goOn: post({
    path: '/api/go-ons',
    tag: 'layers',
    summary: 'Go on under nonconformance, as a shift lead.',
    body: checks.GoOn,
    response: checks.GoOnReceipt,
  }),
  recordRework: post({
    path: '/api/dispositions/:disposition/rework',
    tag: 'defects',
    summary: 'Record that what a disposition asked for was done and inspected.',
    body: checks.RecordRework,
    response: checks.ReworkReceipt,
  }),
  listNonconformities: get({
    path: '/api/nonconformities',
    tag: 'defects',
    summary: 'What was done against a rule, and what was decided about it.',
    query: checks.NonconformitiesQuery,
    response: checks.NonconformityPage,
  }),
} as const;
