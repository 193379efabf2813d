import { z } from 'zod';
import { get, post } from './route.js';
import { HoldReceipt } from './holds.js';
import * as store from './store.js';

/** Containers, holds, losses, counts, retests and balances. */
export const stockRoutes = {
  labelContainers: post({
    path: '/api/lots/:lot/containers',
    tag: 'store',
    summary: 'Label the containers of a lot.',
    body: store.LabelContainers,
    response: store.LabelsReceipt,
  }),
  readContainer: get({
    path: '/api/containers/:label',
    tag: 'store',
    summary: 'One container.',
    response: store.ContainerView,
  }),
  tellContainer: post({
    path: '/api/containers/:label/history',
    tag: 'store',
    summary: 'Say that a container was moved, opened, returned to stock, emptied, rejected or accepted.',
    body: store.TellContainer,
    response: store.ContainerReceipt,
  }),
  readStoreOfLot: get({
    path: '/api/lots/:lot/store',
    tag: 'store',
    summary: 'What the store knows of a lot: containers, holds, losses, counts, retests.',
    response: store.StoreOfLot,
  }),
  placeHold: post({
    path: '/api/lots/:lot/holds',
    tag: 'store',
    summary: 'Hold a lot, or one container of it.',
    body: store.PlaceHold,
    response: HoldReceipt,
  }),
  liftHold: post({
    path: '/api/holds/:hold/lifts',
    tag: 'store',
    summary: 'Lift a hold.',
    body: store.LiftHold,
    response: store.LiftReceipt,
  }),
  bookLoss: post({
    path: '/api/lots/:lot/losses',
    tag: 'store',
    summary: 'Record material that was scrapped, purged, flushed, spilled, kept as a sample or sent back.',
    body: store.BookLoss,
    response: store.LossReceipt,
  }),
  countLot: post({
    path: '/api/lots/:lot/counts',
    tag: 'store',
    summary: 'Record what was really there.',
    body: store.CountLot,
    response: store.CountReceipt,
  }),
  retestLot: post({
    path: '/api/lots/:lot/retests',
    tag: 'store',
    summary: 'Record a retest that gives a lot another last day of use.',
    body: store.RetestLot,
    response: store.RetestReceipt,
  }),
  readBalance: get({
    path: '/api/lots/:lot/balance',
    tag: 'store',
    summary: 'Account for every kilogram of a lot.',
    response: store.LotBalance,
  }),
  listBalances: get({
    path: '/api/balances',
    tag: 'store',
    summary: 'Lots that do not balance.',
    query: store.BalancesQuery,
    response: store.BalancePage,
  }),
  listStock: get({
    path: '/api/materials/:material/stock',
    tag: 'store',
    summary: 'Stock of a material in the order in which it is to be used.',
    response: z.array(store.StockItem),
  }),
} as const;
