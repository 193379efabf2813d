import { z } from 'zod';
import * as claims from './claims.js';
import { PhotoReceipt } from './defects.js';
import { get, post } from './route.js';
import * as warranty from './warranty.js';

/** Warranty terms and claims: at the desk, and of a dealer's own hulls. */
export const claimRoutes = {
  setWarrantyTerms: post({
    path: '/api/models/:model/warranty-terms',
    tag: 'claims',
    summary: 'Publish warranty terms of a model for model years; a later version follows, none changes.',
    body: warranty.SetWarrantyTerms,
    response: warranty.WarrantyTermsReceipt,
  }),
  listWarrantyTerms: get({
    path: '/api/models/:model/warranty-terms',
    tag: 'claims',
    summary: 'The warranty terms of a model, the newest version first.',
    response: z.array(warranty.WarrantyTermsView),
  }),
  fileClaim: post({
    path: '/api/hulls/:number/claims',
    tag: 'claims',
    summary: 'File a claim; each spot of it becomes a defect.',
    body: claims.FileClaim,
    response: claims.ClaimReceipt,
  }),
  listClaims: get({
    path: '/api/claims',
    tag: 'claims',
    summary: 'Claims, the newest first.',
    query: claims.ListClaimsQuery,
    response: claims.ClaimPage,
  }),
  readClaim: get({
    path: '/api/claims/:claim',
    tag: 'claims',
    summary: 'One claim, what the terms say of it, and what was decided.',
    response: claims.ClaimView,
  }),
  addClaimPhoto: post({
    path: '/api/claims/:claim/photos',
    tag: 'claims',
    summary: 'Add a photo to a claim: form with the JSON field "record" (AddClaimPhoto) and the file "photo".',
    body: claims.AddClaimPhoto,
    response: PhotoReceipt,
  }),
  decideClaim: post({
    path: '/api/claims/:claim/decisions',
    tag: 'claims',
    summary: 'Decide on a claim, with the reason; what the terms said is kept beside it.',
    body: claims.DecideClaim,
    response: claims.ClaimDecisionReceipt,
  }),
  markClaim: post({
    path: '/api/claims/:claim/marks',
    tag: 'claims',
    summary: 'Say how a claim came to light, when that became known later.',
    body: claims.MarkClaim,
    response: claims.ClaimMarkReceipt,
  }),
  fileOwnClaim: post({
    path: '/api/own-hulls/:number/claims',
    tag: 'own hulls',
    summary: 'File a claim for an own hull.',
    body: claims.FileOwnClaim,
    response: claims.ClaimReceipt,
  }),
  listOwnClaims: get({
    path: '/api/own-hulls/:number/claims',
    tag: 'own hulls',
    summary: 'Claims of an own hull, the newest first.',
    response: z.array(claims.OwnClaim),
  }),
  addOwnClaimPhoto: post({
    path: '/api/own-hulls/:number/claims/:claim/photos',
    tag: 'own hulls',
    summary: 'Add a photo to a claim of an own hull: form with the JSON field "record" and the file "photo".',
    body: claims.AddClaimPhoto,
    response: PhotoReceipt,
  }),
} as const;
