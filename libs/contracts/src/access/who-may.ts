import { ROLES, type Role } from './role-names.js';
import type { routes } from '../routes.js';

export { ROLES, type Role };

/** A route of the table. */
export type RouteName = keyof typeof routes;

/** `anyone`: without signing in. `signed in`: whoever is. Else the roles that may. */
export type Access = 'anyone' | 'signed in' | readonly Role[];

const all = (...roles: readonly Role[]): readonly Role[] => roles;

/** Everybody of the plant, and who audits it; not a dealer. */
const STAFF: readonly Role[] = ROLES.filter((role) => role !== 'dealer');
const LAYS = all('laminator', 'shift lead');
const MEASURES = all('laminator', 'shift lead', 'inspector', 'quality');
const STORES = all('receiving', 'shift lead');
const ACCEPTS = all('inspector', 'quality');
const REPAIRS = all('patcher', 'shift lead');
const SEES_FAULTS = all('receiving', 'laminator', 'shift lead', 'inspector', 'patcher', 'quality', 'warranty');
const QUALITY = all('quality');
/** Who judges, and who looks at how it was judged. */
const JUDGES = all('quality', 'inspector', 'shift lead', 'warranty', 'auditor');
const DESK = all('administrator');
const OWNERS = all('warranty', 'administrator');
const CASES = all('quality', 'warranty');
const CLAIMS = all('quality', 'warranty', 'auditor');

/**
 * Who may do what: every route of the service, and nothing that is not here. Guards, tests, the page in the docs and
 * what a screen offers are made from this table. A plant gives one person as many roles as the person has jobs.
 */
