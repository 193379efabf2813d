import { get } from './route.js';
import * as graph from './trace-graph.js';

/** The picture of where a lot went, and of where what is in a hull came from. */
export const traceGraphRoutes = {
  traceLot: get({
    path: '/api/lots/:lot/trace',
    tag: 'trace',
    summary: 'Where a lot went: what was made of it, and the hulls, with kilograms on each way.',
    query: graph.TraceQuery,
    response: graph.TraceGraph,
  }),
  lotTracePaper: get({
    path: '/api/lots/:lot/trace.pdf',
    tag: 'papers',
    summary: 'Where a lot went as a drawing, and every lot and hull on its way in a table, as PDF.',
    produces: 'application/pdf',
  }),
  traceHull: get({
    path: '/api/hulls/:number/trace',
    tag: 'trace',
    summary: 'Where what is in one or some hulls came from: what was used, and the received lots behind it.',
    query: graph.HullTraceQuery,
    response: graph.TraceGraph,
  }),
  hullTracePaper: get({
    path: '/api/hulls/:number/trace.pdf',
    tag: 'papers',
    summary: 'Where what is in one or some hulls came from as a drawing, and every lot on its way in a table, as PDF.',
    query: graph.HullTracePaperQuery,
    produces: 'application/pdf',
  }),
} as const;
