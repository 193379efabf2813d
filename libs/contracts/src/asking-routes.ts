import { z } from 'zod';
import * as trace from './trace.js';
import { Instant, PageQuery } from './envelope.js';
import { Health } from './problem.js';
import { RecomputationsPage, RecomputationView } from './recomputations.js';
import { get, post } from './route.js';

/** The searches, the papers, and whether the service is well. */
/** For whom a build record is drawn: it decides how people are told, and whether notes are. */
const RecordCuts = z.enum(['internal', 'dealer', 'expert']);
export type RecordCut = z.output<typeof RecordCuts>;

export const BuildRecordQuery = z.object({
  asOf: Instant.optional(),
  cut: RecordCuts.default('internal').describe('dealer: people by role, without notes; expert: people by number'),
});
export type BuildRecordQuery = z.output<typeof BuildRecordQuery>;

export const askingRoutes = {
  lotHulls: get({
    path: '/api/lots/:lot/hulls',
    tag: 'trace',
    summary: 'Which hulls and parts hold some of this lot, and how much.',
    query: trace.ReachQuery,
    response: trace.ReachPage,
  }),
  streamLotHulls: get({
    path: '/api/lots/:lot/hulls.ndjson',
    tag: 'trace',
    summary:
      'The same, all of it, one JSON object a line. When the past was corrected while it was read, a last line with the field `corrected` says so: ask again. When figures were being worked out anew, a last line with the field `recomputing` says so.',
    query: trace.ReachQuery.omit({ limit: true, cursor: true }),
    produces: 'application/x-ndjson',
  }),
  hullLots: get({
    path: '/api/hulls/:number/lots',
    tag: 'trace',
    summary: 'Which received lots are in this hull, how much, and by which way.',
    response: trace.HullLots,
  }),
  sharedLots: post({
    path: '/api/shared-lots',
    tag: 'trace',
    summary: 'Which lots these hulls share, and how many others hold each.',
    body: trace.AskSharedLots,
    response: trace.SharedLotsPage,
  }),
  defectSuspects: get({
    path: '/api/defects/:defect/lots',
    tag: 'trace',
    summary: 'The lots in the layer and place of a defect, and the other hulls that hold them.',
    response: trace.DefectSuspects,
  }),
  listRecomputations: get({
    path: '/api/recomputations',
    tag: 'corrections',
    summary: 'What corrections reached that is or was worked out anew by a job; the newest first.',
    query: PageQuery,
    response: RecomputationsPage,
  }),
  readRecomputation: get({
    path: '/api/recomputations/:correction',
    tag: 'corrections',
    summary: 'How far the job is that works out anew what one correction reached.',
    response: RecomputationView,
  }),
  buildRecord: get({
    path: '/api/hulls/:number/build-record.pdf',
    tag: 'papers',
    summary: 'The build record as PDF, in one of three cuts; asOf draws an earlier state.',
    query: BuildRecordQuery,
    produces: 'application/pdf',
  }),
  live: get({
    path: '/health/live',
    tag: 'health',
    summary: 'The process answers.',
    response: z.object({ live: z.literal(true) }),
  }),
  ready: get({
    path: '/health/ready',
    tag: 'health',
    summary: 'The database answers; how far the demo is.',
    response: Health,
  }),
} as const;
