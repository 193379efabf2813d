import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { deskRoutes } from './desk-routes.js';
import { root, under } from './root-route.js';
import { texts } from './search-texts.js';

const home = createRoute({
  ...under,
  path: '/',
  component: lazyRouteComponent(() => import('../home/home-page.js'), 'HomePage'),
});
const hulls = createRoute({
  ...under,
  path: '/hulls',
  validateSearch: texts('search'),
  component: lazyRouteComponent(() => import('../hulls/hulls-page.js'), 'HullsPage'),
});
const hull = createRoute({
  ...under,
  path: '/hulls/$number',
  validateSearch: texts('layer'),
  component: lazyRouteComponent(() => import('../hulls/hull-page.js'), 'HullPage'),
});
const map = createRoute({
  ...under,
  path: '/map',
  validateSearch: texts('model', 'part', 'kind', 'layer', 'mold', 'lot', 'from', 'until', 'area'),
  component: lazyRouteComponent(() => import('../map/map-page.js'), 'MapPage'),
});
const traces = createRoute({
  ...under,
  path: '/trace',
  validateSearch: texts('of'),
  component: lazyRouteComponent(() => import('../traces/traces-page.js'), 'TracesPage'),
});
const lotTrace = createRoute({
  ...under,
  path: '/trace/lots/$lot',
  validateSearch: texts('pick'),
  component: lazyRouteComponent(() => import('../traces/lot-trace-page.js'), 'LotTracePage'),
});
const hullTrace = createRoute({
  ...under,
  path: '/trace/hulls/$number',
  validateSearch: texts('also', 'pick'),
  component: lazyRouteComponent(() => import('../traces/hull-trace-page.js'), 'HullTracePage'),
});
const lots = createRoute({
  ...under,
  path: '/lots',
  validateSearch: texts('search', 'state', 'material', 'origin'),
  component: lazyRouteComponent(() => import('../lots/lots-page.js'), 'LotsPage'),
});
const lot = createRoute({
  ...under,
  path: '/lots/$lot',
  validateSearch: texts('least', 'below'),
  component: lazyRouteComponent(() => import('../lots/lot-page.js'), 'LotPage'),
});
const defect = createRoute({
  ...under,
  path: '/defects/$defect',
  component: lazyRouteComponent(() => import('../defects/defect-page.js'), 'DefectPage'),
});
const search = createRoute({
  ...under,
  path: '/search',
  validateSearch: texts('for', 'hulls'),
  component: lazyRouteComponent(() => import('../search/search-page.js'), 'SearchPage'),
});
const settings = createRoute({
  ...under,
  path: '/settings',
  component: lazyRouteComponent(() => import('../settings/settings-page.js'), 'SettingsPage'),
});
const signIn = createRoute({
  ...under,
  path: '/sign-in',
  validateSearch: texts('from', 'code'),
  component: lazyRouteComponent(() => import('../sign-in/sign-in-page.js'), 'SignInPage'),
});
const enrol = createRoute({
  ...under,
  path: '/enrol',
  component: lazyRouteComponent(() => import('../sign-in/enrol-page.js'), 'EnrolPage'),
});
const ownHulls = createRoute({
  ...under,
  path: '/own-hulls',
  component: lazyRouteComponent(() => import('../own-hulls/own-hulls-page.js'), 'OwnHullsPage'),
});
const ownHull = createRoute({
  ...under,
  path: '/own-hulls/$number',
  component: lazyRouteComponent(() => import('../own-hulls/own-hull-page.js'), 'OwnHullPage'),
});
const check = createRoute({
  ...under,
  path: '/c',
  component: lazyRouteComponent(() => import('../certificate-check/check-page.js'), 'CheckPage'),
});
const label = createRoute({
  ...under,
  path: '/l/$',
  component: lazyRouteComponent(() => import('../labels/label-page.js'), 'LabelPage'),
});

/** The station: a frame of its own, and one task at a time in it. */
const stationFrame = createRoute({
  ...under,
  path: '/station',
  component: lazyRouteComponent(() => import('../station-frame/station-frame.js'), 'StationFrame'),
});
const atStation = { getParentRoute: () => stationFrame };
const stationStart = createRoute({
  ...atStation,
  path: '/',
  component: lazyRouteComponent(() => import('../station/start-page.js'), 'StartPage'),
});
const stationTakeOver = createRoute({
  ...atStation,
  path: '/take-over',
  validateSearch: texts('part', 'layer', 'task'),
  component: lazyRouteComponent(() => import('../station/take-over-page.js'), 'TakeOverPage'),
});
const stationOutbox = createRoute({
  ...atStation,
  path: '/outbox',
  component: lazyRouteComponent(() => import('../station/outbox-page.js'), 'OutboxPage'),
});
const stationReadings = createRoute({
  ...atStation,
  path: '/readings',
  validateSearch: texts('part', 'layer', 'what'),
  component: lazyRouteComponent(() => import('../station/readings-page.js'), 'ReadingsPage'),
});
const stationLayer = createRoute({
  ...atStation,
  path: '/layer',
  validateSearch: texts('part', 'layer'),
  component: lazyRouteComponent(() => import('../station/layer-page.js'), 'LayerPage'),
});
const stationSign = createRoute({
  ...atStation,
  path: '/sign',
  validateSearch: texts('part', 'layer'),
  component: lazyRouteComponent(() => import('../station/sign-page.js'), 'SignPage'),
});
const stationConfirm = createRoute({
  ...atStation,
  path: '/confirm',
  component: lazyRouteComponent(() => import('../station/confirm-page.js'), 'ConfirmPage'),
});
const bay = createRoute({
  ...atStation,
  path: '/bay',
  component: lazyRouteComponent(() => import('../bay/bay-page.js'), 'BayPage'),
});
const bayPart = createRoute({
  ...atStation,
  path: '/bay/$part',
  component: lazyRouteComponent(() => import('../bay/part-page.js'), 'PartPage'),
});
const bayDefect = createRoute({
  ...atStation,
  path: '/bay/$part/defect',
  component: lazyRouteComponent(() => import('../bay/defect/log-defect-page.js'), 'LogDefectPage'),
});
const bayRepair = createRoute({
  ...atStation,
  path: '/bay/$part/repair',
  component: lazyRouteComponent(() => import('../bay/repair/repair-page.js'), 'RepairPage'),
});
const bayTouchUp = createRoute({
  ...atStation,
  path: '/bay/$part/touch-up',
  component: lazyRouteComponent(() => import('../bay/touch-up/touch-up-page.js'), 'TouchUpPage'),
});
const bayJudge = createRoute({
  ...atStation,
  path: '/bay/$part/judge/$mark',
  component: lazyRouteComponent(() => import('../bay/judge/judge-page.js'), 'JudgePage'),
});
const bayAnswer = createRoute({
  ...atStation,
  path: '/bay/$part/answer/$mark',
  component: lazyRouteComponent(() => import('../bay/answer/answer-page.js'), 'AnswerPage'),
});
const station = stationFrame.addChildren([
  ...[stationStart, stationTakeOver, stationOutbox],
  ...[bay, bayPart, bayDefect, bayRepair, bayTouchUp, bayJudge, bayAnswer],
  ...[stationReadings, stationLayer, stationSign, stationConfirm],
]);

/** Every page by its address; each is fetched when it is first gone to. */
export const routeTree = root.addChildren([
  ...[map, traces, lotTrace, hullTrace],
  ...[home, hulls, hull, lots, lot, defect, search, settings],
  ...[signIn, enrol, ownHulls, ownHull, check, label, station],
  ...deskRoutes,
]);
