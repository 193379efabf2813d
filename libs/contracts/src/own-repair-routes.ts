import { PhotoReceipt } from './defects.js';
import * as own from './own-repairs.js';
import { get, post } from './route.js';

/** Outside repairs of a dealer's own hulls. */
export const ownRepairRoutes = {
  reportOwnRepair: post({
    path: '/api/own-hulls/:number/outside-repairs',
    tag: 'own hulls',
    summary: 'Report a repair of an own hull that was done outside the plant; the plant judges it afterwards.',
    body: own.ReportOwnRepair,
    response: own.OwnRepairReceipt,
  }),
  listOwnRepairs: get({
    path: '/api/own-hulls/:number/outside-repairs',
    tag: 'own hulls',
    summary: 'Outside repairs of an own hull, and the open defects that one can be reported of.',
    response: own.OwnRepairs,
  }),
  addOwnRepairPhoto: post({
    path: '/api/own-hulls/:number/outside-repairs/:repair/photos',
    tag: 'own hulls',
    summary:
      'Add a photo to an outside repair that you reported: form with the JSON field "record" and the file "photo".',
    body: own.AddOwnRepairPhoto,
    response: PhotoReceipt,
  }),
  showOwnRepairPhoto: get({
    path: '/api/own-hulls/:number/outside-repairs/:repair/photos/:photo',
    tag: 'own hulls',
    summary: 'A photo of an outside repair that you reported, without its metadata.',
    produces: 'image/jpeg',
  }),
} as const;
