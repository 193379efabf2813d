import { z } from 'zod';
import * as molds from './molds.js';
import { get, post } from './route.js';

/** The care of molds, and layers of several parts in one entry. */
export const moldRoutes = {
  careForMold: post({
    path: '/api/molds/:mold/care',
    tag: 'models',
    summary: 'Record care of a mold, with the lots of release and cleaner.',
    body: molds.CareForMold,
    response: molds.MoldCareReceipt,
  }),
  readMold: get({
    path: '/api/molds/:mold',
    tag: 'models',
    summary: 'One mold: its state, its care and its pulls.',
    response: molds.MoldDetail,
  }),
  moldsTreated: get({
    path: '/api/lots/:lot/molds',
    tag: 'trace',
    summary: 'Molds treated with a lot, and the parts molded on that surface.',
    response: z.array(molds.MoldTreated),
  }),
  moveToSchedule: post({
    path: '/api/parts/:part/schedule',
    tag: 'parts',
    summary: 'Move a part to another schedule version from a named layer on.',
    body: molds.MoveToSchedule,
    response: molds.MoveReceipt,
  }),
  recordLayers: post({
    path: '/api/layers',
    tag: 'layers',
    summary: 'Record the same layer of several parts in one entry.',
    body: molds.RecordLayers,
    response: molds.LayersReceipt,
  }),
} as const;
