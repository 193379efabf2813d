import { z } from 'zod';
import * as corrections from './corrections.js';
import * as defects from './defects.js';
import * as hulls from './hulls.js';
import * as lots from './lots.js';
import * as materials from './materials.js';
import * as models from './models.js';
import * as parts from './parts.js';
import * as people from './people.js';
import { Health } from './problem.js';
import * as readings from './readings.js';
import * as repairs from './repairs.js';
import * as trace from './trace.js';
import { Instant } from './envelope.js';

/** One call of the HTTP API. Service, web app and OpenAPI document are made from this table. */
export interface Route {
  readonly method: 'GET' | 'POST';
  /** Path with `:name` for each parameter. */
  readonly path: string;
  readonly tag: string;
  readonly summary: string;
  readonly body?: z.ZodType;
  readonly query?: z.ZodType;
  readonly response?: z.ZodType;
  /** Media type when the answer is not JSON. */
  readonly produces?: string;
}

const get = <R extends Omit<Route, 'method'>>(route: R) => ({ method: 'GET', ...route }) as const;
const post = <R extends Omit<Route, 'method'>>(route: R) => ({ method: 'POST', ...route }) as const;

const shop = {
  registerPerson: post({
    path: '/api/people',
    tag: 'people',
    summary: 'Register a person by badge, with roles.',
    body: people.RegisterPerson,
    response: people.RegisteredCode,
  }),
  listPeople: get({
    path: '/api/people',
    tag: 'people',
    summary: 'List badges and roles.',
    response: z.array(people.PersonView),
  }),
  registerDevice: post({
    path: '/api/devices',
    tag: 'people',
    summary: 'Register a device on which facts are entered.',
    body: people.RegisterDevice,
    response: people.RegisteredCode,
  }),
  listDevices: get({
    path: '/api/devices',
    tag: 'people',
    summary: 'List devices.',
    response: z.array(people.DeviceView),
  }),
  registerEquipment: post({
    path: '/api/equipment',
    tag: 'equipment',
    summary: 'Register a gauge, gun, dispenser, scale or oven.',
    body: people.RegisterEquipment,
    response: people.RegisteredCode,
  }),
  listEquipment: get({
    path: '/api/equipment',
    tag: 'equipment',
    summary: 'List equipment.',
    response: z.array(people.EquipmentView),
  }),
  registerDealer: post({
    path: '/api/dealers',
    tag: 'dealers',
    summary: 'Register a dealer.',
    body: people.RegisterDealer,
    response: people.RegisteredCode,
  }),
  listDealers: get({
    path: '/api/dealers',
    tag: 'dealers',
    summary: 'List dealers.',
    response: z.array(people.DealerView),
  }),
} as const;

const store = {
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

const boats = {
  registerModel: post({
    path: '/api/models',
    tag: 'models',
    summary: 'Register a model with the skins of its parts.',
    body: models.RegisterModel,
    response: people.RegisteredCode,
  }),
  listModels: get({
    path: '/api/models',
    tag: 'models',
    summary: 'List models with their published schedules.',
    response: z.array(models.ModelView),
  }),
  publishSchedule: post({
    path: '/api/models/:model/schedules',
    tag: 'models',
    summary: 'Publish a version of a laminate schedule; it never changes afterwards.',
    body: models.PublishSchedule,
    response: models.ScheduleReceipt,
  }),
  registerMold: post({
    path: '/api/molds',
    tag: 'models',
    summary: 'Register a mold.',
    body: models.RegisterMold,
    response: people.RegisteredCode,
  }),
  listMolds: get({
    path: '/api/molds',
    tag: 'models',
    summary: 'List molds with their pulls.',
    response: z.array(models.MoldView),
  }),
  startHull: post({
    path: '/api/hulls',
    tag: 'hulls',
    summary: 'Start a hull, with its hull molding in a mold.',
    body: hulls.StartHull,
    response: hulls.HullReceipt,
  }),
  listHulls: get({
    path: '/api/hulls',
    tag: 'hulls',
    summary: 'List hulls.',
    query: hulls.ListHullsQuery,
    response: hulls.HullPage,
  }),
  readHull: get({
    path: '/api/hulls/:number',
    tag: 'hulls',
    summary: 'One hull, by hull number or any HIN it ever had.',
    response: hulls.HullView,
  }),
  assignHin: post({
    path: '/api/hulls/:number/hins',
    tag: 'hulls',
    summary: 'Assign a HIN, or change it before it is affixed.',
    body: hulls.AssignHin,
    response: hulls.HinReceipt,
  }),
  recordLifeFact: post({
    path: '/api/hulls/:number/life',
    tag: 'hulls',
    summary: 'Record a fact in the life of the boat.',
    body: hulls.RecordLifeFact,
    response: hulls.LifeReceipt,
  }),
  releaseHull: post({
    path: '/api/hulls/:number/releases',
    tag: 'hulls',
    summary: 'Release the hull, or be told all that is in the way.',
    body: hulls.ReleaseHull,
    response: hulls.LifeReceipt,
  }),
  joinPart: post({
    path: '/api/hulls/:number/joints',
    tag: 'hulls',
    summary: 'Join a part to the hull.',
    body: parts.JoinPart,
    response: parts.MadeReceipt,
  }),
  startPart: post({
    path: '/api/parts',
    tag: 'parts',
    summary: 'Start a deck, liner, stringer grid or hatch in a mold.',
    body: parts.StartPart,
    response: parts.PartReceipt,
  }),
  readPart: get({
    path: '/api/parts/:part',
    tag: 'parts',
    summary: 'One part: its layers as scheduled and as made, defects and repairs.',
    response: parts.PartView,
  }),
} as const;

const making = {
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

const asking = {
  lotHulls: get({
    path: '/api/lots/:lot/hulls',
    tag: 'trace',
    summary: 'Which hulls and parts hold some of this lot, and how much.',
    query: trace.ReachQuery,
    response: trace.ReachPage,
  }),
  streamLotHulls: get({
    path: '/api/lots/:lot/hulls.ndjson',
    tag: 'trace',
    summary: 'The same, all of it, one JSON object a line.',
    query: trace.ReachQuery.omit({ limit: true, cursor: true }),
    produces: 'application/x-ndjson',
  }),
  hullLots: get({
    path: '/api/hulls/:number/lots',
    tag: 'trace',
    summary: 'Which received lots are in this hull, how much, and by which way.',
    response: trace.HullLots,
  }),
  sharedLots: post({
    path: '/api/shared-lots',
    tag: 'trace',
    summary: 'Which lots these hulls share, and how many others hold each.',
    body: trace.AskSharedLots,
    response: trace.SharedLotsPage,
  }),
  defectSuspects: get({
    path: '/api/defects/:defect/lots',
    tag: 'trace',
    summary: 'The lots in the layer and place of a defect, and the other hulls that hold them.',
    response: trace.DefectSuspects,
  }),
  buildRecord: get({
    path: '/api/hulls/:number/build-record.pdf',
    tag: 'papers',
    summary: 'The build record as PDF; asOf draws an earlier state.',
    query: z.object({ asOf: Instant.optional() }),
    produces: 'application/pdf',
  }),
  live: get({
    path: '/health/live',
    tag: 'health',
    summary: 'The process answers.',
    response: z.object({ live: z.literal(true) }),
  }),
  ready: get({
    path: '/health/ready',
    tag: 'health',
    summary: 'The database answers; how far the demo is.',
    response: Health,
  }),
} as const;

export const routes = { ...shop, ...store, ...boats, ...making, ...asking } as const;