export const WHO_MAY: Readonly<Record<RouteName, Access>> = {
  // signing in
  ...{ readSession: 'anyone', signIn: 'anyone', useFirstCode: 'anyone', enrolDevice: 'anyone' },
  ...{ live: 'anyone', ready: 'anyone', startOpenId: 'anyone', finishOpenId: 'anyone' },
  ...{ signOut: 'signed in', changeSecret: 'signed in', listUnproved: STAFF, confirmEntry: SEES_FAULTS },
  // people, devices, programs
  ...{ registerPerson: DESK, giveFirstCode: DESK, endSessions: DESK, grantRole: DESK, endRole: DESK },
  ...{ listOpenIdLinks: DESK, linkOpenId: DESK, unlinkOpenId: DESK },
  ...{ registerDevice: DESK, giveEnrolmentCode: DESK, revokeDevice: DESK },
  ...{ createToken: DESK, listTokens: DESK, revokeToken: DESK },
  ...{ listPeople: STAFF, listDevices: STAFF, listKeptEntries: QUALITY, decideOnEntry: QUALITY },
  // dealers and owners
  ...{
    registerDealer: OWNERS,
    listDealers: STAFF,
    registerOwner: ['warranty'],
    listOwners: OWNERS,
    eraseOwner: OWNERS,
  },
  ...{ listAllOwners: OWNERS, readOwner: OWNERS, exportOwner: OWNERS, exportOwnerSheet: OWNERS },
  ...{ recordOwnerRequest: OWNERS, correctOwner: OWNERS, placeLegalHold: OWNERS, endLegalHold: OWNERS },
  ...{ listRedactable: OWNERS, redactText: OWNERS, redactPhoto: OWNERS, showKeptOriginal: OWNERS },
  ...{ issueCertificate: QUALITY, withdrawCertificate: QUALITY, listCertificates: STAFF, readCertificate: STAFF },
  ...{ checkCertificate: 'anyone', readOwnCertificate: ['dealer'], verifyJournal: ['quality', 'administrator'] },
  ...{ listOwnNews: ['dealer'], acknowledge: ['dealer'] },
  ...{ listOwnHulls: ['dealer'], readOwnHull: ['dealer'], drawOwnRecord: ['dealer'] },
  // claims and warranty
  ...{ setWarrantyTerms: ['warranty', 'quality'], listWarrantyTerms: STAFF, fileClaim: ['warranty'] },
  ...{ decideClaim: ['warranty'], markClaim: ['warranty', 'quality'], addClaimPhoto: ['warranty', 'quality'] },
  ...{ listClaims: CLAIMS, readClaim: CLAIMS },
  ...{ fileOwnClaim: ['dealer'], listOwnClaims: ['dealer'], addOwnClaimPhoto: ['dealer'] },
  ...{ reportOwnRepair: ['dealer'], listOwnRepairs: ['dealer'] },
  ...{ addOwnRepairPhoto: ['dealer'], showOwnRepairPhoto: ['dealer'] },
  // cases
  ...{ openCase: CASES, readGroups: CASES, freezeCase: CASES, lookAtCase: CASES },
  ...{ listCases: CLAIMS, readCase: CLAIMS, readLook: CLAIMS, inquiryReport: CLAIMS, computeLookAgain: CASES },
  // what the plant works by
  ...{ registerMaterial: ['receiving', 'quality'], issueDataSheet: QUALITY, registerModel: QUALITY },
  ...{ publishSchedule: QUALITY, registerMold: QUALITY, moveToSchedule: QUALITY, setPlantRules: QUALITY },
  ...{
    setFlawLimits: QUALITY,
    setTouchUpLimit: QUALITY,
    registerEquipment: ['quality', 'administrator'],
    registerTank: QUALITY,
  },
  ...{ importClimate: ['shift lead', 'inspector', 'quality'], checkEquipment: MEASURES },
  // the duty to notify, and notices
  ...{ decideDuty: ['quality', 'administrator'], giveNotice: OWNERS, mailNotice: OWNERS, returnMailing: OWNERS },
  ...{ reportNotice: OWNERS, listRecipients: OWNERS, readDuty: STAFF, readNotice: STAFF },
  ...{ noticeLetters: OWNERS, mailMerge: OWNERS, initialReport: STAFF, followUpReport: STAFF },
  // store
  addLotPhoto: ['receiving', 'quality'],
  addUnidentifiedPhoto: ['receiving', 'patcher', 'quality', 'warranty', ...LAYS],
  ...{ receiveLot: ['receiving'], labelContainers: STORES, tellContainer: ['laminator', ...STORES] },
  ...{ changeLotState: ['receiving', 'quality'], identifyLot: ['receiving', 'shift lead', 'quality'] },
  ...{ fillTank: STORES, emptyTank: STORES, countLot: STORES, bookLoss: ['laminator', ...STORES] },
  ...{
    makeMix: ['receiving', 'patcher', ...LAYS],
    checkMix: ['receiving', 'patcher', ...LAYS],
    cutKit: ['receiving', ...LAYS],
  },
  ...{
    placeHold: ['receiving', 'shift lead', 'inspector', 'quality', 'warranty'],
    holdOther: ['shift lead', 'inspector', 'quality', 'warranty'],
    liftHold: QUALITY,
    closeHold: QUALITY,
    narrowHold: QUALITY,
    disposeHeld: ['inspector', 'patcher', 'shift lead', 'quality', 'warranty'],
    retestLot: QUALITY,
  },
  ...{ takeLotReadings: ['receiving', ...MEASURES] },
  // laying up and assembly
  ...{ startHull: LAYS, startPart: LAYS, joinPart: LAYS, recordLayer: LAYS, recordLayers: LAYS, useInLayer: LAYS },
  ...{ checkLayer: ['inspector', ...LAYS], useInJoint: LAYS, apportionDrop: LAYS, hookUpGun: LAYS, setGun: LAYS },
  ...{ fitItem: LAYS, removeItem: LAYS, careForMold: LAYS, goOn: ['shift lead'] },
  ...{ readLayer: MEASURES, readJoint: MEASURES, takePartReadings: MEASURES },
  ...{ signHoldPoint: ACCEPTS, readDaySheet: STAFF },
  // faults and repairs
  ...{ reportDefect: SEES_FAULTS, addPhoto: SEES_FAULTS, answerAsk: SEES_FAULTS, dispose: QUALITY, scrapPart: QUALITY },
  ...{ recordRepair: ['warranty', ...REPAIRS], checkRepair: ['warranty', 'quality', ...REPAIRS], useInRepair: REPAIRS },
  ...{ readRepair: ['patcher', 'shift lead', ...ACCEPTS], judgeRepair: ACCEPTS, inspectRepairAgain: ACCEPTS },
  ...{ recordTouchUp: ['laminator', ...REPAIRS], judgeTouchUp: ACCEPTS, recordRework: ACCEPTS },
  correct: SEES_FAULTS,
  // the boat
  ...{ assignHin: ['shift lead', 'quality'], correctHin: QUALITY, releaseHull: QUALITY },
  recordLifeFact: ['shift lead', 'quality', 'warranty'],
  // asking
  ...{
    listEquipment: STAFF,
    listMaterials: STAFF,
    listTanks: STAFF,
    listLots: STAFF,
    readLot: STAFF,
    listModels: STAFF,
  },
  ...{ listMolds: STAFF, readMold: STAFF, listHulls: STAFF, readHull: STAFF, readPart: STAFF, listDefectKinds: STAFF },
  ...{
    readDefect: STAFF,
    showPhoto: STAFF,
    readVersions: STAFF,
    readGun: STAFF,
    listChecks: STAFF,
    listSuspects: STAFF,
  },
  ...{ readContainer: STAFF, readStoreOfLot: STAFF, readBalance: STAFF, listBalances: STAFF, listStock: STAFF },
  ...{ listWaiting: JUDGES, countDefects: JUDGES, countHulls: JUDGES, listConcessions: JUDGES },
  ...{ listCharts: JUDGES, readChart: JUDGES, freezeChart: QUALITY },
  ...{ listNonconformities: STAFF, listFittedItems: STAFF, moldsTreated: STAFF, readPlantRules: STAFF },
  ...{
    listDataSheets: STAFF,
    readClimate: STAFF,
    readDose: STAFF,
    planPatch: STAFF,
    readCure: STAFF,
    readFlawLimits: STAFF,
  },
  ...{ lotHulls: STAFF, streamLotHulls: STAFF, hullLots: STAFF, sharedLots: STAFF, defectSuspects: STAFF },
  ...{
    readDefectMap: STAFF,
    listMappedDefects: STAFF,
    traceLot: STAFF,
    lotTracePaper: STAFF,
    traceHull: STAFF,
    hullTracePaper: STAFF,
  },
  ...{ listHolds: STAFF, readHold: STAFF, listHeldHulls: STAFF, heldHullsPaper: STAFF, heldHullsSheet: STAFF },
  ...{ listRecomputations: STAFF, readRecomputation: STAFF },
  ...{ buildRecord: STAFF, lotReport: STAFF, holdPoints: STAFF, repairOrder: STAFF, equipmentRecall: STAFF },
  ...{ drawLabels: STAFF, listLabelStock: STAFF, readLabelTarget: STAFF },
};

/** Acts within a route that fewer may do than the route. */
export const ACTS = {
  'correct what another entered': ['shift lead', 'quality'],
  'clear a held hull': ['quality'],
} as const satisfies Readonly<Record<string, readonly Role[]>>;
export type Act = keyof typeof ACTS;

/** Whether somebody with these roles may call a route; nobody may call what the table does not have. */
export const may = (roles: readonly Role[] | null, route: string): boolean => {
  if (!Object.hasOwn(WHO_MAY, route)) return false;
  const access: Access = WHO_MAY[route as RouteName];
  if (access === 'anyone') return true;
  if (roles === null) return false;
  return access === 'signed in' || access.some((role) => roles.includes(role));
};
