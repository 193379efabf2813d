import * as holds from './holds.js';
import { get, post } from './route.js';

/** Holds: the hulls that they reach, and what becomes of each. */
export const holdRoutes = {
  holdOther: post({
    path: '/api/holds',
    tag: 'holds',
    summary: 'Hold equipment, a state of a mold, or what was made in a period.',
    body: holds.HoldOther,
    response: holds.HoldReceipt,
  }),
  listHolds: get({
    path: '/api/holds',
    tag: 'holds',
    summary: 'List holds, the newest first.',
    query: holds.ListHoldsQuery,
    response: holds.HoldPage,
  }),
  readHold: get({
    path: '/api/holds/:hold',
    tag: 'holds',
    summary: 'One hold: what it is on, how far it reaches, and how far the work has come.',
    response: holds.HoldView,
  }),
  listHeldHulls: get({
    path: '/api/holds/:hold/hulls',
    tag: 'holds',
    summary: 'The hulls that a hold reaches now, and those it reached when it was placed.',
    query: holds.HeldHullsQuery,
    response: holds.HeldHullPage,
  }),
  narrowHold: post({
    path: '/api/holds/:hold/scopes',
    tag: 'holds',
    summary: 'Narrow a hold to a least share, a zone or a period, with the reason.',
    body: holds.NarrowHold,
    response: holds.NarrowReceipt,
  }),
  disposeHeld: post({
    path: '/api/holds/:hold/dispositions',
    tag: 'holds',
    summary: 'Say of hulls that a hold reaches what was found or done.',
    body: holds.DisposeHeld,
    response: holds.DisposedReceipt,
  }),
  closeHold: post({
    path: '/api/holds/:hold/closings',
    tag: 'holds',
    summary: 'Close a hold of which every hull is disposed of.',
    body: holds.CloseHold,
    response: holds.ClosedReceipt,
  }),
  heldHullsPaper: get({
    path: '/api/holds/:hold/hulls.pdf',
    tag: 'papers',
    summary: 'The list of hulls that a hold reaches, each with its disposition, as PDF.',
    produces: 'application/pdf',
  }),
  heldHullsSheet: get({
    path: '/api/holds/:hold/hulls.csv',
    tag: 'holds',
    summary: 'The same list as CSV (RFC 4180), no cell of which a spreadsheet takes for a formula.',
    produces: 'text/csv; charset=utf-8; header=present',
  }),
} as const;
