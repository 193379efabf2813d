import { z } from 'zod';
import { AddPhoto, PhotoReceipt } from './defects.js';
import * as lots from './lots.js';
import * as materials from './materials.js';
import * as people from './people.js';
import { get, post } from './route.js';

/** Materials, tanks and lots. */
export const storeRoutes = {
  registerMaterial: post({
    path: '/api/materials',
    tag: 'materials',
    summary: "Register a material with its maker's data.",
    body: materials.RegisterMaterial,
    response: materials.RegisteredMaterial,
  }),
  listMaterials: get({
    path: '/api/materials',
    tag: 'materials',
    summary: 'List materials.',
    response: z.array(materials.MaterialView),
  }),
  registerTank: post({
    path: '/api/tanks',
    tag: 'tanks',
    summary: 'Register a bulk tank.',
    body: materials.RegisterTank,
    response: people.RegisteredCode,
  }),
  listTanks: get({
    path: '/api/tanks',
    tag: 'tanks',
    summary: 'List tanks with what is in them now.',
    response: z.array(materials.TankView),
  }),
  fillTank: post({
    path: '/api/tanks/:tank/fills',
    tag: 'tanks',
    summary: 'Fill a tank; the heel is measured first.',
    body: lots.FillTank,
    response: lots.LotReceipt,
  }),
  receiveLot: post({
    path: '/api/lots',
    tag: 'lots',
    summary: 'Receive a lot from a supplier.',
    body: lots.ReceiveLot,
    response: lots.LotReceipt,
  }),
  listLots: get({
    path: '/api/lots',
    tag: 'lots',
    summary: 'List lots.',
    query: lots.ListLotsQuery,
    response: lots.LotPage,
  }),
  readLot: get({
    path: '/api/lots/:lot',
    tag: 'lots',
    summary: 'One lot, by code or id, with its composition.',
    response: lots.LotView,
  }),
  changeLotState: post({
    path: '/api/lots/:lot/states',
    tag: 'lots',
    summary: 'Quarantine, release, hold or reject a lot.',
    body: lots.ChangeLotState,
    response: lots.LotStateReceipt,
  }),
  addLotPhoto: post({
    path: '/api/lots/:lot/photos',
    tag: 'lots',
    summary: 'Add a photo of the certificate of a lot: multipart, field "record" (JSON) and file "photo".',
    body: AddPhoto,
    response: PhotoReceipt,
  }),
  addUnidentifiedPhoto: post({
    path: '/api/unidentified/:entry/photos',
    tag: 'lots',
    summary:
      'Add a photo of material that nobody could name, by the entry that used it: multipart, field "record" (JSON) and file "photo".',
    body: lots.AddUnidentifiedPhoto,
    response: PhotoReceipt,
  }),
  identifyLot: post({
    path: '/api/lots/:lot/identifications',
    tag: 'lots',
    summary: 'Say which lot unidentified material was.',
    body: lots.IdentifyLot,
    response: lots.IdentificationReceipt,
  }),
  makeMix: post({
    path: '/api/mixes',
    tag: 'lots',
    summary: 'Make a bucket from other lots.',
    body: lots.MakeMix,
    response: lots.LotReceipt,
  }),
  cutKit: post({
    path: '/api/kits',
    tag: 'lots',
    summary: 'Cut a kit from rolls and sheets.',
    body: lots.CutKit,
    response: lots.LotReceipt,
  }),
} as const;
