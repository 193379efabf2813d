import { RepairOrderQuery } from './papers.js';
import { get } from './route.js';

/** Papers beside the build record: of a lot, of a part in the bay, of equipment. */
export const paperRoutes = {
  lotReport: get({
    path: '/api/lots/:lot/report.pdf',
    tag: 'papers',
    summary: 'What a lot is, what it is made of, how it was judged, and every hull that holds it, as PDF.',
    produces: 'application/pdf',
  }),
  holdPoints: get({
    path: '/api/parts/:part/hold-points.pdf',
    tag: 'papers',
    summary: 'The hold points of a part with what was made, read and found, signed or to be signed by hand, as PDF.',
    produces: 'application/pdf',
  }),
  repairOrder: get({
    path: '/api/parts/:part/repair-order.pdf',
    tag: 'papers',
    summary: 'Defects of a part with the laminate they are in, cautions, and a grid to be filled in by hand, as PDF.',
    query: RepairOrderQuery,
    produces: 'application/pdf',
  }),
  equipmentRecall: get({
    path: '/api/equipment/:equipment/recall.pdf',
    tag: 'papers',
    summary: 'Checks of equipment, and all that was read or sprayed with it while it may have been unfit, as PDF.',
    produces: 'application/pdf',
  }),
  inquiryReport: get({
    path: '/api/cases/:case/looks/:look/report.pdf',
    tag: 'papers',
    summary: 'What a look at a case found and how sure, how it was judged, and how to work it out again, as PDF.',
    produces: 'application/pdf',
  }),
} as const;
