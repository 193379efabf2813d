import { z } from 'zod';
import { HinReceipt } from './hulls.js';
import * as owners from './owners.js';
import { ReadJoint, ReadingsReceipt } from './readings.js';
import { get, post } from './route.js';

/** Owners, fitted items, readings of joints, HINs that are corrected after they were affixed. */
export const ownerRoutes = {
  registerOwner: post({
    path: '/api/hulls/:number/owners',
    tag: 'owners',
    summary: 'Register an owner of a hull.',
    body: owners.RegisterOwner,
    response: owners.OwnerReceipt,
  }),
  listOwners: get({
    path: '/api/hulls/:number/owners',
    tag: 'owners',
    summary: 'Owners of a hull, with what is kept of each.',
    response: z.array(owners.OwnerView),
  }),
  eraseOwner: post({
    path: '/api/owners/:owner/erasures',
    tag: 'owners',
    summary: "Erase an owner's personal data.",
    body: owners.EraseOwner,
    response: owners.ErasureReceipt,
  }),
  fitItem: post({
    path: '/api/hulls/:number/fitted-items',
    tag: 'hulls',
    summary: 'Record an item with a serial number that was fitted.',
    body: owners.FitItem,
    response: owners.FittedReceipt,
  }),
  removeItem: post({
    path: '/api/fitted-items/:item/removals',
    tag: 'hulls',
    summary: 'Record that a fitted item was taken off.',
    body: owners.RemoveItem,
    response: owners.RemovedReceipt,
  }),
  listFittedItems: get({
    path: '/api/fitted-items',
    tag: 'hulls',
    summary: 'Items that are or were fitted, by serial number or by hull.',
    query: owners.FittedItemsQuery,
    response: z.array(owners.FittedItemView),
  }),
  correctHin: post({
    path: '/api/hulls/:number/hin-corrections',
    tag: 'hulls',
    summary: 'Correct a HIN after it was affixed, citing the authority for it.',
    body: owners.CorrectHin,
    response: HinReceipt,
  }),
  readJoint: post({
    path: '/api/joints/:joint/readings',
    tag: 'hulls',
    summary: 'Take readings on a joint, such as the bond gap.',
    body: ReadJoint,
    response: ReadingsReceipt,
  }),
} as const;
