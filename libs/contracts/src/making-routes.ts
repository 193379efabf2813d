import { z } from 'zod';
import * as corrections from './corrections.js';
import * as defects from './defects.js';
import * as parts from './parts.js';
import * as readings from './readings.js';
import * as repairs from './repairs.js';
import { get, post } from './route.js';

/** What is made, found wrong and put right. */
export const makingRoutes = {
  recordLayer: post({
    path: '/api/parts/:part/layers',
    tag: 'layers',
    summary: 'Record a layer as it was made.',
    body: parts.RecordLayer,
    response: parts.MadeReceipt,
  }),
  useInLayer: post({
    path: '/api/layers/:layer/used',
    tag: 'layers',
    summary: 'Add what was used to a layer.',
    body: parts.RecordUse,
    response: parts.MadeReceipt,
  }),
  readLayer: post({
    path: '/api/layers/:layer/readings',
    tag: 'layers',
    summary: 'Take readings on a layer; each spot is judged.',
    body: readings.TakeReadings,
    response: readings.ReadingsReceipt,
  }),
  signHoldPoint: post({
    path: '/api/layers/:layer/signatures',
    tag: 'layers',
    summary: 'Sign the hold point of a layer; the signer did not make it.',
    body: parts.SignHoldPoint,
    response: parts.SignatureReceipt,
  }),
  useInJoint: post({
    path: '/api/joints/:joint/used',
    tag: 'hulls',
    summary: 'Add what was used to a joint.',
    body: parts.RecordUse,
    response: parts.MadeReceipt,
  }),
  listDefectKinds: get({
    path: '/api/defect-kinds',
    tag: 'defects',
    summary: 'The kinds of defect, with where each word comes from.',
    response: z.array(defects.DefectKindView),
  }),
  reportDefect: post({
    path: '/api/parts/:part/defects',
    tag: 'defects',
    summary: 'Report a defect at its place.',
    body: defects.ReportDefect,
    response: defects.DefectReceipt,
  }),
  readDefect: get({
    path: '/api/defects/:defect',
    tag: 'defects',
    summary: 'One defect.',
    response: defects.DefectView,
  }),
  addPhoto: post({
    path: '/api/defects/:defect/photos',
    tag: 'defects',
    summary: 'Add a photo: multipart, field "record" (JSON) and file "photo".',
    body: defects.AddPhoto,
    response: defects.PhotoReceipt,
  }),
  showPhoto: get({
    path: '/api/photos/:photo',
    tag: 'defects',
    summary: 'The photo without its metadata.',
    produces: 'image/jpeg',
  }),
  dispose: post({
    path: '/api/dispositions',
    tag: 'defects',
    summary: 'Decide on a defect, a reading or a nonconformity.',
    body: defects.Dispose,
    response: defects.DispositionReceipt,
  }),
  recordRepair: post({
    path: '/api/parts/:part/repairs',
    tag: 'repairs',
    summary: 'Record a repair as it was done.',
    body: repairs.RecordRepair,
    response: repairs.RepairReceipt,
  }),
  useInRepair: post({
    path: '/api/repairs/:repair/used',
    tag: 'repairs',
    summary: 'Add what was used to a repair.',
    body: parts.RecordUse,
    response: parts.MadeReceipt,
  }),
  readRepair: post({
    path: '/api/repairs/:repair/readings',
    tag: 'repairs',
    summary: 'Take readings on a repair.',
    body: readings.TakeReadings,
    response: readings.ReadingsReceipt,
  }),
  judgeRepair: post({
    path: '/api/repairs/:repair/acceptances',
    tag: 'repairs',
    summary: 'Accept or refuse a repair; whoever does so did not do it.',
    body: repairs.JudgeRepair,
    response: repairs.AcceptanceReceipt,
  }),
  correct: post({
    path: '/api/corrections',
    tag: 'corrections',
    summary: 'Correct or withdraw a fact, with the reason; both versions stay.',
    body: corrections.Correct,
    response: corrections.CorrectionReceipt,
  }),
  readVersions: get({
    path: '/api/facts/:fact/versions',
    tag: 'corrections',
    summary: 'Every version of a fact.',
    response: corrections.VersionsView,
  }),
} as const;
