import { z } from 'zod';
import { get, post } from './route.js';
import * as news from './own-news.js';
import * as privacy from './privacy.js';
import * as redactions from './redactions.js';

/** What dealers are told. */
export const newsRoutes = {
  listOwnNews: get({
    path: '/api/own-news',
    tag: 'own hulls',
    summary: 'Notices and withdrawn certificates of own hulls, what was not acknowledged first.',
    response: z.array(news.OwnNews),
  }),
  acknowledge: post({
    path: '/api/own-acknowledgements',
    tag: 'own hulls',
    summary: 'Record that one of them was taken note of.',
    body: news.Acknowledge,
    response: news.AcknowledgedReceipt,
  }),
} as const;

/** What owners may ask of their data, and what keeps it meanwhile. */
export const privacyRoutes = {
  listAllOwners: get({
    path: '/api/owners',
    tag: 'owners',
    summary: 'Owners of all hulls, the newest first.',
    query: privacy.ListAllOwnersQuery,
    response: privacy.OwnersPage,
  }),
  readOwner: get({
    path: '/api/owners/:owner',
    tag: 'owners',
    summary: 'All that is on record of one owner.',
    response: privacy.OwnerFile,
  }),
  exportOwner: get({
    path: '/api/owners/:owner/data.json',
    tag: 'owners',
    summary: 'The same as a file, to be given to the person.',
    produces: 'application/json',
  }),
  exportOwnerSheet: get({
    path: '/api/owners/:owner/data.csv',
    tag: 'owners',
    summary: 'The same as a table.',
    produces: 'text/csv',
  }),
  recordOwnerRequest: post({
    path: '/api/owners/:owner/requests',
    tag: 'owners',
    summary: 'Record what an owner asked for.',
    body: privacy.RecordOwnerRequest,
    response: privacy.OwnerRequestReceipt,
  }),
  correctOwner: post({
    path: '/api/owners/:owner/corrections',
    tag: 'owners',
    summary: "Set an owner's personal data right; what was there before is erased.",
    body: privacy.CorrectOwner,
    response: privacy.OwnerCorrectedReceipt,
  }),
  placeLegalHold: post({
    path: '/api/hulls/:number/legal-holds',
    tag: 'owners',
    summary: 'Place a legal hold on the personal data of a hull: nothing of it is erased while it lasts.',
    body: privacy.PlaceLegalHold,
    response: privacy.LegalHoldReceipt,
  }),
  endLegalHold: post({
    path: '/api/legal-holds/:hold/endings',
    tag: 'owners',
    summary: 'End a legal hold.',
    body: privacy.EndLegalHold,
    response: privacy.LegalHoldEndedReceipt,
  }),
} as const;

/** Redacted copies of what shows or names an owner. */
export const redactionRoutes = {
  listRedactable: get({
    path: '/api/hulls/:number/redactable',
    tag: 'owners',
    summary: 'Freely written texts and photos of a hull that may show or name somebody.',
    response: redactions.Redactable,
  }),
  redactText: post({
    path: '/api/text-redactions',
    tag: 'owners',
    summary: 'Give a freely written text another wording; the original is erased, or kept apart while it must be.',
    body: redactions.RedactText,
    response: redactions.TextRedactedReceipt,
  }),
  redactPhoto: post({
    path: '/api/photos/:photo/redactions',
    tag: 'owners',
    summary: 'Black out areas of a photo; the original is erased, or kept apart while it must be.',
    body: redactions.RedactPhoto,
    response: redactions.PhotoRedactedReceipt,
  }),
  showKeptOriginal: get({
    path: '/api/photos/:photo/kept-original',
    tag: 'owners',
    summary: 'The original of a redacted photo, while it has to be kept.',
    produces: 'image/jpeg',
  }),
} as const;
