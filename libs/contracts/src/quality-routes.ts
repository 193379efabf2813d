import { PageQuery } from './envelope.js';
import * as quality from './quality.js';
import { get } from './route.js';

/** What the quality desk looks at: what waits for a word, and counts per hull made. Nothing counts people. */
export const qualityRoutes = {
  listWaiting: get({
    path: '/api/waiting',
    tag: 'quality',
    summary:
      'Defects, readings, checks and repairs that wait for a decision, an answer or an acceptance, oldest first.',
    query: quality.WaitingQuery,
    response: quality.WaitingPage,
  }),
  countDefects: get({
    path: '/api/defect-counts',
    tag: 'quality',
    summary: 'Defects per hull made, by kind, zone, mold or material; groups of fewer than five hulls are not shown.',
    query: quality.DefectCountsQuery,
    response: quality.DefectCounts,
  }),
  countHulls: get({
    path: '/api/hull-counts',
    tag: 'quality',
    summary: 'How many hulls are where, by their newest life fact.',
    response: quality.HullsByState,
  }),
  listConcessions: get({
    path: '/api/concessions',
    tag: 'quality',
    summary: 'What is used as it is under a concession, the newest first.',
    query: PageQuery,
    response: quality.ConcessionPage,
  }),
} as const;
